"""In turn: the numbers multiplied in the order they are written."""

from collections.abc import Iterator

from waysaid.ways.factor import can_do
from waysaid.ways.plan import TIMES, Move, Plan
from waysaid.ways.shape import Factors
from waysaid.ways.step import Kind


def plans(problem: Factors) -> Iterator[Plan]:
    """Yield the product so far times the next number, to the end, each done in one go."""
    running, *rest = problem.factors
    moves: list[Move] = []
    for factor in rest:
        if running and factor and not can_do(running, factor):
            return
        moves.append((Kind.SCALE, running, TIMES, factor))
        running *= factor
    yield "in-turn", tuple(moves)
