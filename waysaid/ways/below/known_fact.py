"""Known fact: a small difference below zero is simply known: 3 - 8."""

from collections.abc import Iterator

from waysaid.ways.place import round_unit
from waysaid.ways.plan import MINUS, Plan
from waysaid.ways.shape import Below
from waysaid.ways.step import Kind

WITHIN = 10
"""Up to what a child of grade 6 may know a difference below zero; our choice."""


def plans(problem: Below) -> Iterator[Plan]:
    """Yield the fact, also of tens or hundreds."""
    unit = min(round_unit(problem.whole), round_unit(problem.part))
    if problem.part // unit <= WITHIN:
        yield "known", ((Kind.RECALL, problem.whole, MINUS, problem.part),)
