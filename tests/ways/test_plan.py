"""Moves say what is done; what comes out is worked out when steps are built."""

from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import text
from waysaid.ways import Kind, Step, step
from waysaid.ways.plan import (
    MINUS,
    OVER,
    PLUS,
    TIMES,
    counts,
    gathered,
    hops,
    joined,
    same,
    scaled,
    summed,
)

change = st.integers(-1000, 1000)


@given(st.integers(0, 1000), st.lists(change, max_size=5))
def test_hops_go_from_where_the_last_one_came_to_and_leave_out_nothing(start, changes):
    for move in hops(start, *changes):
        assert move[1] == start
        built = step(*move)
        assert built.true
        start = built.equation.right
    assert len(hops(0, *changes)) == sum(change != 0 for change in changes)


def test_counts_are_equal_hops_on_or_back():
    assert [move[1:] for move in counts(12, MINUS, 1, 3)] == [
        (12, MINUS, 1),
        (11, MINUS, 1),
        (10, MINUS, 1),
    ]


def test_two_parts_join_as_a_move_and_more_at_once():
    assert joined(Kind.JOIN, 50, 12) == (Kind.JOIN, 50, PLUS, 12)
    assert joined(Kind.JOIN, 9, -3) == (Kind.JOIN, 9, MINUS, 3)
    at_once = joined(Kind.GATHER, 2, 20, 4)
    assert isinstance(at_once, Step)
    assert at_once.text == "2 + 20 + 4 = 26"


def test_a_single_hop_needs_no_gathering():
    assert gathered(5) == ()
    assert len(gathered(5, 32)) == 1


def test_a_few_parts_are_added_at_once_or_in_turn_and_many_only_in_turn():
    def ways_to_add(*parts):
        return [slug for slug, _ in summed(Kind.JOIN, *parts)]

    assert ways_to_add(5) == []
    assert ways_to_add(50, 12) == [""]
    assert ways_to_add(50, 12, 3) == ["", "-in-turn"]
    assert ways_to_add(5, 4, 3, 2, 1) == ["-in-turn"]


def test_two_products_or_quotients_are_said_to_be_the_same():
    assert text(scaled(TIMES, (16, 5), (8, 10)).equation) == "16 x 5 = 8 x 10"
    assert text(scaled(OVER, (246, 6), (123, 3)).equation) == "246 / 6 = 123 / 3"


def test_two_differences_are_said_to_be_the_same():
    assert text(same((62, 25), (67, 30)).equation) == "62 - 25 = 67 - 30"
