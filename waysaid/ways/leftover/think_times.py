"""Think times: the product just below is known or built up, and the rest is left over."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Operation
from waysaid.ways.factor import can_do
from waysaid.ways.groups import both_endings, group_cuts, taken_off
from waysaid.ways.plan import PLUS, TIMES, Plan, gathered, hops
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind, Step, worked


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the product seen at once, and built up from parts."""
    part, groups = problem.part, problem.groups
    rest = taken_off(problem.whole, problem.nearest)
    if can_do(part, groups):
        known = (Kind.RECALL, part, TIMES, groups)
        yield from both_endings("known-product", (known, rest), problem)
        yield "known-product-and-part", (known, *_part_of_a_group(problem))
    for slug, lots in group_cuts(part, groups):
        if len(set(lots)) == len(lots):
            up = tuple((Kind.GROUP, part, TIMES, lot) for lot in lots)
            reached = hops(*(part * lot for lot in lots), kind=Kind.JOIN)
            moves = (*up, *reached, rest, *gathered(*lots))
            yield from both_endings(f"up-{slug}", moves, problem)


def _part_of_a_group(problem: Leftover) -> tuple[Step, ...]:
    """Return what part of a group makes what is left, put to the groups: 7 x 2/7 = 2."""
    share = Fraction(problem.left, problem.part)
    whole = Operation(TIMES, problem.part, share)
    part = Step(Kind.GROUP, Equation(whole, problem.left))
    return part, worked(Kind.JOIN, PLUS, problem.groups, share)
