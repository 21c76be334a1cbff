"""Counting back, counting down to the other number, and counting up from it."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_COUNTS, skips
from waysaid.ways.plan import MINUS, PLUS, Plan, counts, gathered
from waysaid.ways.shape import Difference

FAR_UP = 2
"""How many times as far as the part a child would count to it or from it; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the counts by ones and by equal skips, and by tens and then ones."""
    whole, part, left_over = problem.whole, problem.part, problem.left_over
    for size, slug in skips(left_over, part):
        yield f"back-by-{slug}", counts(whole, MINUS, size, part // size)
    tens, ones = divmod(part, 10)
    if tens and ones and tens + ones <= MOST_COUNTS:
        by_tens = counts(whole, MINUS, 10, tens)
        yield "back-by-tens-then-ones", by_tens + counts(whole - 10 * tens, MINUS, 1, ones)
    if left_over <= FAR_UP * part:
        yield from counts_up(part, left_over)
        yield from counts_down_to(part, left_over)


def counts_up(part: int, left_over: int) -> Iterator[Plan]:
    """Yield the counts up from the part, and how many they were: 10, 11, 12, that is 3."""
    for size, slug in skips(part, left_over):
        times = left_over // size
        counted = counts(part, PLUS, size, times)
        yield f"up-to-by-{slug}", counted + gathered(*([size] * times))


def counts_down_to(part: int, left_over: int) -> Iterator[Plan]:
    """Yield the counts down to the part, and how many they were: 11, 10, 9, that is 3."""
    for size, slug in skips(part, left_over):
        times = left_over // size
        counted = counts(part + left_over, MINUS, size, times)
        yield f"down-to-by-{slug}", counted + gathered(*([size] * times))
