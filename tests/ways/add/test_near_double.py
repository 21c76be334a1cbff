"""Starts from a double close by."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("8 + 7", "7 + 7 = 14; 14 + 1 = 15", "il-guide"),
    Told("8 + 7", "8 + 8 = 16; 16 - 1 = 15", "nsw-school"),
    Told("30 + 28", "30 + 30 = 60; 60 - 2 = 58", "nsw-school"),
    Told("6 + 8", "6 + 6 = 12; 12 + 2 = 14", "sask"),
    Told("26 + 27", "25 + 25 = 50; 1 + 2 = 3; 50 + 3 = 53", "now2021"),
    Told("12 + 13", "12 + 12 = 24; 24 + 1 = 25", "ie-class"),
    Told("60 + 70", "60 + 60 = 120; 120 + 10 = 130", "nns1999", read=False),
    Told("38 + 35", "35 + 35 = 70; 70 + 3 = 73", "nns1999", read=False),
    Told("421 + 387", "400 + 400 = 800; 800 + 21 = 821; 821 - 13 = 808", "nns1999", read=False),
    Told("6 + 8", "7 + 7 = 14", "ours"),
)
NEVER = (
    ("37 + 25", "far apart"),
    ("9 + 4", "far apart"),
    ("300 + 600", "far apart"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.NEAR_DOUBLE)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.NEAR_DOUBLE) == [], why
