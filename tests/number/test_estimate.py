"""The easier problems that an estimate goes through."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import Operation, Sign, estimates, parse_expression, text, value_of


@pytest.mark.parametrize(
    ("line", "easier"),
    [
        ("398 x 21", ["400 x 20", "400 x 21"]),
        ("5 x 38", ["5 x 40"]),
        ("1234 / 6", ["1200 / 6", "1260 / 6"]),
        ("4.8 + 3.1", ["5 + 3"]),
        ("0.4 + 0.3", ["0.5 + 0.5"]),
        ("7/8 + 12/13", ["1 + 1"]),
        ("19% of 52", ["20% of 50"]),
        ("613 - 287", ["600 - 290", "600 - 300", "610 - 300"]),
    ],
)
def test_an_estimate_goes_through_friendly_numbers(line, easier):
    assert [text(each) for each in estimates(parse_expression(line))] == easier


@given(st.integers(2, 9999), st.sampled_from((Sign.PLUS, Sign.TIMES)), st.integers(2, 999))
def test_an_estimate_is_near(left, sign, right):
    """Rounding moves each number by less than a half of it, so a sum or product stays near."""
    exact_value = Fraction(value_of(Operation(sign, left, right)))
    for easier in estimates(Operation(sign, left, right)):
        assert exact_value / 3 < value_of(easier) < exact_value * 3


@given(st.integers(2, 9999), st.integers(2, 99))
def test_a_division_near_by_shares_out(whole, part):
    for easier in estimates(Operation(Sign.OVER, whole, part)):
        if easier != Operation(Sign.OVER, whole, part):
            assert isinstance(value_of(easier), int)
