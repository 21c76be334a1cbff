"""Counting back past zero: 3 - 8 as 2, 1, 0, -1 and on."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_COUNTS
from waysaid.ways.plan import MINUS, Plan, counts
from waysaid.ways.shape import Below

SIZES = ((1, "ones"), (10, "tens"), (100, "hundreds"))


def plans(problem: Below) -> Iterator[Plan]:
    """Yield the counts back by ones for a few, and by tens and hundreds that go through zero."""
    for size, slug in SIZES:
        times, over = divmod(problem.part, size)
        lands_on_zero = size == 1 or problem.whole % size == 0
        if not over and lands_on_zero and 1 < times <= MOST_COUNTS:
            yield f"back-by-{slug}", counts(problem.whole, MINUS, size, times)
