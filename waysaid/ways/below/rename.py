"""Rename: the other way round, and as far below zero: 25 - 40 is 40 - 25 below zero.

It is no thinking of adding, for no sum is used: the problem itself is said as its opposite.
"""

from collections.abc import Iterator

from waysaid.ways.plan import MINUS, Plan
from waysaid.ways.shape import Below
from waysaid.ways.step import Kind


def plans(problem: Below) -> Iterator[Plan]:
    """Yield the difference turned round, then taken from zero."""
    turned = (Kind.TAKE, problem.part, MINUS, problem.whole)
    yield "turned-round", (turned, (Kind.TAKE, 0, MINUS, problem.short))
