"""Counts on by ones and by equal skips."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("14 + 3", "14 + 1 = 15; 15 + 1 = 16; 16 + 1 = 17", "nsw-dec2011"),
    Told("6 + 5", "6 + 1 = 7; 7 + 1 = 8; 8 + 1 = 9; 9 + 1 = 10; 10 + 1 = 11", "nz-ao"),
    Told("3 + 5", "3 + 1 = 4; 4 + 1 = 5; 5 + 1 = 6; 6 + 1 = 7; 7 + 1 = 8", "ours"),
    Told("3 + 5", "5 + 1 = 6; 6 + 1 = 7; 7 + 1 = 8", "ours"),
    Told("46 + 30", "46 + 10 = 56; 56 + 10 = 66; 66 + 10 = 76", "ours"),
    Told("34 + 12", "34 + 10 = 44; 44 + 1 = 45; 45 + 1 = 46", "ours"),
    Told("15 + 15", "15 + 5 = 20; 20 + 5 = 25; 25 + 5 = 30", "ours"),
)
NEVER = (("58 + 47", "too many to count by ones, and no equal skips"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COUNTING)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COUNTING) == [], why
