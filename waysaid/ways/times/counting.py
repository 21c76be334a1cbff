"""Counting in equal skips: 4 x 5 as 5, 10, 15, 20."""

from collections.abc import Iterator

from waysaid.ways.factor import TABLES, bare
from waysaid.ways.place import MOST_COUNTS
from waysaid.ways.plan import PLUS, Plan, counts
from waysaid.ways.shape import Product

FEW = 4
"""How often a child would add a number that nobody counts by; our choice."""
LONGEST = 100
"""Below what a number that nobody counts by must be to be added so; our choice."""


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the count by either factor, as often as the other says."""
    for turn in problem.turns():
        size, times = turn.other, turn.factor
        if times <= most_groups(size):
            yield f"by-{'second' if turn.first else 'first'}", counts(size, PLUS, size, times - 1)


def most_groups(size: int) -> int:
    """Return how many groups of a size a child would count at most; 0 where nobody would."""
    if bare(size) <= TABLES or size in (15, 25):
        return MOST_COUNTS
    return FEW if size < LONGEST else 0
