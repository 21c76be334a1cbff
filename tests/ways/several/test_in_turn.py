"""Takes the numbers in the order they are written."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("7 + 26 + 3", "7 + 26 = 33; 33 + 3 = 36", "ours"),
    Told("58 + 47 - 38", "58 + 47 = 105; 105 - 38 = 67", "ours"),
)
NEVER = (("5 - 9 + 8", "it would fall below 0 on the way"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.JUMP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.JUMP) == [], why
