"""Factor steps: divide by the factors of the divisor, one after another; / 4 as half, half."""

from collections.abc import Iterator

from waysaid.ways.factor import can_share, factored
from waysaid.ways.plan import OVER, Move, Plan
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the divisor in steps, in either order."""
    for steps in factored(problem.part):
        moves = _shared(problem.whole, steps)
        if moves:
            yield f"by-{'-'.join(map(str, steps))}", moves


def _shared(whole: int, steps: tuple[int, ...]) -> tuple[Move, ...]:
    """Return the moves; none where a step is too hard."""
    moves: list[Move] = []
    for by in steps:
        if not can_share(whole, by):
            return ()
        moves.append((Kind.SCALE, whole, OVER, by))
        whole //= by
    return tuple(moves)
