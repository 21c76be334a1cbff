"""Add up: a difference found by going up from the smaller, through wholes."""

from collections.abc import Iterator

from waysaid.number import Equation, Number, chain, exact, value_of
from waysaid.ways.fractions.amount import did, one_go
from waysaid.ways.fractions.benchmark_sum import HALF
from waysaid.ways.fractions.bridge import written_like
from waysaid.ways.fractions.shape import FractionTake
from waysaid.ways.plan import PLUS, Moves, Plan
from waysaid.ways.step import Kind, Step


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the hops to the next whole and on, through the last whole, and in one hop."""
    whole, part = problem.whole, problem.part
    gap, left = part.gap, exact(whole.value - part.value)
    if one_go(whole.value, part.value) and one_go(part.value, left) and left <= 1:
        hop = written_like(left, whole) if whole.bottom == part.bottom else left
        yield "one-hop", (did(Kind.JUMP, part.number, PLUS, hop, whole.number),)
    if 0 < gap < left and one_go(whole.value, part.value):
        size = written_like(gap, part)
        rest = exact(left - gap)
        yield "to-whole", _hops(part.number, size, rest)
        if whole.over and rest > 1:
            yield "to-wholes", _hops(part.number, size, exact(rest - whole.over), whole.over)
    elif part.value < HALF < whole.value < 1:
        below, above = exact(HALF - part.value), exact(whole.value - HALF)
        hops = ((part.value, below), (HALF, above), (below, above))
        if one_go(HALF, whole.value) and all(one_go(*hop) for hop in hops):
            yield "to-half", _hops(part.number, below, above)


def _hops(start: Number, *sizes: Number) -> Moves:
    """Return the hops from a number and the step that gathers them; none where one is hard."""
    steps: list[Step] = []
    at = start
    for size in sizes:
        steps.append(did(Kind.JUMP, at, PLUS, size))
        at = exact(exact(at) + exact(size))
    return (*steps, _gathered(sizes))


def _gathered(sizes: tuple[Number, ...]) -> Step:
    first, *rest = sizes
    if len(rest) == 1:
        return did(Kind.GATHER, first, PLUS, rest[0])
    whole = chain(first, *((PLUS, size) for size in rest))
    return Step(Kind.GATHER, Equation(whole, value_of(whole)))
