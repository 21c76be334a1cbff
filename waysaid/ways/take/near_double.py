"""Near double: from a half close by: 13 - 6 from 12 - 6, one more."""

from collections.abc import Iterator

from waysaid.ways.place import easy_double, round_unit
from waysaid.ways.plan import MINUS, Plan, hops
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind

FARTHEST = 2
"""How far from the double the whole may be, in their own unit; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the half the problem is near to, where the double is an easy one."""
    whole, part = problem.whole, problem.part
    off = whole - 2 * part
    unit = min(round_unit(whole), round_unit(part))
    if off and abs(off) <= FARTHEST * unit and easy_double(part) and part > FARTHEST * unit:
        half = (Kind.RECALL, 2 * part, MINUS, part)
        yield "from-half", (half, *hops(part, off, kind=Kind.MEND))
