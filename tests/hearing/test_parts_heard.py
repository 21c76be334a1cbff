"""Fractions, decimals, percents and comparisons as children put them."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse

_SAID = [
    ("1/2 + 1/6", "a half is three sixths so four sixths", ["1/2 = 3/6", "3/6 + 1/6 = 4/6"], "4/6"),
    (
        "1/3 + 1/4",
        "I made them all twelfths four twelfths and three twelfths that's seven twelfths",
        ["1/3 = 4/12", "1/4 = 3/12", "4/12 + 3/12 = 7/12"],
        "7/12",
    ),
    ("3/4 of 28", "take off a quarter, that's 7, 21", ["1/4 of 28 = 7", "28 - 7 = 21"], "21"),
    (
        "15% of 60",
        "ten percent is six so five percent is three, nine",
        ["10% of 60 = 6", "5% of 60 = 3", "6 + 3 = 9"],
        "9",
    ),
    (
        "0.75 + 0.5",
        "seventy five cents and fifty cents is a dollar twenty five",
        ["0.75 + 0.50 = 1.25"],
        "1.25",
    ),
    ("4.8 / 6", "forty eight divided by six is eight so point eight",
     ["48 / 6 = 8", "8 / 10 = 0.8"], "0.8"),
    ("2/5 + 4/5", "two fifths and four fifths is six fifths, one and a fifth",
     ["2/5 + 4/5 = 6/5", "6/5 = 1 1/5"], "1 1/5"),
    ("2/3 ? 3/4", ("two thirds is a third away from one and three quarters is only a quarter away "
     "so three quarters is bigger"), ["1 - 2/3 = 1/3", "1 - 3/4 = 1/4"], "<"),
    ("0.65 ? 0.7", "0.7 is 0.70 and 70 beats 65", ["0.7 = 0.70"], "<"),
    ("3/4 + 1/2", "a half and a half is two wholes", ["1/2 + 1/2 = 2"], "2"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "said", "steps", "answer"), _SAID)
def test_parts_are_heard_as_they_were_said(problem, said, steps, answer):
    heard = read(parse(problem), said)
    assert [one.step.text.replace(" of ", " x ") for one in heard.told] == [
        one.replace(" of ", " x ") for one in steps
    ]
    assert heard.answer_text == answer


_DICHO = [
    ("1/2 + 1/8", "un medio son cuatro octavos entonces cinco octavos",
     ["1/2 = 4/8", "4/8 + 1/8 = 5/8"], "5/8"),
    ("2/3 ? 4/5", ("a dos tercios le falta un tercio y a cuatro quintos le falta un quinto "
     "entonces cuatro quintos es mayor"), ["1 - 2/3 = 1/3", "1 - 4/5 = 1/5"], "<"),
    ("0.35 + 0.1", "treinta y cinco centavos y diez centavos son cuarenta y cinco centavos",
     ["0.35 + 0.10 = 0.45"], "0.45"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "said", "steps", "answer"), _DICHO)
def test_parts_are_heard_in_spanish_too(problem, said, steps, answer):
    heard = read(parse(problem), said, Language.ES)
    assert [one.step.text for one in heard.told] == steps
    assert heard.answer_text == answer


def test_cents_stay_whole_numbers_where_no_number_has_a_point():
    heard = read(parse("25 + 50"), "twenty five cents and fifty cents is seventy five cents")
    assert [one.step.text for one in heard.told] == ["25 + 50 = 75"]


def test_the_same_tops_are_no_verdict_where_a_side_is_named():
    heard = read(parse("3/5 ? 3/7"), "same number of pieces but fifths are bigger so three fifths")
    assert heard.answer_text == ">"


_SAME = [
    ("0.3 ? 0.30", "they are the same", "="),
    ("1/2 ? 2/4", "a half is the same as two quarters", "="),
    ("3/4 ? 5/8", "three quarters is the same as six eighths", None),
    ("0.65 ? 0.7", "I thought the same as Leo", None),
    ("0.65 ? 0.7", "same as her but I forgot", None),
]


@pytest.mark.parametrize(("problem", "said", "answer"), _SAME)
def test_the_same_is_a_verdict_on_the_numbers_and_not_on_another_child(problem, said, answer):
    assert read(parse(problem), said).answer_text == answer


@pytest.mark.parametrize(
    "said", ["43 is half", "it's forty three because that's half", "forty three that's just half"]
)
def test_half_of_what_a_part_is_taken_of_may_be_said_behind_its_worth(said):
    heard = read(parse("50% of 86"), said)
    assert [one.step.text for one in heard.told] == ["86 / 2 = 43"]
    assert heard.answer_text == "43"


@pytest.mark.parametrize(
    "said",
    ["cut both in half ninety and six so fifteen", "they both get halved, ninety and six, fifteen"],
)
def test_both_numbers_are_halved_whichever_word_comes_first(said):
    heard = read(parse("180 / 12"), said)
    assert [one.step.text for one in heard.told][:2] == ["180 / 2 = 90", "12 / 2 = 6"]
    assert heard.answer_text == "15"
