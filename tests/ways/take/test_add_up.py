"""Goes up from the smaller number in hops."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("54 - 28", "28 + 2 = 30; 30 + 20 = 50; 50 + 4 = 54; 2 + 20 + 4 = 26", "vic1"),
    Told("63 - 39", "39 + 20 = 59; 59 + 4 = 63; 20 + 4 = 24", "nz-school"),
    Told("923 - 587", "587 + 336 = 923", "nz-ao"),
    Told("51 - 49", "49 + 2 = 51", "klein1998", read=False),
    Told("63 - 28", "28 + 2 = 30; 30 + 33 = 63; 2 + 33 = 35", "humphreys-parker", read=False),
    Told("305 - 178", "178 + 2 = 180; 180 + 20 = 200; 200 + 105 = 305; 2 + 20 + 105 = 127", "ours"),
    Told("62 - 33", "33 + 30 = 63; 63 - 1 = 62; 30 - 1 = 29", "ours"),
)
NEVER = (("305 - 9", "a long way up from a single digit"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADD_UP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADD_UP) == [], why
