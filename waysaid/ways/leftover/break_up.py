"""Break up: what can be shared evenly is shared, and the rest is left over or shared as well."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Operation
from waysaid.ways.factor import can_do
from waysaid.ways.groups import both_endings, group_cuts, taken_off
from waysaid.ways.plan import OVER, PLUS, Moves, Plan, joined
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind, Step


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the nearest multiple shared, whole or cut, then what is left."""
    part, groups = problem.part, problem.groups
    if can_do(part, groups):
        shared: Moves = ((Kind.GROUP, problem.nearest, OVER, part),)
        rest = taken_off(problem.whole, problem.nearest)
        yield from both_endings("nearest", (*shared, rest), problem)
        yield "rest-shared", (*shared, *_rest_shared(problem))
    for slug, lots in group_cuts(part, groups):
        if len(set(lots)) < len(lots):
            continue
        shares = tuple((Kind.GROUP, lot * part, OVER, part) for lot in lots)
        whole = (*shares, joined(Kind.JOIN, *lots))
        rest = taken_off(problem.whole, problem.nearest)
        yield from both_endings(slug, (*whole, rest), problem)
        yield f"{slug}-rest-shared", (*whole, *_rest_shared(problem))


def _rest_shared(problem: Leftover) -> tuple[Step, ...]:
    """Share what is left, and put it to the groups: 1 / 3 = 1/3, 5 + 1/3 = 5 1/3."""
    share = Fraction(problem.left, problem.part)
    return (
        Step(Kind.GROUP, Equation(Operation(OVER, problem.left, problem.part), share)),
        Step(Kind.JOIN, Equation(Operation(PLUS, problem.groups, share), problem.groups + share)),
    )
