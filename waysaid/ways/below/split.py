"""Split: like taken from like, every piece as far below zero as it falls."""

from collections.abc import Iterator

from waysaid.ways.place import columns, places
from waysaid.ways.plan import MINUS, Plan, hops
from waysaid.ways.shape import Below
from waysaid.ways.step import Kind

MOST_PLACES = 3
"""The most places a child would keep apart; our choice."""


def plans(problem: Below) -> Iterator[Plan]:
    """Yield the split by place: 25 - 47 as 20 - 40, 5 - 7, then both together."""
    whole, part = problem.whole, problem.part
    width = columns(part)
    pairs = [
        pair
        for pair in zip(places(whole, width), places(part, width), strict=True)
        if pair[0] != pair[1]
    ]
    if not 1 < len(pairs) <= MOST_PLACES or sum(1 for pair in pairs if all(pair)) < 2:
        return
    takes = tuple((Kind.TAKE, one, MINUS, other) for one, other in reversed(pairs) if one and other)
    left = [one - other for one, other in reversed(pairs)]
    yield "tens-first", (*takes, *hops(left[0], *left[1:], kind=Kind.JOIN))
