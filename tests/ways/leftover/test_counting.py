"""Counts the groups up to the number."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("11 / 5", "5 + 5 = 10; 11 - 10 = 1; 1 + 1 = 2", "ours"),
    Told(
        "16 / 3",
        "3 + 3 = 6; 6 + 3 = 9; 9 + 3 = 12; 12 + 3 = 15; 16 - 15 = 1; 1 + 1 + 1 + 1 + 1 = 5",
        "ours",
    ),
)
NEVER = (("98 / 6", "too many to keep count of"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COUNTING)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COUNTING) == [], why
