"""Knows the missing part at once."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("13 - 7", "7 + 6 = 13", "sask"),
    Told("14 - 6", "6 + 8 = 14", "il-guide"),
    Told("120 - 70", "70 + 50 = 120", "ours"),
)
NEVER = (("71 - 34", "the sum is not one to know: going up is add-up"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.THINK_ADD)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.THINK_ADD) == [], why
