"""Finds the factor that is missing."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("40 / 5", "5 x 8 = 40", "ccss"),
    Told("354 / 6", "6 x 59 = 354", "nz-ao"),
    Told("64 / 8", "8 x 8 = 64", "alberta"),
    Told("96 / 6", "6 x 10 = 60; 6 x 6 = 36; 60 + 36 = 96; 10 + 6 = 16", "ours"),
    Told("354 / 6", "6 x 60 = 360; 360 - 6 = 354; 60 - 1 = 59", "ours"),
    Told("96 / 6", "6 x 2 = 12; 6 x 4 = 24; 6 x 8 = 48; 6 x 16 = 96", "ours"),
    Told("115 / 23", "23 x 5 = 115", "ours"),
    Told("54 / _ = 9", "9 x 6 = 54", "ours"),
)
NEVER = (
    ("8928 / 372", "too much"),
    ("7 / 7", "nothing to think of"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.THINK_TIMES)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.THINK_TIMES) == [], why
