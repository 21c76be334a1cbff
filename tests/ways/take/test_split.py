"""Splits both numbers; a piece may fall short."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("603 - 384", "600 - 380 = 220; 3 - 4 = -1; 220 - 1 = 219", "nz-ao"),
    Told("63 - 28", "60 - 20 = 40; 3 - 8 = -5; 40 - 5 = 35", "humphreys-parker", read=False),
    Told("68 - 32", "60 - 30 = 30; 8 - 2 = 6; 30 + 6 = 36", "nns1999", read=False),
    Told("42 - 27", "42 = 30 + 12; 30 - 20 = 10; 12 - 7 = 5; 10 + 5 = 15", "ours"),
)
NEVER = (
    ("14 - 4", "nothing alike is left to take"),
    ("13 - 7", "below twenty nothing falls below 0"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SPLIT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SPLIT) == [], why
