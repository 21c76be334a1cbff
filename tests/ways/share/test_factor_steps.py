"""Divides in steps."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("216 / 12", "216 / 2 = 108; 108 / 2 = 54; 54 / 3 = 18", "nz-ao"),
    Told("90 / 6", "90 / 3 = 30; 30 / 2 = 15", "nns1999", read=False),
    Told("378 / 21", "378 / 3 = 126; 126 / 7 = 18", "nns1999", read=False),
    Told("96 / 8", "96 / 2 = 48; 48 / 2 = 24; 24 / 2 = 12", "ours"),
    Told("84 / 4", "84 / 2 = 42; 42 / 2 = 21", "ours"),
    Told("720 / 60", "720 / 10 = 72; 72 / 6 = 12", "ours"),
)
NEVER = (
    ("91 / 7", "seven is prime"),
    ("470 / 10", "ten of anything is known"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.FACTOR_STEPS)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.FACTOR_STEPS) == [], why
