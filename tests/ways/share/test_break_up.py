"""Cuts what is shared."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("84 / 4", "80 / 4 = 20; 4 / 4 = 1; 20 + 1 = 21", "ours"),
    Told("96 / 6", "60 / 6 = 10; 36 / 6 = 6; 10 + 6 = 16", "ours"),
    Told("96 / 6", "96 = 60 + 36; 60 / 6 = 10; 36 / 6 = 6; 10 + 6 = 16", "ours"),
    Told("96 / 6", "90 / 6 = 15; 6 / 6 = 1; 15 + 1 = 16", "ours"),
    Told("96 / 6", "48 / 6 = 8; 8 + 8 = 16", "ours"),
    Told("369 / 3", "300 / 3 = 100; 60 / 3 = 20; 9 / 3 = 3; 100 + 20 + 3 = 123", "ours"),
)
NEVER = (
    ("470 / 10", "ten of anything is known"),
    ("12 / 3", "there is nothing to gain"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.BREAK_UP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.BREAK_UP) == [], why
