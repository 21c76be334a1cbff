"""Goes from a product close by, some groups more or fewer."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("9 x 7", "10 x 7 = 70; 70 - 7 = 63", "nemp"),
    Told("19 x 7", "20 x 7 = 140; 140 - 7 = 133", "nemp"),
    Told("3 x 7", "2 x 7 = 14; 14 + 7 = 21", "alberta"),
    Told("7 x 9", "7 x 10 = 70; 70 - 7 = 63", "alberta"),
    Told("51 x 3", "50 x 3 = 150; 150 + 3 = 153", "nns1999", read=False),
    Told("13 x 11", "13 x 10 = 130; 130 + 13 = 143", "nns1999", read=False),
    Told("6 x 7", "6 x 6 = 36; 36 + 6 = 42", "lefevre1996m"),
    Told("7 x 8", "5 x 8 = 40; 40 + 8 = 48; 48 + 8 = 56", "ours"),
    Told("6 x 8", "5 x 8 = 40; 40 + 8 = 48", "ours"),
    Told("7 x 8", "7 x 7 = 49; 49 + 7 = 56", "ours"),
    Told("18 x 7", "20 x 7 = 140; 2 x 7 = 14; 140 - 14 = 126", "ours"),
    Told("18 x 7", "20 x 7 = 140; 140 - 7 = 133; 133 - 7 = 126", "ours"),
    Told("12 x 7", "10 x 7 = 70; 70 + 14 = 84", "ours"),
    Told("396 x 4", "400 x 4 = 1600; 4 x 4 = 16; 1600 - 16 = 1584", "ours"),
    Told("24 x 4", "25 x 4 = 100; 100 - 4 = 96", "ours"),
    Told("7 x 9", "8 x 8 = 64; 64 - 1 = 63", "ours"),
    Told("18 x 22", "20 x 20 = 400; 400 - 4 = 396", "ours"),
)
NEVER = (
    ("20 x 30", "both are friendly already"),
    ("47 x 10", "ten of anything is known"),
    ("14 x 35", "nothing friendly is near"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.NEAR_FACT)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.NEAR_FACT) == [], why
