"""Column: digit by digit from the ones, what is over carried to the next column."""

from collections.abc import Iterator

from waysaid.ways.place import columns, places
from waysaid.ways.plan import Move, Plan, joined
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind, Step

MOST_COLUMNS = 4
"""The most columns a child would keep in the head; our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the column way: 43 + 38 as 3 + 8, 40 + 30 + 10, 80 + 1 (nsw-school)."""
    width = columns(problem.left, problem.right)
    if not 1 < width <= MOST_COLUMNS:
        return
    moves: list[Move | Step] = []
    kept: list[int] = []
    carried, unit = 0, 1
    for first, second in zip(
        places(problem.left, width), places(problem.right, width), strict=True
    ):
        parts = tuple(part for part in (first, second, carried) if part)
        if len(parts) > 1:
            moves.append(joined(Kind.JOIN, *parts))
        total = sum(parts)
        unit *= 10
        carried = total // unit * unit
        kept.append(total - carried)
        if unit == 10**width:
            kept[-1] += carried
    shown = tuple(part for part in reversed(kept) if part)
    if len(shown) > 1:
        moves.append(joined(Kind.JOIN, *shown))
    if len(moves) > 1:
        yield "with-carrying", tuple(moves)
