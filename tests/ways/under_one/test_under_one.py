"""A number divided by a larger one."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.ways.telling import told
from waysaid.number import Operation, exact, parse, solve
from waysaid.ways import Family, ways

CASES = (
    ("3 / 8", Family.RENAME, "3 / 8 = 3/8"),
    ("4 / 6", Family.RENAME, "4 / 6 = 4/6; 4/6 = 2/3"),
    ("3 / 8", Family.BREAK_UP, "1 / 8 = 1/8; 3 x 1/8 = 3/8"),
    ("3 / 8", Family.FACTOR_STEPS, "3 / 2 = 1.5; 1.5 / 2 = 0.75; 0.75 / 2 = 0.375"),
    ("3 / 4", Family.BREAK_UP, "2.8 / 4 = 0.7; 0.2 / 4 = 0.05; 0.7 + 0.05 = 0.75"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_less_than_one_for_each_is_told(problem, family, steps):
    assert steps in told(problem, family)


@given(st.integers(1, 60), st.integers(1, 60))
def test_every_way_is_true_and_ends_with_the_answer(whole, more):
    problem = parse(f"{whole} / {whole + more}")
    found = ways(problem)
    assert found
    for way in found:
        assert all(step.true for step in way.steps)
        last = way.steps[-1].equation
        ends = not isinstance(last.right, Operation) and exact(last.right) == solve(problem)
        assert ends or way.family is Family.THINK_TIMES
        assert way.remainder is None or not ends
