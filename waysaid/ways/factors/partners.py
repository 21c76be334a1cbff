"""Partners: reorder three or more factors so that those that go together are multiplied first."""

from collections.abc import Iterator
from itertools import combinations

from waysaid.ways.factor import can_do, knows
from waysaid.ways.plan import TIMES, Move, Plan
from waysaid.ways.shape import Factors
from waysaid.ways.step import Kind


def plans(problem: Factors) -> Iterator[Plan]:
    """Yield a pair that makes a friendly number or a fact, then the rest, each done in one go."""
    factors = problem.factors
    if min(factors) < 1:
        return
    for pair in combinations(range(len(factors)), 2):
        first, second = (factors[place] for place in pair)
        together = first * second
        rest = [factor for place, factor in enumerate(factors) if place not in pair]
        friendly = together % 10 == 0 and can_do(first, second)
        if not friendly and not knows(first, second):
            continue
        slug = f"pair-{pair[0] + 1}-{pair[1] + 1}"
        start: Move = (Kind.GROUP, first, TIMES, second)
        yield from _then(start, together, rest, slug)
        if pair != (0, 1) and len(rest) == 1 and can_do(rest[0], together):
            yield f"{slug}-last", (start, (Kind.SCALE, rest[0], TIMES, together))


def _then(start: Move, together: int, rest: list[int], slug: str) -> Iterator[Plan]:
    """Go on with the rest in turn; of two that are left, also with their product."""
    moves = [start]
    running = together
    for factor in rest:
        if not can_do(running, factor):
            break
        moves.append((Kind.SCALE, running, TIMES, factor))
        running *= factor
    else:
        yield slug, tuple(moves)
    if len(rest) == 2 and knows(*rest) and can_do(together, rest[0] * rest[1]):
        other: Move = (Kind.GROUP, rest[0], TIMES, rest[1])
        last: Move = (Kind.SCALE, together, TIMES, rest[0] * rest[1])
        yield f"{slug}-then-pair", (start, other, last)
