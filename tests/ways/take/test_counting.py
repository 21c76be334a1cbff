"""Counts back, down to and up to."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("12 - 3", "12 - 1 = 11; 11 - 1 = 10; 10 - 1 = 9", "nsw-dec2011"),
    Told("85 - 40", "85 - 10 = 75; 75 - 10 = 65; 65 - 10 = 55; 55 - 10 = 45", "nsw-dec2011"),
    Told("12 - 9", "9 + 1 = 10; 10 + 1 = 11; 11 + 1 = 12; 1 + 1 + 1 = 3", "ours"),
    Told("12 - 9", "12 - 1 = 11; 11 - 1 = 10; 10 - 1 = 9; 1 + 1 + 1 = 3", "ours"),
)
NEVER = (("85 - 47", "too many to count by ones"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COUNTING)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COUNTING) == [], why
