"""Takes tens from tens, then goes on and off."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("65 - 49", "60 - 40 = 20; 20 + 5 = 25; 25 - 9 = 16", "klein1998", read=False),
    Told("65 - 49", "60 - 40 = 20; 20 - 9 = 11; 11 + 5 = 16", "ours"),
    Told("65 - 49", "60 - 40 = 20; 20 + 5 = 25; 25 - 5 = 20; 20 - 4 = 16", "ours"),
)
NEVER = (
    ("65 - 60", "no tens are left"),
    ("60 - 25", "only one has ones"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SPLIT_THEN_JUMP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SPLIT_THEN_JUMP) == [], why
