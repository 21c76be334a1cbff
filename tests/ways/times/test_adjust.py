"""Scales and scales back."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("58 x 5", "58 x 10 = 580; 580 / 2 = 290", "eng-y5-map"),
    Told("28 x 50", "28 x 100 = 2800; 2800 / 2 = 1400", "eng-y5-map"),
    Told("36 x 25", "36 x 100 = 3600; 3600 / 4 = 900", "nns1999", read=False),
    Told("36 x 25", "36 x 100 = 3600; 3600 / 2 = 1800; 1800 / 2 = 900", "ours"),
    Told("5 x 18", "10 x 18 = 180; 180 / 2 = 90", "ours"),
)
NEVER = (
    ("18 x 6", "six is half of nothing friendly"),
    ("10 x 5", "ten of anything is known"),
    ("3022 x 5", "half of so long a number is too much"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADJUST)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADJUST) == [], why
