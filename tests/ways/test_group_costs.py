"""What products and quotients cost."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.ways.costs import TENTHS, TIMES_FACTS, Charge
from waysaid.ways.group_costs import share_costs, times_costs

number = st.integers(0, 9999)


@given(number, number)
def test_a_product_costs_the_same_turned_round_and_never_less_than_nothing(left, right):
    assert times_costs(left, right) == times_costs(right, left)
    assert min(times_costs(left, right)) >= 0


@given(st.integers(1, 999), st.integers(1, 999))
def test_a_quotient_costs_no_less_than_its_product(part, groups):
    (facts, crossing), (shared, crossed) = (
        times_costs(part, groups),
        share_costs(part * groups, part),
    )
    assert shared >= facts
    assert crossed == crossing


@given(st.integers(2, 12), st.integers(2, 12))
def test_zeros_cost_as_much_as_times_ten(left, right):
    plain = times_costs(left, right)
    if left != 10 and right != 10:
        assert times_costs(left * 10, right)[0] == plain[0] + TENTHS[Charge.TIMES_TEN]


@pytest.mark.parametrize(
    ("left", "right", "carried"), [(21, 4, 0), (24, 4, 1), (126, 3, 1), (345, 6, 2), (480, 6, 1)]
)
def test_what_is_carried_into_another_column_crosses(left, right, carried):
    assert times_costs(left, right)[1] == carried * TENTHS[Charge.CROSS]


def test_a_fact_of_the_table_costs_what_the_table_says():
    for left in range(1, 10):
        for right in range(1, 10):
            assert times_costs(left, right) == (TIMES_FACTS[left][right], 0)
