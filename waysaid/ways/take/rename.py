"""Rename: tens, hundreds or thousands as a unit: 84000 - 38000 is 84 - 38 thousands."""

from collections.abc import Iterator

from waysaid.ways.add.rename import unit_of
from waysaid.ways.plan import MINUS, TIMES, Plan
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the units taken, then what is left in ones."""
    unit = unit_of(problem.whole, problem.part)
    if unit > 1:
        whole, part = problem.whole // unit, problem.part // unit
        units = (Kind.TAKE, whole, MINUS, part)
        yield "unit", (units, (Kind.SCALE, whole - part, TIMES, unit))
