"""Fills a number up to a friendly one."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("8 + 7", "8 + 2 = 10; 10 + 5 = 15", "il-guide"),
    Told("8 + 7", "7 - 2 = 5; 8 + 2 = 10; 10 + 5 = 15", "nz-pupil"),
    Told("6 + 8", "8 + 2 = 10; 10 + 4 = 14", "sask"),
    Told("43 + 27", "43 + 7 = 50; 50 + 20 = 70", "oer-nt"),
    Told("296 + 134", "296 + 4 = 300; 300 + 130 = 430", "nns1999", read=False),
    Told("37 + 25", "37 + 3 = 40; 40 + 20 = 60; 60 + 2 = 62", "ours"),
    Told("37 + 25", "37 + 23 = 60; 60 + 2 = 62", "ours"),
    Told("87 + 25", "87 + 13 = 100; 100 + 12 = 112", "ours"),
    Told("8 + 5", "5 = 2 + 3; 8 + 2 = 10; 10 + 3 = 13", "ours"),
    Told("4 + 3", "4 + 1 = 5; 5 + 2 = 7", "ours"),
)
NEVER = (
    ("30 + 40", "both are friendly already"),
    ("300 + 4", "there is nothing to fill up"),
    ("32 + 5", "no ten is passed"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.BRIDGE)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.BRIDGE) == [], why
