"""Column: digit by digit from the ones, what is over carried to the next column."""

from collections.abc import Iterator

from waysaid.ways.place import columns, places
from waysaid.ways.plan import PLUS, TIMES, Move, Plan, hops
from waysaid.ways.shape import Product, Turn
from waysaid.ways.step import Kind

MOST_COLUMNS = 4
"""The most columns a child would keep in the head; our choice."""


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the column way of a longer number times a single digit: 63, then 70 + 60, then + 3."""
    for turn in problem.turns():
        if 10 < turn.factor < 10**MOST_COLUMNS and turn.other < 10:
            yield from _carried(turn)


def _carried(turn: Turn) -> Iterator[Plan]:
    moves: list[Move] = []
    kept: list[int] = []
    carried, unit, carries = 0, 1, 0
    for piece in places(turn.factor, columns(turn.factor)):
        unit *= 10
        total = piece * turn.other
        if piece:
            left, right = turn.placed(piece)
            moves.append((Kind.GROUP, left, TIMES, right))
        if piece and carried:
            moves.append((Kind.JOIN, total, PLUS, carried))
        total += carried
        last = unit > turn.factor
        carried = 0 if last else total // unit * unit
        carries += carried > 0
        kept.append(total - carried)
    shown = [part for part in reversed(kept) if part]
    if carries:
        yield f"{turn.tag}-with-carrying", (*moves, *hops(*shown, kind=Kind.JOIN))
