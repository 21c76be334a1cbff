"""Same as another child."""

import pytest

from waysaid.hearing import Reading, read
from waysaid.number import Language, parse
from waysaid.ways import Family

PROBLEM = parse("37 + 25")
NOOR = read(PROBLEM, "37+3=40+22=62")


def heard(line: str, language: Language = Language.EN) -> Reading:
    return read(PROBLEM, line, language, before={"Noor": NOOR, "Ana María": NOOR})


@pytest.mark.parametrize(
    ("line", "language"),
    [
        ("same as Noor", Language.EN),
        ("I did it like noor did", Language.EN),
        ("I agree with Noor but I was slower", Language.EN),
        ("igual que Ana Maria", Language.ES),
    ],
)
def test_the_way_of_the_child_named_is_implied_whole(line: str, language: Language) -> None:
    reading = heard(line, language)
    assert reading.family is Family.BRIDGE
    assert [told.step for told in reading.told] == [told.step for told in NOOR.told]
    assert all(len(told.unsaid) == 4 for told in reading.told)
    assert reading.answer is None
    assert reading.words == line


def test_who_agrees_and_says_an_answer_said_that_answer_only() -> None:
    reading = heard("same as Noor so it's sixty one")
    assert reading.answer_text == "61"


@pytest.mark.parametrize("line", ["same as Wren", "Noor", "it's the same"])
def test_who_names_nobody_that_spoke_says_no_steps(line: str) -> None:
    assert heard(line).told == ()


def test_steps_of_ones_own_are_kept() -> None:
    reading = heard("like Noor but thirty and twenty is fifty")
    assert [told.step.text for told in reading.told] == ["30 + 20 = 50"]
