"""Takes one friendly number for each and mends."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("37 + 41 + 40 + 38", "4 x 40 = 160; 160 - 4 = 156", "nz-ao"),
    Told("25 + 24 + 26", "25 + 25 + 25 = 75", "ours"),
)
NEVER = (("14 + 23 + 36", "they are not near one number"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADJUST)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADJUST) == [], why
