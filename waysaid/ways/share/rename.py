"""Rename: tens or hundreds as a unit: 600 / 3 is 6 hundreds shared by 3."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_share
from waysaid.ways.place import round_unit
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the units shared, then what they are worth."""
    whole, part = problem.whole, problem.part
    unit = round_unit(whole)
    while unit > 1 and whole // unit % part:
        unit //= 10
    units = whole // unit
    if unit > 1 and bare(part) > 1 and units > part and can_share(units, part):
        yield "unit", ((Kind.GROUP, units, OVER, part), (Kind.SCALE, units // part, TIMES, unit))
