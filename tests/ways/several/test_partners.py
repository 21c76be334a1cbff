"""Pairs the numbers that go together."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("2 + 6 + 4", "6 + 4 = 10; 2 + 10 = 12", "ccss"),
    Told("45 + 80 + 55 + 20", "80 + 20 = 100; 45 + 55 = 100; 100 + 100 = 200", "nsw-dec2011"),
    Told("14 + 8 + 6", "14 + 6 = 20; 20 + 8 = 28", "vic1"),
    Told("3 + 5 + 7 + 5", "3 + 7 = 10; 5 + 5 = 10; 10 + 10 = 20", "vic-prog"),
    Told("13 + 21 + 13", "13 + 13 = 26; 26 + 21 = 47", "nns1999", read=False),
    Told("58 + 47 - 38", "58 - 38 = 20; 20 + 47 = 67", "nns1999", read=False),
    Told("17 + 9 - 7", "17 - 7 = 10; 10 + 9 = 19", "nns1999", read=False),
    Told("90 - 27 - 13", "27 + 13 = 40; 90 - 40 = 50", "ours"),
    Told("43 + 16 - 16", "16 - 16 = 0; 43 + 0 = 43", "ours"),
    Told("2 + 3 + 9", "9 + 3 = 12; 12 + 2 = 14", "ours"),
)
NEVER = (
    ("23 + 36 + 45", "none go together"),
    ("8 + 7", "there are only two"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.PARTNERS)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.PARTNERS) == [], why
