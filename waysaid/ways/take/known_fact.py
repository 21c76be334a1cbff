"""Known fact: the difference is simply known, or read off the sum it belongs to."""

from collections.abc import Iterator

from waysaid.ways.add.known_fact import is_known
from waysaid.ways.place import round_unit
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the fact, the sum that goes with it (8 + 4 = 12, so 12 - 8), and that of its digits."""
    whole, part, left_over = problem.whole, problem.part, problem.left_over
    if not is_known(part, left_over):
        return
    fact = (Kind.RECALL, whole, MINUS, part)
    yield "known", (fact,)
    yield "from-sum", ((Kind.RECALL, part, PLUS, left_over), fact)
    unit = min(round_unit(whole), round_unit(part))
    if unit > 1 and whole // unit <= 20 and part // unit <= 10:
        yield "from-digits", ((Kind.RECALL, whole // unit, MINUS, part // unit), fact)
