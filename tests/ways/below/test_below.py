"""Differences below zero."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.ways.telling import told
from waysaid.number import Language, parse
from waysaid.ways import Family, how_said, ways

CASES = (
    ("25 - 40", Family.BRIDGE, "25 - 25 = 0; 0 - 15 = -15"),
    ("25 - 40", Family.RENAME, "40 - 25 = 15; 0 - 15 = -15"),
    ("25 - 47", Family.JUMP, "25 - 40 = -15; -15 - 7 = -22"),
    ("25 - 47", Family.SPLIT, "20 - 40 = -20; 5 - 7 = -2; -20 - 2 = -22"),
    ("25 - 43", Family.SPLIT, "20 - 40 = -20; 5 - 3 = 2; -20 + 2 = -18"),
    ("25 - 39", Family.ADJUST, "25 - 40 = -15; -15 + 1 = -14"),
    ("3 - 5", Family.COUNTING, "3 - 1 = 2; 2 - 1 = 1; 1 - 1 = 0; 0 - 1 = -1; -1 - 1 = -2"),
    ("3 - 8", Family.KNOWN_FACT, "3 - 8 = -5"),
    ("5 - 3 - 7", Family.JUMP, "5 - 3 = 2; 2 - 7 = -5"),
    ("3 - 8 + 10", Family.PARTNERS, "3 + 10 = 13; 13 - 8 = 5"),
    ("_ + 12 = 7", Family.BRIDGE, "7 - 7 = 0; 0 - 5 = -5"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_a_child_may_go_below_zero(problem, family, steps):
    assert steps in told(problem, family)


@given(st.integers(0, 10**6), st.integers(1, 10**6))
def test_every_difference_below_zero_has_true_ways_that_end_with_it(whole, more):
    found = ways(parse(f"{whole} - {whole + more}"))
    assert found
    for way in found:
        assert all(step.true for step in way.steps)
        assert way.steps[-1].equation.right == way.answer == -more


def test_below_zero_is_said_as_a_number_where_it_is_the_answer():
    way = next(way for way in ways(parse("25 - 40")) if way.family is Family.BRIDGE)
    assert how_said(way, Language.EN).endswith("0 take away 15 is −15.")
    assert how_said(way, Language.ES).endswith("0 menos 15 son −15.")
