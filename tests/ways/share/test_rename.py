"""Tens or hundreds as a unit."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("600 / 3", "6 / 3 = 2; 2 x 100 = 200", "ours"),
    Told("240 / 4", "24 / 4 = 6; 6 x 10 = 60", "ours"),
)
NEVER = (
    ("96 / 6", "no zero to leave out"),
    ("300 / 50", "tens would have to be shared by tens"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.RENAME)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.RENAME) == [], why
