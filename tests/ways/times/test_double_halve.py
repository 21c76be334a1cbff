"""One factor up, the other down by as much."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("18 x 5", "18 x 5 = 9 x 10; 9 x 10 = 90", "nz-pupil"),
    Told("20 x 97", "20 x 97 = 10 x 194; 10 x 194 = 1940", "nz-pupil"),
    Told("32 x 5", "32 x 5 = 16 x 10; 16 x 10 = 160", "wncp"),
    Told("12 x 33", "12 x 33 = 4 x 99; 4 x 99 = 396", "nz-ao"),
    Told("24 x 25", "24 x 25 = 12 x 50; 12 x 50 = 6 x 100; 6 x 100 = 600", "dh-blogs"),
    Told("48 x 5", "48 / 2 = 24; 24 x 10 = 240", "ours"),
    Told("16 x 5", "16 / 2 = 8; 5 x 2 = 10; 8 x 10 = 80", "ours"),
    Told("36 x 25", "36 x 25 = 9 x 100; 9 x 100 = 900", "ours"),
    Told("36 x 25", "36 / 4 = 9; 25 x 4 = 100; 9 x 100 = 900", "ours"),
)
NEVER = (
    ("7 x 9", "neither can be halved and a third of nine helps nothing"),
    ("24 x 37", "what comes of it is no easier"),
    ("2 x 8", "a double is known"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.DOUBLE_HALVE)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.DOUBLE_HALVE) == [], why
