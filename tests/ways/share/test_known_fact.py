"""Just knows the quotient."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("56 / 8", "56 / 8 = 7", "ours"),
    Told("600 / 3", "6 / 3 = 2; 600 / 3 = 200", "eng-nc2014"),
    Told("470 / 10", "470 / 10 = 47", "ours"),
    Told("7 / 7", "7 / 7 = 1", "ours"),
    Told("0 / 7", "0 / 7 = 0", "ours"),
)
NEVER = (("96 / 6", "no table has it"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.KNOWN_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.KNOWN_FACT) == [], why
