"""Scales both numbers alike."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("246 / 6", "246 / 6 = 123 / 3; 123 / 3 = 41", "eng-y5-map"),
    Told("800 / 40", "800 / 40 = 80 / 4; 80 / 4 = 40 / 2; 40 / 2 = 20", "parrish-slides"),
    Told("1000 / 8", "1000 / 8 = 500 / 4; 500 / 4 = 250 / 2; 250 / 2 = 125", "parrish-slides"),
    Told("180 / 12", "180 / 12 = 90 / 6; 90 / 6 = 15", "ours"),
    Told("45 / 5", "45 / 5 = 90 / 10; 90 / 10 = 9", "ours"),
    Told("45 / 5", "45 x 2 = 90; 5 x 2 = 10; 90 / 10 = 9", "ours"),
    Told("135 / 15", "135 / 15 = 270 / 30; 270 / 30 = 9", "ours"),
    Told("130 / 5", "130 x 2 = 260; 260 / 10 = 26", "ours"),
    Told("350 / 25", "350 / 25 = 700 / 50; 700 / 50 = 1400 / 100; 1400 / 100 = 14", "ours"),
)
NEVER = (
    ("91 / 7", "nothing divides both"),
    ("470 / 10", "ten is as easy as it gets"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SCALE_BOTH)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SCALE_BOTH) == [], why
