"""Scale both: both numbers made smaller alike, the exact share stays: 30 / 4 as 15 / 2."""

from collections.abc import Iterator
from math import gcd

from waysaid.ways.factor import can_do
from waysaid.ways.place import MOST_COUNTS
from waysaid.ways.plan import OVER, Plan, scaled
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield both over what they share, and both halved; what is left over would not stay."""
    whole, part = problem.whole, problem.part
    shared = gcd(whole, part)
    for by in sorted({2, shared}):
        less = whole // by, part // by
        if whole % by or part % by or not 1 < by <= MOST_COUNTS:
            continue
        if can_do(by, less[0]) and can_do(less[1], problem.groups):
            said = scaled(OVER, (whole, part), less)
            yield f"both-by-{by}", (said, (Kind.RECALL, less[0], OVER, less[1]))
