"""Adjust: take a friendly number near by, then put the difference right: 25 - 39 as 25 - 40."""

from collections.abc import Iterator

from waysaid.ways.place import friendly_above
from waysaid.ways.plan import Plan, hops
from waysaid.ways.shape import Below
from waysaid.ways.step import Kind


def plans(problem: Below) -> Iterator[Plan]:
    """Yield the ways that take too much and put it back."""
    for friendly, over in friendly_above(problem.part):
        used = hops(problem.whole, -friendly)
        mend = hops(problem.whole - friendly, over, kind=Kind.MEND)
        yield f"part-to-{friendly}", (*used, *mend)
