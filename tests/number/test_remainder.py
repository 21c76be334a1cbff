"""A division as whole groups and what is left over."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import NoValue, Remainder, divided, parse, remainder_of


@given(st.integers(0, 10**6), st.integers(1, 10**4))
def test_groups_and_what_is_left_make_the_whole(whole, part):
    found = divided(whole, part)
    assert found.groups * part + found.left == whole
    assert 0 <= found.left < part
    left = remainder_of(parse(f"{whole} / {part}"))
    assert left == (found if found.left and found.groups else None)


def test_it_is_printed_with_an_r():
    assert Remainder(5, 1).text == "5 r 1"


def test_nothing_is_divided_by_nothing():
    with pytest.raises(NoValue):
        divided(7, 0)


@pytest.mark.parametrize(
    "problem", ["84 / 4", "3 / 4", "16 x 3", "1/2 / 3", "54 / _ = 9", "7", "48 / 5 / 2", "-16 / 3"]
)
def test_other_problems_leave_nothing_over(problem):
    assert remainder_of(parse(problem)) is None
