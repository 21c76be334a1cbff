"""Links between two problems of any form: by their answer, or their three numbers."""

from collections.abc import Iterator

from waysaid.number import (
    BLANK,
    Blank,
    Claim,
    Compare,
    Equation,
    Number,
    Order,
    answer_of,
    sides,
)
from waysaid.strings.leaf import leaves_of, written_of
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.show import like
from waysaid.strings.sight import Joins, Sight


def meet_links(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield the links of two problems, whatever their forms, the earlier one first."""
    yield from _sides_changed(first, second)
    yield from _opposite(first, second)
    yield from _feeds(first, second)


def _sides_changed(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield a link where two comparisons, or two claims, have the same two sides turned around."""
    one, other = sides(first.problem), sides(second.problem)
    compare = isinstance(first.problem, Compare) and isinstance(second.problem, Compare)
    claim = isinstance(first.problem, Claim) and isinstance(second.problem, Claim)
    if not (compare or claim) or one != other[::-1] or one == other:
        return
    larger = compare and answer_of(first.problem) is not Order.SAME
    marks = tuple((sight.at, place) for sight in (first, second) for place in places_in(sight))
    yield Link(
        LinkKind.TURNED_AROUND,
        (first.at, second.at),
        (first.filled, second.filled),
        Saying.SIDES_TURNED if larger else Saying.CLAIM_TURNED,
        (),
        marks,
    )


def answer_place(sight: Sight) -> Place:
    """Return where the answer stands: the blank of an equation, else after the problem."""
    if isinstance(sight.problem, Equation):
        given = leaves_of(sight.problem)
        return given.index(BLANK)
    return "answer"


def _opposite(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield a link where two parts and their whole come back, seen from another side."""
    one, other = first.fact, second.fact
    if one is None or other is None or one.parts != other.parts:
        return
    if first.problem == second.problem:
        return
    if one.sums != other.sums or one.whole != other.whole:
        return
    turned = first.form == second.form and one.joins is other.joins
    if turned and first.answer == second.answer and one.joins in (Joins.ADDS, Joins.MULTIPLIES):
        return
    saying = _SAYINGS[one.sums, one.joins is not other.joins]
    yield Link(
        LinkKind.OPPOSITE,
        (first.at, second.at),
        (first.filled, second.filled),
        saying,
        tuple(like(number, *_given(first)) for number in (*one.parts, one.whole)),
        tuple((sight.at, place) for sight in (first, second) for place in places_in(sight)),
    )


_SAYINGS = {
    (True, True): Saying.UNDOES,
    (True, False): Saying.SAME_THREE,
    (False, True): Saying.UNDOES_TIMES,
    (False, False): Saying.SAME_THREE_TIMES,
}
"""By: the facts add or take, one joins what the other takes apart."""


def _given(sight: Sight) -> tuple[Number, ...]:
    return tuple(leaf for leaf in written_of(sight.problem) if not isinstance(leaf, Blank))


def places_in(sight: Sight) -> tuple[Place, ...]:
    """Return the places of every number of a problem, the answer after them."""
    numbers = tuple(range(len(leaves_of(sight.problem))))
    return numbers if isinstance(sight.problem, Equation) else (*numbers, "answer")


def _feeds(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield a link where the earlier problem's answer is a number of the later one."""
    given = leaves_of(second.problem)
    if first.answer is not None and first.answer in given:
        yield Link(
            LinkKind.FEEDS_NEXT,
            (first.at, second.at),
            (first.filled, second.filled),
            Saying.FEEDS,
            (first.shown,),
            ((first.at, answer_place(first)), (second.at, given.index(first.answer))),
        )
