"""Counting the groups up to the number shared, and what is left from there."""

from collections.abc import Iterator

from waysaid.ways.groups import both_endings, taken_off
from waysaid.ways.place import MOST_COUNTS
from waysaid.ways.plan import PLUS, Plan, counts, gathered
from waysaid.ways.shape import Leftover
from waysaid.ways.times.counting import most_groups


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the count up from the first group."""
    part, groups = problem.part, problem.groups
    if 1 < groups <= min(MOST_COUNTS, most_groups(part)):
        up = counts(part, PLUS, part, groups - 1)
        rest = taken_off(problem.whole, problem.nearest)
        moves = (*up, rest, *gathered(*([1] * groups)))
        yield from both_endings("up", moves, problem)
