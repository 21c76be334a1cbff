"""In turn: the numbers multiplied in the order they are written."""

from collections.abc import Iterator

from waysaid.ways.factor import can_do
from waysaid.ways.place import pieces
from waysaid.ways.plan import TIMES, Move, Moves, Plan, hops
from waysaid.ways.shape import Factors
from waysaid.ways.step import Kind

MOST_PIECES = 3
"""Into how many pieces a child would cut a number on the way; our choice."""


def plans(problem: Factors) -> Iterator[Plan]:
    """Yield the product so far times the next number, to the end.

    Where that is too much for one go, one of the two is cut by place.
    """
    running, *rest = problem.factors
    moves: list[Moves] = []
    for factor in rest:
        step = _multiplied(running, factor)
        if not step:
            return
        moves.append(step)
        running *= factor
    yield "in-turn", tuple(move for step in moves for move in step)


def _multiplied(running: int, factor: int) -> Moves:
    """Return the product in one go, or in pieces of either number; nothing where both are long."""
    if not running or not factor or can_do(running, factor):
        return ((Kind.SCALE, running, TIMES, factor),)
    for cut, other, first in ((factor, running, False), (running, factor, True)):
        parts = pieces(cut)
        if len(parts) <= MOST_PIECES and all(can_do(part, other) for part in parts):
            pairs = [(part, other) if first else (other, part) for part in parts]
            groups: tuple[Move, ...] = tuple((Kind.GROUP, a, TIMES, b) for a, b in pairs)
            return (*groups, *hops(*(part * other for part in parts), kind=Kind.JOIN))
    return ()
