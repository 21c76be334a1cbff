"""Counts the groups."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("20 / 5", "5 + 5 = 10; 10 + 5 = 15; 15 + 5 = 20; 1 + 1 + 1 + 1 = 4", "ours"),
    Told("20 / 5", "20 - 5 = 15; 15 - 5 = 10; 10 - 5 = 5; 5 - 5 = 0; 1 + 1 + 1 + 1 = 4", "ours"),
)
NEVER = (
    ("96 / 6", "too many to keep count of"),
    ("246 / 123", "nobody counts by it"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COUNTING)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COUNTING) == [], why
