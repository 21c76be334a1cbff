"""Groups as they are told: joined by a sign, taken off by their number, asked for, recalled."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse, text

TOLD = [
    ("14 x 6", "ten times six plus four times six", "10 x 6 = 60, 4 x 6 = 24, 60 + 24 = 84", None),
    (
        "14 x 6",
        "ten times six plus four times six is eighty four",
        "10 x 6 = 60, 4 x 6 = 24, 60 + 24 = 84",
        "84",
    ),
    ("9 x 6", "ten sixes take away one six", "10 x 6 = 60, 60 - 6 = 54", None),
    ("18 x 7", "twenty sevens minus two sevens", "20 x 7 = 140, 140 - 14 = 126", None),
    ("56 / 7", "what times seven is fifty six, eight", "8 x 7 = 56", "8"),
    ("7 x 8", "seven fours is twenty eight and then double", "7 x 4 = 28, 28 x 2 = 56", None),
    (
        "28 x 25",
        "four twenty fives make a hundred and there's seven of them so seven hundred",
        "4 x 25 = 100, 7 x 100 = 700",
        "700",
    ),
    ("12 x 9", "twelve tens minus twelve one oh eight", "12 x 10 = 120, 120 - 12 = 108", "108"),
    (
        "7 x 8",
        "five eights is forty and two eights is sixteen so seven eights is fifty six",
        "5 x 8 = 40, 2 x 8 = 16, 7 x 8 = 56",
        "56",
    ),
    ("3 x 6", "three plus six equals nine", "3 + 6 = 9", "9"),
    ("17 / 3", "it goes in five times with two left over", "", "5 r 2"),
    ("17 / 3", "three goes in five times with two left over", "17 / 3 = 5", "5 r 2"),
    ("91 / 3", "three remainder one", "", "3 r 1"),
    (
        "5 x _ = 65",
        "13, ten fives is 50 and three fives is 15",
        "10 x 5 = 50, 3 x 5 = 15, 10 + 3 = 13",
        "13",
    ),
]


@pytest.mark.parametrize(("problem", "said", "steps", "answer"), TOLD, ids=[one[1] for one in TOLD])
def test_groups_are_heard_as_they_were_told(problem, said, steps, answer):
    reading = read(parse(problem), said, Language.EN)
    assert ", ".join(text(told.step.equation) for told in reading.told) == steps
    assert reading.answer_text == answer


@pytest.mark.parametrize(
    ("problem", "said", "family"),
    [
        ("6 x 7", "five sevens is thirty five so six sevens is forty two", "near-fact"),
        ("8 x 6", "four sixes is twenty four so eight sixes is forty eight", "factor-steps"),
        (
            "56 / 8",
            "forty eight divided by eight is six so fifty six divided by eight is seven",
            "near-fact",
        ),
        ("72 / 8", "eight eights is sixty four and eight more is seventy two so nine", "near-fact"),
        ("49 x 2", "fifty and fifty is a hundred minus two ninety eight", "near-fact"),
    ],
)
def test_what_led_to_a_fact_names_the_way(problem, said, family):
    reading = read(parse(problem), said, Language.EN)
    assert reading.family is not None
    assert reading.family.value == family
