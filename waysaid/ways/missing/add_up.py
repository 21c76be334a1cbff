"""Add up to the total: 9 + _ = 305 asks how far it is, however far."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.ways.plan import Plan
from waysaid.ways.shape import Missing
from waysaid.ways.take.add_up import ways_up


def plans(problem: Missing) -> Iterator[Plan]:
    """Yield the ways up from the number that is given, where it is added to."""
    found, given = problem.left, problem.right
    if problem.asked:
        found, given = given, found
    if problem.sign is Sign.PLUS and found and given:
        yield from ways_up(given, found)
