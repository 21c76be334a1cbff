"""Split, then jump: the big pieces together, then the small ones go on one after another."""

from collections.abc import Iterator

from waysaid.ways.place import pieces, up_to
from waysaid.ways.plan import PLUS, Plan, hops
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind

MOST_HOPS = 6
"""The most small pieces a child would put on one after another; our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the ways where both numbers have a big piece of one place and something small."""
    (big, *small), (other, *others) = pieces(problem.left), pieces(problem.right)
    if not (small and others and len(str(big)) == len(str(other))):
        return
    start = (Kind.JOIN, big, PLUS, other)
    total = big + other
    if len(small) == len(others) == 1:
        for first, second, tag in Sum(small[0], others[0]).starts():
            yield f"{tag}-ones-first", (start, *hops(total, first, second))
            gap = up_to(total + first, 10)
            if 0 < gap < second < 10:
                bridged = hops(total, first, gap, second - gap)
                yield f"{tag}-ones-first-bridged", (start, *bridged)
        return
    if len(small) + len(others) > MOST_HOPS:
        return
    yield "in-turn", (start, *hops(total, *small, *others))
    by_place = sorted((*small, *others), reverse=True)
    yield "by-place", (start, *hops(total, *by_place))
