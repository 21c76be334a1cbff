"""Multiplies those that go together first."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("2 x 7 x 5", "2 x 5 = 10; 10 x 7 = 70", "ours"),
    Told("7 x 4 x 25", "4 x 25 = 100; 7 x 100 = 700", "ours"),
    Told("5 x 3 x 2 x 7", "5 x 2 = 10; 3 x 7 = 21; 10 x 21 = 210", "ours"),
)
NEVER = (("23 x 17 x 3", "no two go together"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.PARTNERS)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.PARTNERS) == [], why
