"""Counts in equal skips."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("4 x 5", "5 + 5 = 10; 10 + 5 = 15; 15 + 5 = 20", "nz-ao"),
    Told("3 x 5", "5 + 5 = 10; 10 + 5 = 15", "lefevre1996m"),
    Told("2 x 4", "4 + 4 = 8", "lefevre1996m"),
    Told("3 x 25", "25 + 25 = 50; 50 + 25 = 75", "ours"),
    Told("4 x 23", "23 + 23 = 46; 46 + 23 = 69; 69 + 23 = 92", "ours"),
)
NEVER = (
    ("12 x 12", "too many to keep count of"),
    ("14 x 23", "the same"),
    ("3 x 123", "nobody counts by it"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COUNTING)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COUNTING) == [], why
