"""Products of two decimals worked as whole numbers, then the point: 2.5 x 1.2 as 25 x 12 = 300."""

from collections.abc import Iterator

from waysaid.ways import long_times
from waysaid.ways.decimals.names import unit_name, worth
from waysaid.ways.decimals.shape import Times
from waysaid.ways.decimals.unit import made
from waysaid.ways.factor import can_do
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.place import pieces
from waysaid.ways.plan import PLUS, Plan
from waysaid.ways.shape import Product
from waysaid.ways.step import Kind
from waysaid.ways.times import adjust, double_halve, factor_steps
from waysaid.ways.way import Family

_WAYS = (adjust.plans, factor_steps.plans, double_halve.plans)
"""The ways of whole numbers that decimals do not tell of themselves."""


def plans(problem: Times) -> Iterator[Plan]:
    """Yield the product of the units in the first way of each kind, and what it is worth."""
    one, other = problem.left.units, problem.right.units
    if not problem.left.places or not problem.right.places or can_do(one, other):
        return
    last = worth(one * other, problem.places)
    slug = f"as-{unit_name(problem.places)}"
    whole = Product(one, other)
    for found in _WAYS:
        for variant, moves in found(whole):
            yield f"{slug}-{variant}", (*moves, last)
            break
    if long_times.is_long(one, other):
        for maker in long_times.IN_PARTS:
            for variant, moves in maker.of(long_times.Long(whole)):
                yield f"{slug}-long-{variant}", (*moves, last)
                break


def by_place_plans(problem: Times) -> Iterator[Plan]:
    """Yield one long decimal cut by place, the other kept whole: 3 and 0.1 and 0.04 times 2.72."""
    one, other = problem.left.units, problem.right.units
    if not problem.left.places or not problem.right.places or not long_times.is_long(one, other):
        return
    for turn in problem.turns():
        parts = pieces(turn.factor.units)
        if not 1 < len(parts) <= long_times.MOST_PIECES:
            continue
        steps = [turn.times(Kind.GROUP, part, turn.factor.places) for part in parts]
        total = 0
        for part in parts:
            product = part * turn.other.units
            pair = (total, problem.places), (product, problem.places)
            if total:
                result = (total + product, problem.places)
                steps.append(made(Kind.JOIN, pair[0], PLUS, pair[1], result))
            total += product
        yield f"{turn.tag}-long-by-place", tuple(steps)


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, Times, plans),
    Maker(Family.BREAK_UP, Times, by_place_plans),
)
