"""Sums that are simply known."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("6 + 6", "6 + 6 = 12", "ours"),
    Told("7 + 5", "7 + 5 = 12", "ours"),
    Told("40 + 7", "40 + 7 = 47", "ours"),
    Told("30 + 20", "3 + 2 = 5; 30 + 20 = 50", "ours"),
    Told("25 + 25", "25 + 25 = 50", "ours"),
    Told("250 + 250", "250 + 250 = 500", "ours"),
    Told("35 + 65", "35 + 65 = 100", "ours"),
    Told("7 + 0", "7 + 0 = 7", "ours"),
)
NEVER = (
    ("37 + 25", "no child just knows it"),
    ("421 + 387", "no child just knows it"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.KNOWN_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.KNOWN_FACT) == [], why
