"""Moves some from one number to the other."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("28 + 67", "28 + 2 = 30; 67 - 2 = 65; 30 + 65 = 95", "il-guide"),
    Told("6 + 8", "6 + 1 = 7; 8 - 1 = 7; 7 + 7 = 14", "sask"),
    Told("24 + 26", "24 + 1 = 25; 26 - 1 = 25; 25 + 25 = 50", "sask"),
    Told("398 + 555", "398 + 2 = 400; 555 - 2 = 553; 400 + 553 = 953", "book-fig4"),
    Told("52 + 39", "52 - 2 = 50; 39 + 2 = 41; 50 + 41 = 91", "ours"),
    Told("25 + 37", "37 + 3 = 40; 25 - 3 = 22; 22 + 40 = 62", "ours"),
)
NEVER = (
    ("30 + 40", "both are friendly already"),
    ("38 + 20", "no friendly number is broken up"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.GIVE_AND_TAKE)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.GIVE_AND_TAKE) == [], why
