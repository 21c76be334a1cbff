"""Jumps in place-value pieces."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("40 + 67", "40 + 60 = 100; 100 + 7 = 107", "bbc-pages"),
    Told("20 + 56", "20 + 50 = 70; 70 + 6 = 76", "bbc-pages"),
    Told("46 + 35", "46 + 10 = 56; 56 + 10 = 66; 66 + 10 = 76; 76 + 5 = 81", "nsw-bos"),
    Told("28 + 24", "28 + 20 = 48; 48 + 2 = 50; 50 + 2 = 52", "us-class"),
    Told("28 + 35", "28 + 5 = 33; 33 + 30 = 63", "heirdsfield", read=False),
    Told("45 + 39", "45 + 30 = 75; 75 + 5 = 80; 80 + 4 = 84", "klein1998", read=False),
    Told("540 + 280", "540 + 200 = 740; 740 + 80 = 820", "nns1999", read=False),
    Told("37 + 20", "37 + 20 = 57", "ours"),
    Told("37 + 8", "37 + 8 = 45", "ours: two digits and ones, eng-nc2014 year 2"),
    Told("245 + 138", "245 + 130 = 375; 375 + 8 = 383", "ours"),
)
NEVER = (
    ("6 + 8", "a fact, known or worked out"),
    ("40 + 8", "read off, nothing goes on"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.JUMP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.JUMP) == [], why
