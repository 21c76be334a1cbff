"""Uses a friendly number near by and mends."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("36 + 9", "36 + 10 = 46; 46 - 1 = 45", "bbc-pages"),
    Told("9 + 5", "10 + 5 = 15; 15 - 1 = 14", "oer-nt"),
    Told("47 + 38", "50 + 40 = 90; 90 - 5 = 85", "nz-ao"),
    Told("28 + 36", "30 + 36 = 66; 66 - 2 = 64", "handbook2007"),
    Told("547 + 98", "547 + 100 = 647; 647 - 2 = 645", "belize"),
    Told("37 + 25", "37 + 30 = 67; 67 - 5 = 62", "ours"),
    Told("36 + 13", "36 + 14 = 50; 50 - 1 = 49", "ours"),
)
NEVER = (
    ("31 + 22", "nothing near above"),
    ("40 + 30", "both are friendly already"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.ADJUST)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.ADJUST) == [], why
