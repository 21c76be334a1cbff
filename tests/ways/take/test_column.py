"""Digit by digit with trading."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("42 - 27", "42 = 30 + 12; 12 - 7 = 5; 30 - 20 = 10; 10 + 5 = 15", "nsw-school"),
    Told(
        "305 - 178",
        "305 = 200 + 90 + 15; 15 - 8 = 7; 90 - 70 = 20; 200 - 100 = 100; 100 + 20 + 7 = 127",
        "ours",
    ),
)
NEVER = (
    ("9 - 4", "there is one column only"),
    ("68 - 32", "nothing is traded: it is the split, ones first"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COLUMN)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COLUMN) == [], why
