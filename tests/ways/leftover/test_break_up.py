"""Shares what can be shared evenly."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("16 / 3", "15 / 3 = 5; 16 - 15 = 1", "ours"),
    Told("16 / 3", "15 / 3 = 5; 1 / 3 = 1/3; 5 + 1/3 = 5 1/3", "ours"),
    Told("98 / 6", "60 / 6 = 10; 36 / 6 = 6; 10 + 6 = 16; 98 - 96 = 2", "ours"),
)
NEVER = (("9998 / 372", "too much"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.BREAK_UP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.BREAK_UP) == [], why
