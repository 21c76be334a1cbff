"""Puts the tens together, then goes on with the ones."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("45 + 39", "40 + 30 = 70; 70 + 5 = 75; 75 + 9 = 84", "klein1998", read=False),
    Told(
        "38 + 26",
        "30 + 20 = 50; 50 + 8 = 58; 58 + 2 = 60; 60 + 4 = 64",
        "carpenter1998",
        read=False,
    ),
    Told("37 + 25", "30 + 20 = 50; 50 + 5 = 55; 55 + 7 = 62", "ours"),
)
NEVER = (
    ("40 + 25", "only one has ones"),
    ("7 + 25", "only one has tens"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SPLIT_THEN_JUMP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SPLIT_THEN_JUMP) == [], why
