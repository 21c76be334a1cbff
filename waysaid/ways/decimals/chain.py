"""Longer products with decimals: in turn, or first those that go together."""

from collections.abc import Iterator
from itertools import combinations

from waysaid.number import Equation, Exact, Operation, apply, decimal
from waysaid.ways.decimals.shape import Chain, scaled
from waysaid.ways.factor import can_do
from waysaid.ways.plan import TIMES, Plan
from waysaid.ways.step import Kind, Step


def partner_plans(problem: Chain) -> Iterator[Plan]:
    """Yield a pair that makes a whole number first, then the rest: 0.5 x 7 x 2 as 0.5 x 2."""
    factors = problem.factors
    for pair in combinations(range(len(factors)), 2):
        together = apply(TIMES, factors[pair[0]], factors[pair[1]])
        rest = [factor for place, factor in enumerate(factors) if place not in pair]
        if pair == (0, 1) or not isinstance(together, int):
            continue
        start = _step(Kind.GROUP, factors[pair[0]], factors[pair[1]])
        yield f"pair-{pair[0] + 1}-{pair[1] + 1}", (start, *_in_turn(together, rest))
        if len(rest) == 1:
            last = _step(Kind.SCALE, rest[0], together)
            yield f"pair-{pair[0] + 1}-{pair[1] + 1}-last", (start, last)


def in_turn_plans(problem: Chain) -> Iterator[Plan]:
    """Yield the product so far times the next number, where each is done in one go."""
    first, *rest = problem.factors
    running = first
    for factor in rest:
        if not can_do(scaled(running).units, scaled(factor).units):
            return
        running = apply(TIMES, running, factor)
    yield "in-turn", tuple(_in_turn(first, rest))


def _in_turn(running: Exact, rest: list[Exact]) -> Iterator[Step]:
    for factor in rest:
        yield _step(Kind.SCALE, running, factor)
        running = apply(TIMES, running, factor)


def _step(kind: Kind, left: Exact, right: Exact) -> Step:
    whole = Operation(TIMES, decimal(left), decimal(right))
    return Step(kind, Equation(whole, decimal(apply(TIMES, left, right))))
