"""Think times: the product that fits is known or built up, so the missing factor is found."""

from collections.abc import Iterator

from waysaid.ways.factor import MOST_STEPS, can_do, knows, near
from waysaid.ways.groups import group_cuts
from waysaid.ways.plan import MINUS, PLUS, TIMES, Move, Plan, gathered, hops
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the product seen at once, built up from parts, and from one that is just past."""
    part, groups = problem.part, problem.groups
    if knows(part, groups) or can_do(part, groups):
        yield "known-product", ((Kind.RECALL, part, TIMES, groups),)
    for slug, parts in group_cuts(part, groups):
        if len(set(parts)) < len(parts):
            continue
        products = [part * some for some in parts]
        up = tuple((Kind.GROUP, part, TIMES, some) for some in parts)
        reached = hops(*products, kind=Kind.JOIN)
        yield f"up-{slug}", (*up, *reached, *gathered(*parts))
    yield from _near(problem)
    yield from _doubled(part, groups)


def _doubled(part: int, groups: int) -> Iterator[Plan]:
    """Double the groups until they fill the number: 6 x 2, 6 x 4, 6 x 8, 6 x 16."""
    doubles = groups.bit_length() - 1
    if 2 <= doubles <= MOST_STEPS and groups == 2**doubles and can_do(part, groups):
        lots = tuple(2**step for step in range(1, doubles + 1))
        yield "up-by-doubling", tuple((Kind.GROUP, part, TIMES, lot) for lot in lots)


def _near(problem: Quotient) -> Iterator[Plan]:
    """Go to a friendly number of groups and some back or on: 6 x 60 = 360, less 6, so 59."""
    part, groups = problem.part, problem.groups
    for friendly, slug in near(groups):
        off = groups - friendly
        if abs(off) != 1 or not can_do(part, friendly):
            continue
        start: Move = (Kind.GROUP, part, TIMES, friendly)
        mend = hops(part * friendly, off * part, kind=Kind.MEND)
        last: Move = (Kind.GATHER, friendly, PLUS if off > 0 else MINUS, 1)
        yield f"near-{slug}", (start, *mend, last)
