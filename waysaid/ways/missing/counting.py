"""Count up to the total, or down to what is left, where that is what the problem asks."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.ways.plan import Plan
from waysaid.ways.shape import Missing
from waysaid.ways.take.counting import counts_down_to, counts_up


def plans(problem: Missing) -> Iterator[Plan]:
    """Yield the counts up in 1 + _ = 9, and down in 9 - _ = 1."""
    left, right = problem.left, problem.right
    if not left or not right:
        return
    if problem.sign is Sign.PLUS:
        found, given = (right, left) if problem.asked else (left, right)
        yield from counts_up(given, found)
    elif problem.sign is Sign.MINUS and problem.asked and left > right:
        yield from counts_down_to(left - right, right)
