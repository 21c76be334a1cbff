"""Takes the part off in place-value pieces."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("345 - 26", "345 - 20 = 325; 325 - 6 = 319", "homemaths"),
    Told("245 - 178", "245 - 100 = 145; 145 - 70 = 75; 75 - 8 = 67", "belize"),
    Told("65 - 49", "65 - 40 = 25; 25 - 5 = 20; 20 - 4 = 16", "klein1998", read=False),
    Told("52 - 24", "52 - 4 = 48; 48 - 20 = 28", "heirdsfield", read=False),
    Told("85 - 40", "85 - 40 = 45", "ours"),
    Told("300 - 5", "300 - 5 = 295", "ours: three digits and ones, eng-nc2014 year 3"),
    Told("71 - 34", "71 - 10 = 61; 61 - 10 = 51; 51 - 10 = 41; 41 - 4 = 37", "ours"),
)
NEVER = (("13 - 8", "a fact, known or worked out"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.JUMP)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.JUMP) == [], why
