"""Digit by digit with carrying."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("43 + 38", "3 + 8 = 11; 40 + 30 + 10 = 80; 80 + 1 = 81", "nsw-school"),
    Told(
        "456 + 275",
        "6 + 5 = 11; 50 + 70 + 10 = 130; 400 + 200 + 100 = 700; 700 + 30 + 1 = 731",
        "nsw-school",
    ),
)
NEVER = (
    ("8 + 7", "there is one column only"),
    ("34 + 25", "nothing is carried: it is the split, ones first"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COLUMN)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COLUMN) == [], why
