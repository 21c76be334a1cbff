"""Known fact: the sum is simply known, or its digits' sum is."""

from collections.abc import Iterator

from waysaid.ways.place import easy_double, round_unit
from waysaid.ways.plan import PLUS, Plan
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind

WITHIN = 20
"""Sums known from memory: within 20 by the end of grade 2 (ccss)."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the fact itself, and the fact of digits it stands on (3 + 2, so 30 + 20)."""
    left, right = problem.left, problem.right
    if not is_known(left, right):
        return
    fact = (Kind.RECALL, left, PLUS, right)
    yield "known", (fact,)
    unit = min(round_unit(left), round_unit(right))
    if unit > 1 and left // unit <= 10 and right // unit <= 10:
        yield "from-digits", ((Kind.RECALL, left // unit, PLUS, right // unit), fact)


def is_known(left: int, right: int) -> bool:
    """Tell whether a child of the end of grade 2 may simply know the sum.

    Facts within 20, the same facts of tens and hundreds, easy doubles, pairs of fives that make
    100, and numbers that only have to be put side by side (40 + 7). Beyond 20 our choice.
    """
    unit = min(round_unit(left), round_unit(right))
    if (left + right) // unit <= WITHIN:
        return True
    if left == right:
        return easy_double(left)
    if left + right == 100 and left % 5 == 0:
        return True
    small, large = sorted((left, right))
    return small < round_unit(large)
