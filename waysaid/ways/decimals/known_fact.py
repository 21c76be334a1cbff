"""Known fact: the product or quotient is known, or that of its digits is: 7 x 4, so 0.7 x 4."""

from collections.abc import Iterator

from waysaid.number import Equation, Operation, apply, decimal
from waysaid.ways.decimals.shape import Plain, Times, Turned
from waysaid.ways.factor import TABLES, bare, knows
from waysaid.ways.plan import TIMES, Plan
from waysaid.ways.step import Kind, Step


def plain_plans(problem: Plain) -> Iterator[Plan]:
    """Yield what needs no working: 0.7 x 1, 0 x 0.7, 0.7 / 0.7."""
    whole = Operation(problem.sign, decimal(problem.left), decimal(problem.right))
    result = decimal(apply(problem.sign, problem.left, problem.right))
    yield "known", (Step(Kind.RECALL, Equation(whole, result)),)


def times_plans(problem: Times) -> Iterator[Plan]:
    """Yield a product of the tables where one number is whole, and the digits it stands on."""
    left, right = problem.left, problem.right
    one, other = bare(left.units), bare(right.units)
    if not knows(left.units, right.units) or max(one, other) > TABLES:
        return
    fact = Turned(left, right, True).times(Kind.RECALL, left.units, left.places)
    if 0 in (left.places, right.places):
        yield "known", (fact,)
    if min(one, other) > 1:
        yield "from-digits", ((Kind.RECALL, one, TIMES, other), fact)
