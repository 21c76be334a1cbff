"""Where the dots of a quick image are: never touching, and in the order they are filled."""

import math
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.number.problems import images
from waysaid.number import (
    HIGHEST,
    NEAREST,
    PITCH,
    WIDEST,
    ImageKind,
    Print,
    arrange,
    layout_of,
    parse,
    text,
)

groups = st.lists(st.integers(1, 6), min_size=1, max_size=5)


@given(images)
@settings(max_examples=count(test=400, sweep=20_000), deadline=None)
def test_there_is_a_place_for_every_dot_and_no_two_touch(image):
    layout = layout_of(image)
    assert len(layout.dots) == image.count
    for one, other in combinations(layout.places, 2):
        assert math.dist(one, other) >= PITCH


@given(images)
@settings(max_examples=count(test=400, sweep=20_000), deadline=None)
def test_a_picture_comes_back_from_its_text(image):
    assert parse(text(image, Print.PLAIN)) == image


@given(st.integers(0, 10**9), groups)
@settings(max_examples=count(test=400, sweep=20_000), deadline=None)
def test_an_arrangement_is_the_same_for_the_same_seed_and_lies_inside_the_field(seed, sizes):
    image = arrange(seed, *sizes)
    assert image == arrange(seed, *sizes)
    assert image.kind is ImageKind.DOTS
    places = list(zip(image.numbers[::2], image.numbers[1::2], strict=True))
    assert len(places) == sum(sizes)
    assert all(0 <= x <= WIDEST and 0 <= y <= HIGHEST for x, y in places)
    assert all(math.dist(one, other) >= NEAREST for one, other in combinations(places, 2))


@given(st.integers(0, 10**9), groups)
@settings(max_examples=count(test=400, sweep=20_000), deadline=None)
def test_the_groups_of_an_arrangement_stand_further_apart_than_their_own_dots(seed, sizes):
    dots = layout_of(arrange(seed, *sizes)).dots
    of = [at for at, size in enumerate(sizes) for _ in range(size)]
    for one, other in combinations(range(len(dots)), 2):
        apart = math.dist(dots[one], dots[other])
        if of[one] != of[other]:
            nearest = min(
                (
                    math.dist(dots[one], dots[k])
                    for k in range(len(dots))
                    if k != one and of[k] == of[one]
                ),
                default=0,
            )
            assert apart > 1.5 * nearest


def test_another_seed_gives_another_arrangement():
    assert len({arrange(seed, 4, 3) for seed in range(20)}) > 15


@pytest.mark.parametrize("sizes", [(), (0,), (7,), (1,) * 7, (6, 6, 6, 6, 6, 6)])
def test_groups_that_cannot_be_seen_at_a_glance_are_refused(sizes):
    with pytest.raises(ValueError, match="dots"):
        arrange(1, *sizes)


@pytest.mark.parametrize(
    ("given_text", "rows"),
    [
        ("image frame 10: 7", [5, 2]),
        ("image pairs 10: 7", [4, 3]),
        ("image frame 20: 14", [5, 5, 4]),
        ("image frame 20: 8 6", [5, 3, 5, 1]),
        ("image pairs 20: 8 3", [4, 4, 2, 1]),
        ("image array: 3 x 4", [4, 4, 4]),
        ("image dice: 6", [2, 2, 2]),
        ("image dice: 5", [2, 1, 2]),
        ("image dice: 5 5 5 2 2", [6, 3, 6, 2, 2]),
    ],
)
def test_dots_are_where_children_are_used_to_see_them(given_text, rows):
    dots = layout_of(parse(given_text)).dots
    heights = sorted({y for _, y in dots})
    assert [sum(y == high for _, y in dots) for high in heights] == rows


@pytest.mark.parametrize(
    "given_text", ["image frame 10: 3 4", "image frame 20: 11 2", "image pairs 10: 11"]
)
def test_a_frame_holds_ten(given_text):
    with pytest.raises(ValueError, match="image"):
        parse(given_text)
