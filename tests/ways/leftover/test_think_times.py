"""Finds the product just below."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("16 / 3", "3 x 5 = 15; 16 - 15 = 1; 16 / 3 = 5 1/3", "nz-school"),
    Told("16 / 3", "3 x 5 = 15; 16 - 15 = 1", "ours"),
    Told("98 / 6", "6 x 10 = 60; 6 x 6 = 36; 60 + 36 = 96; 98 - 96 = 2; 10 + 6 = 16", "ours"),
    Told("16 / 9", "9 x 1 = 9; 16 - 9 = 7", "ours"),
)
NEVER = (("9998 / 372", "too much"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.THINK_TIMES)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.THINK_TIMES) == [], why
