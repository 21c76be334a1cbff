"""What a problem is seen as."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import Sign, parse, solve
from waysaid.ways.shape import (
    Below,
    Difference,
    Factors,
    Leftover,
    Missing,
    Nothing,
    Product,
    Quotient,
    Several,
    Sum,
    UnderOne,
    shapes,
)

SEEN = {
    "37 + 25": (Sum(37, 25),),
    "62 - 25": (Difference(62, 25),),
    "5 - 9": (Below(5, 9),),
    "12 + _ = 7": (Below(7, 12),),
    "5 + 0 + 3": (Sum(5, 3),),
    "5 + 0 + 0": (Nothing(5, Sign.PLUS, 0),),
    "0 - 5 - 3": (Several((0, -5, -3)),),
    "7 + 0": (Nothing(7, Sign.PLUS, 0),),
    "7 - 7": (Nothing(7, Sign.MINUS, 7),),
    "7 + 26 + 3": (Several((7, 26, 3)),),
    "58 + 47 - 38": (Several((58, 47, -38)),),
    "7 + _ = 12": (Missing(7, Sign.PLUS, 5, 1), Difference(12, 7)),
    "_ + 7 = 12": (Missing(5, Sign.PLUS, 7, 0), Difference(12, 7)),
    "12 - _ = 7": (Missing(12, Sign.MINUS, 5, 1), Difference(12, 7)),
    "_ - 5 = 7": (Missing(12, Sign.MINUS, 5, 0), Sum(7, 5)),
    "63 = 70 - _": (Missing(70, Sign.MINUS, 7, 1), Difference(70, 63)),
    "12 = 7 + _": (Missing(7, Sign.PLUS, 5, 1), Difference(12, 7)),
    "_ = 7 + 5": (Sum(7, 5),),
    "14 x 6": (Product(14, 6),),
    "84 / 4": (Quotient(84, 4),),
    "7 x 1": (Nothing(7, Sign.TIMES, 1),),
    "0 x 7": (Nothing(0, Sign.TIMES, 7),),
    "7 / 1": (Nothing(7, Sign.OVER, 1),),
    "7 / 7": (Nothing(7, Sign.OVER, 7),),
    "0 / 7": (Nothing(0, Sign.OVER, 7),),
    "16 / 3": (Leftover(16, 3),),
    "3 / 4": (UnderOne(3, 4),),
    "0 - 0": (Nothing(0, Sign.MINUS, 0),),
    "2 x 7 x 5": (Factors((2, 7, 5)),),
    "_ x 6 = 54": (Missing(9, Sign.TIMES, 6, 0), Quotient(54, 6)),
    "6 x _ = 54": (Missing(6, Sign.TIMES, 9, 1), Quotient(54, 6)),
    "54 / _ = 9": (Missing(54, Sign.OVER, 6, 1), Quotient(54, 9)),
    "_ / 6 = 9": (Missing(54, Sign.OVER, 6, 0), Product(9, 6)),
    "9 = 54 / _": (Missing(54, Sign.OVER, 6, 1), Quotient(54, 9)),
    "_ = 14 x 6": (Product(14, 6),),
    "6 x _ = 6": (Missing(6, Sign.TIMES, 1, 1), Nothing(6, Sign.OVER, 6)),
}
NOT_SEEN = (
    "1/2 + 1/4",
    "1/2 x 4",
    "48 / 4 / 2",
    "7 x _ = 30",
    "_ / 4 = -2",
    "30 / _ = 4",
    "2 + 3 x 4",
    "8 + 4 = _ + 5",
    "7",
)


@pytest.mark.parametrize(("problem", "shape"), SEEN.items())
def test_a_problem_is_seen_as(problem, shape):
    assert shapes(parse(problem)) == shape


@pytest.mark.parametrize("problem", NOT_SEEN)
def test_other_problems_are_seen_as_nothing_yet(problem):
    assert shapes(parse(problem)) == ()


@given(st.integers(0, 1000), st.integers(0, 1000))
def test_a_blank_is_filled_with_the_answer(known, found):
    for form in ("{0} + _ = {2}", "_ + {0} = {2}", "{2} - _ = {0}", "{0} = {2} - _"):
        problem = parse(form.format(known, found, known + found))
        missing = shapes(problem)[0]
        assert isinstance(missing, Missing)
        assert (missing.left, missing.right)[missing.asked] == solve(problem) == found


@given(st.integers(1, 100), st.integers(1, 100))
def test_a_blank_of_a_product_or_a_quotient_is_filled_with_the_answer(known, found):
    total = known * found
    for form in ("{0} x _ = {2}", "_ x {0} = {2}", "{2} / _ = {0}", "{0} = {2} / _"):
        problem = parse(form.format(known, found, total))
        missing = shapes(problem)[0]
        assert isinstance(missing, Missing)
        assert (missing.left, missing.right)[missing.asked] == solve(problem) == found


@given(st.integers(1, 9999), st.integers(1, 99))
def test_what_is_left_over_is_less_than_a_group(whole, part):
    for shape in shapes(parse(f"{whole} / {part}")):
        if isinstance(shape, Leftover):
            assert shape.nearest + shape.left == whole
            assert 0 < shape.left < part


def test_either_factor_is_changed_and_equal_ones_once():
    assert [(turn.factor, turn.placed(10)) for turn in Product(9, 7).turns()] == [
        (9, (10, 7)),
        (7, (9, 10)),
    ]
    assert len([*Product(7, 7).turns()]) == 1


def test_a_sum_starts_from_both_numbers_and_from_equal_ones_once():
    assert [start for start, _, _ in Sum(37, 25).starts()] == [37, 25]
    assert [start for start, _, _ in Sum(25, 25).starts()] == [25]


def test_no_child_fills_a_digit_from_a_large_number_or_breaks_a_friendly_one():
    assert [start for start, _, _ in Sum(98, 5).fills()] == [98]
    assert [start for start, _, _ in Sum(38, 20).fills()] == [20]
    assert [start for start, _, _ in Sum(8, 7).fills()] == [8, 7]


def test_a_child_goes_on_from_a_digit_only_where_it_comes_first():
    assert [start for start, _, _ in Sum(7, 26).goes_on()] == [7, 26]
    assert [start for start, _, _ in Sum(26, 7).goes_on()] == [26]
