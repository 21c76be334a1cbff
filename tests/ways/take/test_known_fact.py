"""Differences that are simply known."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("12 - 8", "8 + 4 = 12; 12 - 8 = 4", "ccss"),
    Told("12 - 8", "12 - 8 = 4", "ours"),
    Told("70 - 40", "7 - 4 = 3; 70 - 40 = 30", "ours"),
    Told("100 - 35", "100 - 35 = 65", "ours"),
    Told("7 - 7", "7 - 7 = 0", "ours"),
)
NEVER = (("71 - 34", "no child just knows it"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.KNOWN_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.KNOWN_FACT) == [], why
