"""The groupings that fit what was said of a picture."""

import pytest

from waysaid.number import parse, parse_equation
from waysaid.ways import Kind, Step, groups_fitting, groups_seen
from waysaid.ways.images.found import MOST_OFFERED


def fitting(picture, *equations):
    steps = tuple(Step(Kind.JOIN, parse_equation(each)) for each in equations)
    found = groups_fitting(parse(picture), steps)
    assert groups_seen(parse(picture), steps) == (found[0] if found else None)
    assert len({frozenset(map(frozenset, each)) for each in found}) == len(found) <= MOST_OFFERED
    return found


def sizes(found):
    return [sorted(map(len, each)) for each in found]


@pytest.mark.parametrize("said", ["4 x 4 = 16", "4 + 4 + 4 + 4 = 16", "4 x 4 = 15"])
def test_a_square_of_dots_can_be_seen_by_rows_or_by_columns(said):
    by_rows, by_columns = fitting("image array: 4 x 4", said)
    assert by_rows[0] == (0, 1, 2, 3)
    assert by_columns[0] == (0, 4, 8, 12)


def test_a_product_said_either_way_round_may_mean_either():
    rows, columns = fitting("image array: 3 x 4", "3 x 4 = 12")
    assert sizes([rows, columns]) == [[4, 4, 4], [3, 3, 3, 3]]
    assert fitting("image array: 3 x 4", "4 x 3 = 12") == (columns, rows)


def test_halves_across_and_down_both_fit_the_same_words():
    halves = fitting("image array: 4 x 4", "2 x 4 = 8", "8 x 2 = 16")
    assert sizes(halves) == [[8, 8], [8, 8]]


def test_numbers_said_in_another_order_are_the_same_groups():
    one = fitting("image dice: 4 3", "4 + 3 = 7")
    other = fitting("image dice: 4 3", "3 + 4 = 7")
    assert sizes(one) == sizes(other) == [[3, 4]]
    said = fitting("image dice: 2 3 5", "3 + 5 = 8", "8 + 2 = 10")
    assert [2, 3, 5] in sizes(said)


def test_two_and_three_can_lie_otherwise_in_the_same_dots():
    found = fitting("image dots: 50,50 40,40 40,50 50,40 45,45", "2 + 3 = 5")
    assert len(found) > 1
    assert sizes(found) == [[2, 3]] * len(found)


def test_what_fits_no_dots_has_no_groups():
    assert fitting("image dice: 4 3", "6 + 1 = 7") == ()
    assert fitting("image dice: 4 3") == ()
    assert fitting("image dice: 4 3", "4 + _ = 7") == ()
