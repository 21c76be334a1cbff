"""Tens or hundreds as a unit."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("3 x 200", "3 x 2 = 6; 6 x 100 = 600", "wncp"),
    Told("14 x 30", "14 x 3 = 42; 42 x 10 = 420", "ours"),
    Told("30 x 40", "3 x 4 = 12; 12 x 100 = 1200", "ours"),
    Told("6 x 140", "6 x 14 = 84; 84 x 10 = 840", "ours"),
)
NEVER = (
    ("14 x 6", "no zero to leave out"),
    ("47 x 10", "ten of anything is known"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.RENAME)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.RENAME) == [], why
