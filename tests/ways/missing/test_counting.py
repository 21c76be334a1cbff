"""Counts up to the total or down to what is left, however far."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("2 + _ = 5", "2 + 1 = 3; 3 + 1 = 4; 4 + 1 = 5; 1 + 1 + 1 = 3", "ours"),
    Told("1 + _ = 4", "1 + 1 = 2; 2 + 1 = 3; 3 + 1 = 4; 1 + 1 + 1 = 3", "ours"),
    Told("4 - _ = 1", "4 - 1 = 3; 3 - 1 = 2; 2 - 1 = 1; 1 + 1 + 1 = 3", "ours"),
)
NEVER = (("471 - _ = 124", "too many to count"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COUNTING)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COUNTING) == [], why


def test_a_plain_difference_is_not_counted_from_far_below():
    assert all("1 + 1 = 2" not in steps for steps in told("9 - 1", Family.COUNTING))
