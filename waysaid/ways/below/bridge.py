"""Bridge: down to zero, then the rest: 25 - 40 as 25 - 25, then 15 more."""

from collections.abc import Iterator

from waysaid.ways.plan import MINUS, Plan, hops
from waysaid.ways.shape import Below
from waysaid.ways.step import Kind, opened


def plans(problem: Below) -> Iterator[Plan]:
    """Yield the way through zero, with the number taken cut in silence, by a step, or opened."""
    whole, part, short = problem.whole, problem.part, problem.short
    down = hops(whole, -whole, -short)
    yield "through-zero", down
    yield "cut-then-zero", ((Kind.SPLIT, part, MINUS, whole), *down)
    yield "opened-to-zero", (opened(part, whole, short), *down)
