"""Goes up to the total, however far."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("7 + _ = 12", "7 + 3 = 10; 10 + 2 = 12; 3 + 2 = 5", "ours"),
    Told("9 + _ = 305", "9 + 1 = 10; 10 + 295 = 305; 1 + 295 = 296", "ours"),
    Told("63 = 70 - _", "63 + 7 = 70", "ours"),
)
NEVER = (("_ - 5 = 7", "it asks for the whole"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADD_UP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADD_UP) == [], why
