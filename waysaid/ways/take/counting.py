"""Counting back, counting down to the other number, and counting up from it."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_COUNTS, skips
from waysaid.ways.plan import MINUS, PLUS, Plan, counts, gathered
from waysaid.ways.shape import Difference


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the counts by ones and by equal skips, and by tens and then ones."""
    whole, part, left_over = problem.whole, problem.part, problem.left_over
    for size, slug in skips(left_over, part):
        yield f"back-by-{slug}", counts(whole, MINUS, size, part // size)
    tens, ones = divmod(part, 10)
    if tens and ones and tens + ones <= MOST_COUNTS:
        by_tens = counts(whole, MINUS, 10, tens)
        yield "back-by-tens-then-ones", by_tens + counts(whole - 10 * tens, MINUS, 1, ones)
    for size, slug in skips(part, left_over):
        times = left_over // size
        how_many = gathered(*([size] * times))
        yield f"up-to-by-{slug}", counts(part, PLUS, size, times) + how_many
        yield f"down-to-by-{slug}", counts(whole, MINUS, size, times) + how_many
