"""Splits every number by place."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("14 + 23 + 16", "10 + 20 + 10 = 40; 4 + 3 + 6 = 13; 40 + 13 = 53", "ours"),
    Told("58 + 47 - 38", "50 + 40 - 30 = 60; 8 + 7 - 8 = 7; 60 + 7 = 67", "ours"),
)
NEVER = (
    ("2 + 6 + 4", "there is one column only"),
    ("20 + 30 + 40", "there is one column only"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SPLIT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SPLIT) == [], why
