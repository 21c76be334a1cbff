"""Rename: tens or hundreds as a unit: 3 x 200 is 3 x 2 hundreds."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do
from waysaid.ways.plan import TIMES, Plan
from waysaid.ways.shape import Product
from waysaid.ways.step import Kind


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the product of the digits, then of their units, where a number ends in zeros."""
    one, other = bare(problem.left), bare(problem.right)
    unit = problem.product // (one * other)
    if unit > 1 and min(one, other) > 1 and can_do(one, other):
        small = (Kind.GROUP, one, TIMES, other)
        yield "unit", (small, (Kind.SCALE, one * other, TIMES, unit))
