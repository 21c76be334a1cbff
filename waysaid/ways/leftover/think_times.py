"""Think times: the product just below is known or built up, and the rest is left over."""

from collections.abc import Iterator

from waysaid.ways.factor import can_do
from waysaid.ways.groups import both_endings, group_cuts, taken_off
from waysaid.ways.plan import TIMES, Plan, gathered, hops
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the product seen at once, and built up from parts."""
    part, groups = problem.part, problem.groups
    rest = taken_off(problem.whole, problem.nearest)
    if can_do(part, groups):
        known = (Kind.RECALL, part, TIMES, groups)
        yield from both_endings("known-product", (known, rest), problem)
    for slug, lots in group_cuts(part, groups):
        if len(set(lots)) == len(lots):
            up = tuple((Kind.GROUP, part, TIMES, lot) for lot in lots)
            reached = hops(*(part * lot for lot in lots), kind=Kind.JOIN)
            moves = (*up, *reached, rest, *gathered(*lots))
            yield from both_endings(f"up-{slug}", moves, problem)
