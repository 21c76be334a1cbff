"""Think adding: the sum that fits is known, so the missing part is too."""

from collections.abc import Iterator

from waysaid.ways.add.known_fact import is_known
from waysaid.ways.plan import PLUS, Plan
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the known sum, from the number that was given: 13 - 7 from 7 + 6 = 13."""
    part, left_over = problem.part, problem.left_over
    if is_known(part, left_over):
        yield "known-sum", ((Kind.RECALL, part, PLUS, left_over),)
