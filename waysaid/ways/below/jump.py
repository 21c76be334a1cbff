"""Jump: the whole stays whole, the other number goes off in place-value pieces, past zero."""

from collections.abc import Iterator

from waysaid.ways.place import pieces
from waysaid.ways.plan import Plan, hops
from waysaid.ways.shape import Below


def plans(problem: Below) -> Iterator[Plan]:
    """Yield largest piece first and smallest first."""
    parts = tuple(-piece for piece in pieces(problem.part))
    if len(parts) > 1:
        yield "tens-first", hops(problem.whole, *parts)
        yield "ones-first", hops(problem.whole, *reversed(parts))
