"""Comes down to a friendly number."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("13 - 4", "13 - 3 = 10; 10 - 1 = 9", "ccss"),
    Told("74 - 8", "74 - 4 = 70; 70 - 4 = 66", "nz-ao"),
    Told("324 - 86", "324 - 24 = 300; 86 - 24 = 62; 300 - 62 = 238", "nz-school"),
    Told("102 - 58", "102 - 2 = 100; 58 - 2 = 56; 100 - 56 = 44", "book-fig4"),
    Told("63 - 28", "63 - 3 = 60; 60 - 25 = 35", "humphreys-parker", read=False),
    Told("71 - 34", "71 - 1 = 70; 70 - 30 = 40; 40 - 3 = 37", "ours"),
    Told("71 - 34", "71 - 31 = 40; 40 - 3 = 37", "ours"),
    Told("12 - 7", "12 - 2 = 10; 10 - 3 = 7; 2 + 3 = 5", "ours"),
)
NEVER = (
    ("78 - 40", "no friendly number is broken up"),
    ("27 - 5", "no ten is passed"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.BRIDGE)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.BRIDGE) == [], why
