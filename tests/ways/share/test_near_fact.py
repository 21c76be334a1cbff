"""Goes from a quotient close by."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("354 / 6", "360 / 6 = 60; 60 - 1 = 59", "ours"),
    Told("95 / 5", "100 / 5 = 20; 20 - 1 = 19", "ours"),
    Told("84 / 4", "80 / 4 = 20; 20 + 1 = 21", "ours"),
    Told("126 / 7", "140 / 7 = 20; 14 / 7 = 2; 20 - 2 = 18", "ours"),
)
NEVER = (
    ("96 / 6", "sixteen is near nothing friendly"),
    ("470 / 10", "ten of anything is known"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.NEAR_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.NEAR_FACT) == [], why
