"""Rename: tens, hundreds or thousands as a unit: 46000 + 38000 is 46 + 38 thousands."""

from collections.abc import Iterator

from waysaid.ways.place import round_unit
from waysaid.ways.plan import PLUS, TIMES, Plan
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind

LEAST = 100
"""From what size of number on a child would count in units; our choice."""


def unit_of(one: int, other: int) -> int:
    """Return the unit both numbers are counted in; 1 where there is none to speak of."""
    unit = min(round_unit(one), round_unit(other))
    return unit if min(one, other) >= LEAST else 1


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the units added, then what they are worth."""
    unit = unit_of(problem.left, problem.right)
    if unit > 1:
        left, right = problem.left // unit, problem.right // unit
        units = (Kind.JOIN, left, PLUS, right)
        yield "unit", (units, (Kind.SCALE, left + right, TIMES, unit))
