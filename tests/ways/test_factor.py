"""Number sense for products: what is known, done in one go, and made of which factors."""

from math import prod

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.ways.factor import bare, can_do, can_share, cuts, factored, knows, near

whole = st.integers(1, 9999)


@given(whole, st.sampled_from((1, 10, 100)))
def test_a_bare_number_ends_in_no_zero_and_gives_the_number_back(number, unit):
    found = bare(number * unit)
    assert found % 10
    assert number * unit % found == 0


@given(whole, whole)
def test_known_and_done_in_one_go_are_the_same_turned_round(one, other):
    assert knows(one, other) is knows(other, one)
    assert can_do(one, other) is can_do(other, one)


@pytest.mark.parametrize(
    ("one", "other", "known", "in_one_go"),
    [
        (7, 8, True, True),
        (12, 12, True, True),
        (40, 60, True, True),
        (47, 100, True, True),
        (2, 35, True, True),
        (2, 37, False, True),
        (4, 25, True, True),
        (20, 36, False, True),
        (253, 2, False, True),
        (126, 3, False, True),
        (126, 7, False, False),
        (24, 36, False, False),
    ],
)
def test_what_is_known_and_what_is_done_in_one_go(one, other, known, in_one_go):
    assert knows(one, other) is known
    assert can_do(one, other) is in_one_go


def test_a_share_is_done_in_one_go_only_without_remainder():
    assert can_share(96, 6)
    assert not can_share(97, 6)


@given(whole)
def test_cuts_make_the_number(number):
    for _, parts in cuts(number):
        assert sum(parts) == number
        assert len(parts) > 1
        assert min(parts) > 0


@given(whole)
def test_factors_make_the_number_and_none_is_one(number):
    found = list(factored(number))
    assert len(set(found)) == len(found)
    for steps in found:
        assert prod(steps) == number
        assert min(steps) > 1
        assert 1 < len(steps) <= 4


@pytest.mark.parametrize(
    ("number", "steps"),
    [
        (4, [(2, 2)]),
        (7, []),
        (8, [(2, 4), (4, 2), (2, 2, 2)]),
        (15, [(3, 5), (5, 3)]),
        (30, [(3, 10), (10, 3)]),
        (100, []),
    ],
)
def test_the_factors_a_child_would_multiply_by_in_turn(number, steps):
    assert list(factored(number)) == steps


@given(whole)
def test_a_number_near_by_is_near(number):
    for friendly, _ in near(number):
        assert 0 < abs(friendly - number) <= 5


@pytest.mark.parametrize(
    ("number", "friendly"),
    [
        (9, [10]),
        (19, [20]),
        (17, [20]),
        (7, [5]),
        (6, [5]),
        (14, []),
        (52, [50]),
        (396, [400]),
        (24, [25]),
    ],
)
def test_the_friendly_numbers_of_groups(number, friendly):
    assert [found for found, _ in near(number)] == friendly
