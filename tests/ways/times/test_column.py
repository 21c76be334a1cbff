"""Digit by digit in the head."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("19 x 7", "9 x 7 = 63; 10 x 7 = 70; 70 + 60 = 130; 130 + 3 = 133", "ours"),
    Told(
        "345 x 6",
        "5 x 6 = 30; 40 x 6 = 240; 240 + 30 = 270; 300 x 6 = 1800; "
        "1800 + 200 = 2000; 2000 + 70 = 2070",
        "ours",
    ),
    Told("6 x 24", "6 x 4 = 24; 6 x 20 = 120; 120 + 20 = 140; 140 + 4 = 144", "ours"),
)
NEVER = (
    ("7 x 8", "one column is none"),
    ("31 x 3", "nothing is carried"),
    ("24 x 36", "two rows are for paper"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.COLUMN)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.COLUMN) == [], why
