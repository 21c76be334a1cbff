"""The fact in the problem's own form."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("12 - _ = 7", "12 - 5 = 7", "ours"),
    Told("_ - 5 = 7", "12 - 5 = 7", "ours"),
    Told("_ + 7 = 12", "5 + 7 = 12", "ours"),
    Told("12 = 7 + _", "7 + 5 = 12", "ours"),
)
NEVER = (("71 - _ = 34", "no child just knows it"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.KNOWN_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.KNOWN_FACT) == [], why
