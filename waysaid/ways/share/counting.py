"""Counting the groups: up in skips to the number shared, or taken away one after another."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_COUNTS
from waysaid.ways.plan import MINUS, PLUS, Plan, counts, gathered
from waysaid.ways.shape import Quotient
from waysaid.ways.times.counting import most_groups

MOST_TAKEN = 6
"""The most groups a child would take away one by one; our choice."""


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the count up from the first group, and down to nothing."""
    part, groups = problem.part, problem.groups
    if groups > min(MOST_COUNTS, most_groups(part)):
        return
    count = gathered(*([1] * groups))
    yield "up", (*counts(part, PLUS, part, groups - 1), *count)
    if groups <= MOST_TAKEN:
        yield "down", (*counts(problem.whole, MINUS, part, groups), *count)
