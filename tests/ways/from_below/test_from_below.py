"""Numbers below zero: through zero, turned round, counted, and a number missing beside one."""

import random

import pytest

from tests.counts import count
from tests.ways.exact_judge import holds, number
from tests.ways.telling import told
from waysaid.number import Operation, exact, parse, solve
from waysaid.ways import Family, ways

CASES = (
    ("-3 + 5", Family.BRIDGE, "-3 + 3 = 0; 0 + 2 = 2"),
    ("-3 + 5", Family.RENAME, "-3 + 5 = 5 - 3; 5 - 3 = 2"),
    ("-3 - 4", Family.RENAME, "3 + 4 = 7; 0 - 7 = -7"),
    ("-7 + 5", Family.COUNTING, "-7 + 1 = -6; -6 + 1 = -5; -5 + 1 = -4; -4 + 1 = -3; -3 + 1 = -2"),
    ("-8 - 5", Family.BRIDGE, "-8 - 2 = -10; -10 - 3 = -13"),
    ("5 - (-3)", Family.ADD_UP, "-3 + 3 = 0; 0 + 5 = 5; 3 + 5 = 8"),
    ("5 + (-3)", Family.RENAME, "5 + (-3) = 5 - 3; 5 - 3 = 2"),
    ("-3 x 2", Family.RENAME, "3 x 2 = 6; 0 - 6 = -6"),
    ("_ - 4 = -7", Family.KNOWN_FACT, "-7 + 4 = -3"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_a_number_below_zero_is_worked(problem, family, steps):
    assert steps in told(problem, family)


def test_every_start_below_zero_has_true_ways_that_end_well_and_none_twice():
    dice = random.Random(61)
    for _ in range(count(test=400, sweep=20_000)):
        one, other = (dice.randint(-60, 60) for _ in range(2))
        sign = dice.choice("+-")
        asked = f"{one} {sign} ({other})" if other < 0 else f"{one} {sign} {other}"
        problem = parse(asked)
        found = ways(problem)
        texts = [tuple(step.text for step in way.steps) for way in found]
        assert found, asked
        assert len(set(texts)) == len(texts), asked
        for way, steps in zip(found, texts, strict=True):
            assert all(map(holds, steps)), steps
            last = way.steps[-1].equation
            ends = not isinstance(last.right, Operation) and exact(last.right) == solve(problem)
            answer = number(str(solve(problem)))
            within = way.family in (Family.ADD_UP, Family.THINK_ADD, Family.COUNTING)
            assert ends or (within and str(abs(answer)) in steps[-1]), (asked, steps)
