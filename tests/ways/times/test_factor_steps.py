"""One factor in the factors it is made of."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("253 x 4", "253 x 2 = 506; 506 x 2 = 1012", "vic2"),
    Told("15 x 16", "5 x 2 = 10; 3 x 8 = 24; 10 x 24 = 240", "vic2"),
    Told("12 x 6", "12 x 3 = 36; 36 x 2 = 72", "belize"),
    Told("18 x 5", "9 x 5 = 45; 45 + 45 = 90", "iowa2020"),
    Told("4 x 3", "2 x 3 = 6; 6 + 6 = 12", "alberta"),
    Told("60 x 4", "60 x 2 = 120; 120 x 2 = 240", "nns1999", read=False),
    Told("7 x 8", "7 x 2 = 14; 14 x 2 = 28; 28 x 2 = 56", "ours"),
    Told("7 x 8", "7 + 7 = 14; 14 + 14 = 28; 28 + 28 = 56", "ours"),
    Told("35 x 12", "35 x 2 = 70; 70 x 6 = 420", "ours"),
)
NEVER = (
    ("7 x 11", "both are prime"),
    ("47 x 10", "ten of anything is known"),
    ("2 x 8", "a double is known"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.FACTOR_STEPS)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.FACTOR_STEPS) == [], why
