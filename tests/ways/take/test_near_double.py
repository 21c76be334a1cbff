"""Starts from a half close by."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("13 - 6", "12 - 6 = 6; 6 + 1 = 7", "ours"),
    Told("15 - 8", "16 - 8 = 8; 8 - 1 = 7", "ours"),
    Told("70 - 40", "80 - 40 = 40; 40 - 10 = 30", "ours"),
)
NEVER = (
    ("12 - 6", "it is the double itself"),
    ("71 - 34", "34 and 34 is no easy double"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.NEAR_DOUBLE)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.NEAR_DOUBLE) == [], why
