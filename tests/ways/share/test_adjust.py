"""Shares by a friendly number and scales back."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("130 / 5", "130 / 10 = 13; 13 x 2 = 26", "ours"),
    Told("96 / 6", "96 / 2 = 48; 48 / 6 = 8; 8 x 2 = 16", "ours"),
    Told("600 / 25", "600 / 100 = 6; 6 x 4 = 24", "ours"),
)
NEVER = (("91 / 7", "an odd number has no half"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADJUST)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADJUST) == [], why
