"""Whole numbers to a million: every sum and difference has ways of a size to do in the head."""

import random

import pytest

from tests.counts import count
from tests.ways.judge import faults
from tests.ways.telling import told
from waysaid.number import parse
from waysaid.ways import Family, ways

MILLION = 10**6
CASES = (
    ("46000 + 38000", Family.BRIDGE, "46000 + 4000 = 50000; 50000 + 34000 = 84000"),
    ("46000 + 38000", Family.RENAME, "46 + 38 = 84; 84 x 1000 = 84000"),
    ("46000 + 38000", Family.ADJUST, "46000 + 40000 = 86000; 86000 - 2000 = 84000"),
    ("84000 - 38000", Family.RENAME, "84 - 38 = 46; 46 x 1000 = 46000"),
    ("84000 - 38000", Family.BRIDGE, "84000 - 4000 = 80000; 80000 - 34000 = 46000"),
    ("250000 + 400000", Family.RENAME, "25 + 40 = 65; 65 x 10000 = 650000"),
    ("3007 - 2998", Family.ADJUST, "3007 - 3000 = 7; 7 + 2 = 9"),
    ("3007 - 2998", Family.ADD_UP, "2998 + 2 = 3000; 3000 + 7 = 3007; 2 + 7 = 9"),
    ("998 + 350", Family.BRIDGE, "998 + 2 = 1000; 1000 + 348 = 1348"),
    ("998 + 350", Family.GIVE_AND_TAKE, "998 + 2 = 1000; 350 - 2 = 348; 1000 + 348 = 1348"),
    (
        "12345 + 67890",
        Family.SPLIT,
        "12000 + 67000 = 79000; 345 + 890 = 1235; 79000 + 1235 = 80235",
    ),
    ("12345 + 67890", Family.JUMP, "12345 + 67000 = 79345; 79345 + 890 = 80235"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_a_child_may_work_large_numbers(problem, family, steps):
    assert steps in told(problem, family)


def _large(seed: int, many: int) -> list[str]:
    dice = random.Random(seed)
    problems = []
    for _ in range(many):
        unit = dice.choice((1, 1, 10, 100, 1000, 10_000, 50_000))
        total = dice.randint(2, MILLION // unit) * unit
        left = dice.randint(1, total // unit) * unit
        problems += [f"{left} + {total - left}", f"{total} - {left}"]
    return problems


def test_every_sum_and_difference_to_a_million_has_ways_and_none_is_faulty():
    for problem in _large(31, count(test=500, sweep=20_000)):
        assert ways(parse(problem)), problem
        assert faults(problem) == []


def test_no_way_has_more_steps_than_a_child_would_keep():
    for problem in _large(32, count(test=200, sweep=5000)):
        for way in ways(parse(problem)):
            counted = way.family is Family.COUNTING
            assert counted or len(way.steps) <= 10, [step.text for step in way.steps]
