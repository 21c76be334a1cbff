"""Changes both numbers alike."""

import pytest

from tests.ways.telling import Told, told
from waysaid.ways import Family

TOLD = (
    Told("534 - 395", "534 + 5 = 539; 395 + 5 = 400; 539 - 400 = 139", "vic2"),
    Told("198 - 89", "198 + 11 = 209; 89 + 11 = 100; 209 - 100 = 109", "te-slides"),
    Told("121 - 88", "121 - 88 = 123 - 90; 123 - 90 = 133 - 100; 133 - 100 = 33", "te-slides"),
    Told("52 - 24", "52 + 6 = 58; 24 + 6 = 30; 58 - 30 = 28", "heirdsfield", read=False),
    Told("71 - 34", "71 - 4 = 67; 34 - 4 = 30; 67 - 30 = 37", "ours"),
    Told("62 - 25", "62 - 25 = 67 - 30; 67 - 30 = 37", "ours"),
    Told("300 - 147", "300 - 1 = 299; 147 - 1 = 146; 299 - 146 = 153", "ours"),
)
NEVER = (
    ("7 - 3", "small numbers need no friend"),
    ("81 - 50", "the part is friendly already"),
)


@pytest.mark.parametrize("case", TOLD, ids=lambda case: f"{case.problem} by {case.source}")
def test_it_tells_the_worked_cases(case):
    assert case.steps in told(case.problem, Family.SHIFT_BOTH)


@pytest.mark.parametrize(("problem", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, why):
    assert told(problem, Family.SHIFT_BOTH) == [], why
