"""Equations: what is printed, what is left out, how they flow, and how many tiles they need."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.drawing.told import telling
from waysaid.drawing import Frame, equation_rows, lines, text_width, tiles_needed

TILE = Frame(596, 290)
NARROW = Frame(431, 290)


@pytest.mark.parametrize(
    ("step", "unsaid", "line"),
    [
        ("jump 37 + 3 = 40", {"left"}, "+ 3 = 40"),
        ("jump 40 + 22 = 62", {"result"}, "40 + 22"),
        ("jump 62 - 25 = 37", set(), "62 − 25 = 37"),
        ("jump 37 + 3 = 40", {"left", "result"}, "+ 3"),
        ("jump 7 + 5 = 12", {"right"}, "7 + _ = 12"),
        ("jump 7 + _ = _", set(), "7 +"),
        ("split 42 = 30 + 12", set(), "42 = 30 + 12"),
        ("take 3 - 8 = -5", set(), "3 − 8 = −5"),
        ("gather 1 + 1 + 1 = 3", set(), "1 + 1 + 1 = 3"),
        ("jump 40 + 22 = 62", {"left", "op", "right"}, "62"),
        ("count 7 + 1 = 8", {"op", "right"}, "7 → 8"),
        ("jump 40 + 22 = 62", {"op"}, "40, 22 = 62"),
        ("jump 40 + 22 = 62", {"op", "result"}, "40, 22"),
        ("jump 40 + 22 = 62", {"left", "op", "right", "result"}, ""),
    ],
)
def test_a_line_prints_what_was_said_and_leaves_out_what_was_not(step, unsaid, line):
    assert lines(telling("37 + 25", step, hidden=(frozenset(unsaid),))) == ((line,) if line else ())


def test_counting_by_ones_is_printed_as_equations_too():
    assert lines(telling("8 + 2", "count 8 + 1 = 9", "count 9 + 1 = 10")) == (
        "8 + 1 = 9",
        "9 + 1 = 10",
    )


equations = st.lists(
    st.builds("{} + {} = {}".format, *[st.integers(0, 999_999)] * 3), max_size=9
).map(tuple)


@given(equations, st.integers(100, 2000))
def test_rows_keep_every_piece_in_order_and_break_only_before_signs(said, width):
    rows = equation_rows(said, width, 80)
    pieces = [piece for row in rows for piece in row]
    assert " ".join(pieces).split() == " ".join(said).split()
    for row in rows:
        whole = sum(text_width(piece, 80) for piece in row) + 88 * (len(row) - 1)
        assert whole <= width or (len(row) == 1 and len(row[0].split()) <= 2)


def test_a_wide_equation_breaks_before_the_equals_sign_first():
    assert equation_rows(("400 + 300 = 700",), 431, 80) == (("400 + 300",), ("= 700",))


@pytest.mark.parametrize(
    ("said", "frame", "tiles"),
    [
        (("30 + 20 = 50", "7 + 5 = 12", "50 + 12 = 62"), TILE, 1),
        (tuple(f"{30 + at} + 1 = {31 + at}" for at in range(7)), TILE, 4),
        (tuple(f"{1 + at} + 1 = {2 + at}" for at in range(7)), Frame(700, 290), 2),
        (("347 + 200 = 547", "547 + 50 = 597", "597 + 6 = 603"), NARROW, 2),
        (("123456 + 234567 = 358023",), TILE, 1),
        (("123456 + 200000 = 323456", "323456 + 34567 = 358023"), TILE, 2),
        ((), TILE, 1),
    ],
)
def test_a_way_takes_as_many_tiles_as_its_lines_need(said, frame, tiles):
    assert tiles_needed(said, frame) == tiles
