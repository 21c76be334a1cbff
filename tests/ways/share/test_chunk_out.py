"""Takes out friendly lots and counts them."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("96 / 6", "10 x 6 = 60; 96 - 60 = 36; 6 x 6 = 36; 10 + 6 = 16", "ours"),
    Told("96 / 6", "10 x 6 = 60; 6 x 6 = 36; 10 + 6 = 16", "ours"),
    Told("96 / 6", "15 x 6 = 90; 1 x 6 = 6; 15 + 1 = 16", "ours"),
    Told(
        "84 / 4",
        "10 x 4 = 40; 84 - 40 = 44; 10 x 4 = 40; 44 - 40 = 4; 1 x 4 = 4; 10 + 10 + 1 = 21",
        "ours",
    ),
    Told("56 / 8", "5 x 8 = 40; 56 - 40 = 16; 2 x 8 = 16; 5 + 2 = 7", "ours"),
)
NEVER = (
    ("470 / 10", "ten of anything is known"),
    ("12 / 3", "there is nothing to gain"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.CHUNK_OUT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.CHUNK_OUT) == [], why
