"""Takes out lots until less than a group is left."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("98 / 6", "10 x 6 = 60; 98 - 60 = 38; 6 x 6 = 36; 38 - 36 = 2; 10 + 6 = 16", "ours"),
    Told(
        "98 / 6",
        "10 x 6 = 60; 98 - 60 = 38; 6 x 6 = 36; 38 - 36 = 2; 10 + 6 = 16; 98 / 6 = 16 1/3",
        "ours",
    ),
)
NEVER = (("16 / 3", "there is nothing to gain"),)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.CHUNK_OUT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.CHUNK_OUT) == [], why
