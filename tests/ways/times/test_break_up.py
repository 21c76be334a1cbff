"""Cuts one factor or both."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("8 x 7", "8 x 5 = 40; 8 x 2 = 16; 40 + 16 = 56", "ccss"),
    Told("13 x 6", "10 x 6 = 60; 3 x 6 = 18; 60 + 18 = 78", "nz-ao"),
    Told("24 x 36", "20 x 36 = 720; 4 x 36 = 144; 720 + 144 = 864", "nz-ao"),
    Told("19 x 7", "9 x 7 = 63; 10 x 7 = 70; 63 + 70 = 133", "nemp"),
    Told("11 x 12", "10 x 12 = 120; 1 x 12 = 12; 120 + 12 = 132", "mult-slides"),
    Told("14 x 6", "14 = 10 + 4; 10 x 6 = 60; 4 x 6 = 24; 60 + 24 = 84", "ours"),
    Told("28 x 4", "25 x 4 = 100; 3 x 4 = 12; 100 + 12 = 112", "ours"),
    Told("345 x 6", "300 x 6 = 1800; 45 x 6 = 270; 1800 + 270 = 2070", "ours"),
    Told(
        "345 x 6",
        "300 x 6 = 1800; 40 x 6 = 240; 1800 + 240 = 2040; 5 x 6 = 30; 2040 + 30 = 2070",
        "ours",
    ),
    Told(
        "24 x 36",
        "20 x 30 = 600; 20 x 6 = 120; 4 x 30 = 120; 4 x 6 = 24; 600 + 120 + 120 + 24 = 864",
        "ours",
    ),
    Told("14 x 15", "14 x 10 = 140; 140 / 2 = 70; 140 + 70 = 210", "ours"),
)
NEVER = (
    ("47 x 10", "ten of anything is known"),
    ("2 x 8", "a double is known"),
    ("3 x 4", "there is nothing to gain"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.BREAK_UP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.BREAK_UP) == [], why
