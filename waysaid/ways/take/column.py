"""Column: digit by digit from the ones, with what a column lacks opened from the next."""

from collections.abc import Iterator

from waysaid.ways.place import columns, places
from waysaid.ways.plan import MINUS, Move, Plan, joined
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind, Step, opened

MOST_COLUMNS = 4
"""The most columns a child would keep in the head; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the column way: 42 - 27 as 42 = 30 + 12, 12 - 7, 30 - 20, 10 + 5 (nsw-school)."""
    whole, part = problem.whole, problem.part
    width = columns(whole)
    if not 1 < width <= MOST_COLUMNS:
        return
    from_ones = places(part, width)
    traded = _traded(places(whole, width), from_ones)
    moves: list[Move | Step] = []
    if traded != places(whole, width):
        parts = tuple(piece for piece in reversed(traded) if piece)
        if len(parts) == 1:
            return
        moves.append(opened(whole, *parts))
    for have, take in zip(traded, from_ones, strict=True):
        if take and have != take:
            moves.append((Kind.TAKE, have, MINUS, take))
    shown = [have - take for have, take in zip(traded, from_ones, strict=True) if have != take]
    if len(shown) > 1:
        moves.append(joined(Kind.JOIN, *reversed(shown)))
    if moves:
        yield "with-trading", tuple(moves)


def _traded(have: tuple[int, ...], take: tuple[int, ...]) -> tuple[int, ...]:
    """Return the pieces, ones first, after each column that lacked some was given one more."""
    pieces = list(have)
    unit = 10
    for column in range(len(pieces) - 1):
        if pieces[column] < take[column]:
            pieces[column] += unit
            pieces[column + 1] -= unit
        unit *= 10
    return tuple(pieces)
