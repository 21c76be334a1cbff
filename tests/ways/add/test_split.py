"""Splits both numbers by place."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("28 + 67", "20 + 60 = 80; 8 + 7 = 15; 80 + 15 = 95", "il-guide"),
    Told("56 + 37", "50 + 30 = 80; 6 + 4 = 10; 10 + 3 = 13; 80 + 13 = 93", "vic2"),
    Told("34 + 20", "30 + 20 = 50; 4 + 0 = 4; 50 + 4 = 54", "vic2"),
    Told("8 + 5", "5 + 5 = 10; 10 + 3 = 13", "nz-stage"),
    Told("28 + 35", "8 + 5 = 13; 20 + 30 = 50; 50 + 13 = 63", "heirdsfield", read=False),
    Told("8 + 7", "5 + 5 = 10; 3 + 2 = 5; 10 + 5 = 15", "ours"),
    Told("14 + 3", "4 + 3 = 7; 10 + 7 = 17", "ours"),
    Told("456 + 275", "400 + 200 = 600; 50 + 70 = 120; 6 + 5 = 11; 600 + 120 + 11 = 731", "ours"),
    Told("456 + 275", "450 + 270 = 720; 6 + 5 = 11; 720 + 11 = 731", "ours"),
)
NEVER = (
    ("40 + 7", "there is nothing alike to put together"),
    ("4 + 3", "no fives in them"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SPLIT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SPLIT) == [], why
