"""Rename: a division is a fraction: 3 / 8 is 3/8, 4 / 6 is 4/6 and so 2/3."""

from collections.abc import Iterator

from waysaid.number import Equation, Exact, Number, Operation, exact, parts
from waysaid.ways.plan import OVER, Plan
from waysaid.ways.shape import UnderOne
from waysaid.ways.step import Kind, Step


def plans(problem: UnderOne) -> Iterator[Plan]:
    """Yield the fraction, and where it is not in lowest terms the one that is."""
    shared = parts(problem.whole, problem.part)
    least = exact(shared)
    said = Step(Kind.RECALL, Equation(Operation(OVER, problem.whole, problem.part), shared))
    yield "as-a-fraction", (said,) if shared == least else (said, _lowest(shared, least))


def _lowest(shared: Number, least: Exact) -> Step:
    return Step(Kind.SPLIT, Equation(shared, least))
