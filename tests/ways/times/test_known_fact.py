"""Just knows the product."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("7 x 8", "7 x 8 = 56", "ours"),
    Told("8 x 7", "7 x 8 = 56", "ours"),
    Told("40 x 60", "40 x 60 = 2400", "ours"),
    Told("30 x 40", "3 x 4 = 12; 30 x 40 = 1200", "ours"),
    Told("47 x 100", "47 x 100 = 4700", "ours"),
    Told("2 x 35", "2 x 35 = 70", "ours"),
    Told("4 x 25", "4 x 25 = 100", "ours"),
    Told("12 x 12", "12 x 12 = 144", "ours"),
    Told("7 x 1", "7 x 1 = 7", "ours"),
    Told("0 x 7", "0 x 7 = 0", "ours"),
)
NEVER = (
    ("14 x 6", "no table has it"),
    ("2 x 37", "no easy double"),
    ("5 x 25", "more twenty-fives than a few"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.KNOWN_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.KNOWN_FACT) == [], why
