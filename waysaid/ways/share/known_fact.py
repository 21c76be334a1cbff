"""Known fact: the quotient is simply known, or its digits' quotient is."""

from collections.abc import Iterator

from waysaid.ways.factor import TABLES, bare, knows
from waysaid.ways.plan import OVER, Plan
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the fact itself, and the fact it stands on (6 / 3, so 600 / 3)."""
    whole, part, groups = problem.whole, problem.part, problem.groups
    if not knows(part, groups):
        return
    fact = (Kind.RECALL, whole, OVER, part)
    yield "known", (fact,)
    small = bare(groups)
    if 1 < part <= TABLES and 1 < small < groups and small <= TABLES:
        yield "from-digits", ((Kind.RECALL, part * small, OVER, part), fact)
