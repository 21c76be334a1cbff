"""Break up: what can be shared evenly is shared, and the rest is left over or shared as well."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Number, Operation, decimal, places_of
from waysaid.ways.factor import can_do
from waysaid.ways.groups import both_endings, group_cuts, taken_off
from waysaid.ways.plan import OVER, PLUS, Moves, Plan, joined
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind, Step, worked

MOST_PLACES = 3
"""The most places of a decimal that a child would know a share as; our choice."""


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the nearest multiple shared, whole or cut, then what is left."""
    part, groups = problem.part, problem.groups
    if can_do(part, groups):
        shared: Moves = ((Kind.GROUP, problem.nearest, OVER, part),)
        rest = taken_off(problem.whole, problem.nearest)
        yield from both_endings("nearest", (*shared, rest), problem)
        for ending, said in _rest_shared(problem):
            yield f"rest-{ending}", (*shared, *said)
    for slug, lots in group_cuts(part, groups):
        if len(set(lots)) < len(lots):
            continue
        shares = tuple((Kind.GROUP, lot * part, OVER, part) for lot in lots)
        whole = (*shares, joined(Kind.JOIN, *lots))
        rest = taken_off(problem.whole, problem.nearest)
        yield from both_endings(slug, (*whole, rest), problem)
        for ending, said in _rest_shared(problem):
            yield f"{slug}-rest-{ending}", (*whole, *said)


def _rest_shared(problem: Leftover) -> Iterator[tuple[str, tuple[Step, ...]]]:
    """Share what is left, and put it to the groups: 1 / 4 = 1/4 or 0.25, 5 + 0.25 = 5.25."""
    share = Fraction(problem.left, problem.part)
    yield "shared", _put_to(problem, share)
    places = places_of(share)
    if places is not None and places <= MOST_PLACES:
        yield "as-decimal", _put_to(problem, decimal(share))


def _put_to(problem: Leftover, share: Number) -> tuple[Step, ...]:
    rest = Step(Kind.GROUP, Equation(Operation(OVER, problem.left, problem.part), share))
    return rest, worked(Kind.JOIN, PLUS, problem.groups, share)
