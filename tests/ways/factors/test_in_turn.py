"""Multiplies in the order written."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("3 x 7 x 4", "3 x 7 = 21; 21 x 4 = 84", "ours"),
    Told("8 x 12 x 12", "8 x 12 = 96; 96 x 10 = 960; 96 x 2 = 192; 960 + 192 = 1152", "ours"),
)
NEVER = (("47 x 89 x 3", "too much in one go"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.FACTOR_STEPS)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.FACTOR_STEPS) == [], why
