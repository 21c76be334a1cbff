"""The fact in the problem's own form."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("12 - _ = 7", "12 - 5 = 7", "ours"),
    Told("_ - 5 = 7", "12 - 5 = 7", "ours"),
    Told("_ + 7 = 12", "5 + 7 = 12", "ours"),
    Told("12 = 7 + _", "7 + 5 = 12", "ours"),
    Told("_ x 6 = 54", "9 x 6 = 54", "ours"),
    Told("54 / _ = 9", "54 / 6 = 9", "ours"),
    Told("_ / 6 = 9", "54 / 6 = 9", "ours"),
    Told("7 x _ = 7", "7 x 1 = 7", "ours"),
)
NEVER = (("71 - _ = 34", "no child just knows it"), ("_ x 17 = 238", "the same"))


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.KNOWN_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.KNOWN_FACT) == [], why
