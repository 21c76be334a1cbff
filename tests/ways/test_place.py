"""Number sense: pieces, gaps and friendly neighbours."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.ways.place import (
    chunks,
    columns,
    easy_double,
    friendly_above,
    near_friendly,
    pieces,
    places,
    round_unit,
    skips,
    up_to,
)

whole = st.integers(0, 9999)


@given(whole)
def test_the_pieces_make_the_number_and_each_has_one_digit(number):
    assert sum(pieces(number)) == number
    assert all(len(str(piece).rstrip("0")) == 1 for piece in pieces(number))
    assert list(pieces(number)) == sorted(pieces(number), reverse=True)


@given(whole)
def test_the_places_make_the_number_ones_first(number):
    found = places(number, columns(number))
    assert sum(found) == number
    assert all(piece % 10**column == 0 for column, piece in enumerate(found))


@given(whole)
def test_chunks_make_the_number(number):
    assert all(sum(cut) == number and 0 not in cut for _, cut in chunks(number))


@given(whole, st.sampled_from((10, 100, 1000)))
def test_up_to_lands_on_the_unit(number, unit):
    gap = up_to(number, unit)
    assert 0 <= gap < unit
    assert (number + gap) % unit == 0


@pytest.mark.parametrize(
    ("number", "friendly"),
    [
        (38, [40]),
        (24, [30]),
        (23, []),
        (8, [10]),
        (7, []),
        (587, [590, 600]),
        (86, [90, 100]),
        (40, []),
    ],
)
def test_friendly_numbers_above_are_near(number, friendly):
    assert [above for above, _ in friendly_above(number)] == friendly


@pytest.mark.parametrize(
    ("number", "unit", "change"),
    [(38, 10, 2), (41, 10, -1), (45, 10, 0), (9, 10, 1), (3, 10, 0), (398, 100, 2), (350, 100, 0)],
)
def test_a_near_friendly_number_may_be_above_or_below(number, unit, change):
    assert near_friendly(number, unit) == change


@pytest.mark.parametrize(("number", "unit"), [(37, 1), (240, 10), (300, 100), (5, 1)])
def test_the_round_unit_is_the_place_of_the_last_digit(number, unit):
    assert round_unit(number) == unit


@pytest.mark.parametrize(("number", "easy"), [(8, True), (19, True), (35, True), (37, False)])
def test_easy_doubles(number, easy):
    assert easy_double(number) is easy


@given(whole, st.integers(1, 1000))
def test_skips_cover_the_distance_in_no_more_counts_than_fingers(start, distance):
    for size, _ in skips(start, distance):
        assert distance % size == 0
        assert distance // size <= 10
