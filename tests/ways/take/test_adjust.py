"""Takes a friendly number and mends."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("46 - 8", "46 - 10 = 36; 36 + 2 = 38", "bbc-pages"),
    Told("923 - 587", "923 - 600 = 323; 323 + 13 = 336", "nz-ao"),
    Told("324 - 86", "324 - 100 = 224; 224 + 14 = 238", "nz-school"),
    Told("52 - 24", "52 - 30 = 22; 22 + 6 = 28", "heirdsfield", read=False),
    Told("584 - 176", "584 - 184 = 400; 400 + 8 = 408", "nns1999", read=False),
    Told("405 - 399", "405 - 400 = 5; 5 + 1 = 6", "nns1999", read=False),
    Told("63 - 28", "60 - 28 = 32; 32 + 3 = 35", "ours"),
    Told("82 - 39", "80 - 40 = 40; 40 + 3 = 43", "ours"),
)
NEVER = (("75 - 30", "there is nothing to put right"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADJUST)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADJUST) == [], why
