"""Break up: every one is shared, and each gets a part of every one: 3 / 8 as 3 x 1/8."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Operation, exact
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.shape import UnderOne
from waysaid.ways.step import Kind, Step


def plans(problem: UnderOne) -> Iterator[Plan]:
    """Yield one shared, then so many of its parts."""
    whole, part = problem.whole, problem.part
    each = Fraction(1, part)
    if whole > 1:
        one = Step(Kind.GROUP, Equation(Operation(OVER, 1, part), each))
        all_of_them = Equation(Operation(TIMES, whole, each), exact(whole * each))
        yield "one-by-one", (one, Step(Kind.SCALE, all_of_them))
