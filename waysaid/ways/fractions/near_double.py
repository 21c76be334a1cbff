"""Near double: twice one of two numbers that are close, then what is too much or too little."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import exact
from waysaid.ways.fractions.amount import did, one_go
from waysaid.ways.fractions.shape import FractionSum, FractionTake
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind

NEAR = Fraction(1, 4)
"""How far apart the two may be; our choice."""


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield the double of either number, and the double itself where both are one."""
    left, right = problem.left, problem.right
    apart = exact(abs(Fraction(left.value) - right.value))
    if not apart:
        if problem.left.top:
            yield "double", (did(Kind.RECALL, left.number, PLUS, right.number),)
        return
    if apart > NEAR or not one_go(left.value, right.value):
        return
    for start, other, tag in problem.starts():
        double = exact(2 * start.value)
        if not one_go(double, apart):
            continue
        twice = did(Kind.RECALL, start.number, PLUS, start.number)
        sign = PLUS if other.value > start.value else MINUS
        yield f"double-{tag}", (twice, did(Kind.MEND, double, sign, apart))


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the half that is known: 1 1/2 - 3/4, since twice 3/4 is 1 1/2."""
    whole, part = problem.whole, problem.part
    if whole.value == 2 * part.value and part.top:
        yield "half", (did(Kind.RECALL, part.number, PLUS, part.number, whole.number),)
