"""Near fact: from a quotient close by, one share more or fewer."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do, near
from waysaid.ways.plan import OVER, Plan, hops
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind

MOST_OFF = 2
"""How many groups off the friendly number may be; our choice."""


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the share of a friendly number near by, then what is too much or too little."""
    part, groups = problem.part, problem.groups
    if bare(part) == 1:
        return
    for friendly, slug in near(groups):
        off = groups - friendly
        if abs(off) > MOST_OFF or not can_do(part, friendly):
            continue
        start = (Kind.GROUP, part * friendly, OVER, part)
        yield slug, (start, *hops(friendly, off, kind=Kind.MEND))
        if off < 0:
            rest = (Kind.GROUP, -part * off, OVER, part)
            yield f"{slug}-rest-said", (start, rest, *hops(friendly, off, kind=Kind.MEND))
