"""Known fact: the product is simply known, or its digits' product is."""

from collections.abc import Iterator

from waysaid.ways.factor import TABLES, bare, knows
from waysaid.ways.plan import TIMES, Plan
from waysaid.ways.shape import Product
from waysaid.ways.step import Kind


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the fact itself, turned round, and the fact it stands on (3 x 2, so 3 x 200)."""
    left, right = problem.left, problem.right
    if not knows(left, right):
        return
    fact = (Kind.RECALL, left, TIMES, right)
    yield "known", (fact,)
    if left > right and left <= TABLES:
        yield "turned-round", ((Kind.RECALL, right, TIMES, left),)
    one, other = bare(left), bare(right)
    if one * other < left * right and min(one, other) > 1 and max(one, other) <= TABLES:
        yield "from-digits", ((Kind.RECALL, one, TIMES, other), fact)
