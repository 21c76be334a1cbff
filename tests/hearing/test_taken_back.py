"""A number taken back and said anew, one divided by another, and answers that are plain from it."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse, text
from waysaid.ways import Family

EN, ES = Language.EN, Language.ES


def _heard(problem: str, line: str, language: Language) -> tuple[list[str], str | None]:
    reading = read(parse(problem), line, language)
    steps = [f"{text(t.step.equation.left)}={text(t.step.equation.right)}" for t in reading.told]
    return steps, reading.answer_text


@pytest.mark.parametrize(
    ("problem", "line", "language", "step"),
    [
        ("17 + 8 + 13", "seventeen and thirteen is thirty, no, forty, and eight is 48", EN, "40"),
        ("17 + 8 + 13", "seventeen and thirteen is forty, no, thirty, and eight is 38", EN, "30"),
        ("28 + 34", "twenty and thirty is fifty, no, sixty, and twelve is 72", EN, "60"),
        ("28 + 34", "ocho y cuatro son doce, no, trece, y cincuenta son 63", ES, "13"),
        ("6 x 8", "six eights is forty eight, no wait, forty six", EN, "46"),
        ("6 x 8", "cinco por ocho son cuarenta, no, cuarenta y cinco, y ocho más, 53", ES, "45"),
    ],
)
def test_a_result_said_anew_stands_in_the_step(
    problem: str, line: str, language: Language, step: str
) -> None:
    """What was said last stands, right or wrong: true work is never put in wrong work's place."""
    steps, _ = _heard(problem, line, language)
    assert steps[0].endswith(f"={step}")


@pytest.mark.parametrize(
    ("problem", "line", "heard"),
    [
        (
            "_ x 6 = 54",
            "nine nines... no that's eighty one, nine sixes, yeah, fifty four, nine",
            ["9 x 9=81", "9 x 6=54"],
        ),
        (
            "72 - 28",
            "seventy take twenty is fifty, no, thirty take eight is twenty two",
            ["70 - 20=50", "30 - 8=22"],
        ),
    ],
)
def test_a_number_that_a_step_begins_with_is_said_in_no_other_s_stead(
    problem: str, line: str, heard: list[str]
) -> None:
    assert _heard(problem, line, EN)[0] == heard


@pytest.mark.parametrize(
    ("problem", "line"),
    [
        ("20% of 60", "twenty percent so I divided sixty by twenty and got three"),
        ("20% of 60", "I divided the sixty by twenty and got three"),
        ("25% of 80", "twenty five percent so I divided eighty by twenty five"),
    ],
)
def test_what_is_divided_by_a_number_is_never_multiplied(problem: str, line: str) -> None:
    steps, _ = _heard(problem, line, EN)
    assert steps
    assert not any("x" in step for step in steps)


@pytest.mark.parametrize(
    ("problem", "line", "language", "answer"),
    [
        ("56 / 7", "ate because ate sevens are 56", EN, "8"),
        ("32 / 8", "for because for eights are thirty two", EN, "4"),
        ("about 803 - 395", "eight hundred minus four hundred, 400 more or less", EN, "400"),
        ("about 803 - 395", "ochocientos menos cuatrocientos, 400 más o menos", ES, "400"),
        ("12 - 7", "twelve take six is six and then one more so it's seven", EN, "7"),
        ("12 - 7", "doce menos seis son seis y el siete es uno más entonces siete", ES, "7"),
        ("84 - 67", "eighty four take twenty is 64 and three more so sixty seven", EN, None),
        ("504 - 487", "four eighty seven and thirteen is 500 and four more so 504", EN, None),
    ],
)
def test_the_answer_is_the_one_said(
    problem: str, line: str, language: Language, answer: str | None
) -> None:
    assert _heard(problem, line, language)[1] == answer


@pytest.mark.parametrize("problem", ["_ + 9 = 17", "9 + _ = 17"])
def test_the_equation_with_its_number_is_a_fact_in_either_order(problem: str) -> None:
    reading = read(parse(problem), "ocho, porque nueve y ocho son diecisiete", ES)
    assert reading.family is Family.KNOWN_FACT
