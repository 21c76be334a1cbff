"""Counting on: by ones for a few, by equal skips, or by tens and then ones."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_COUNTS, skips
from waysaid.ways.plan import PLUS, Plan, counts
from waysaid.ways.shape import Sum


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield counting on from the larger number, and from the first."""
    for start, other, tag in problem.starts():
        if start < other and tag == "second":
            continue
        for size, slug in skips(start, other):
            yield f"by-{slug}-from-{tag}", counts(start, PLUS, size, other // size)
        tens, ones = divmod(other, 10)
        if tens and ones and tens + ones <= MOST_COUNTS:
            by_tens = counts(start, PLUS, 10, tens)
            then = counts(start + 10 * tens, PLUS, 1, ones)
            yield f"by-tens-then-ones-from-{tag}", by_tens + then
