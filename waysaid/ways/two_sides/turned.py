"""The same two numbers in another order: 3 x 4 and 4 x 3."""

from collections.abc import Iterator

from waysaid.number import Equation, Sign
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, Step
from waysaid.ways.two_sides.shape import Closed, pair_of


def plans(problem: Closed) -> Iterator[Plan]:
    """Yield what is seen at once: a sum or product and itself turned round, or told twice."""
    left, right = pair_of(problem.left), pair_of(problem.right)
    if left is None or right is None or left[0] is not right[0]:
        return
    if left[1:] == right[1:] or (left[0] in (Sign.PLUS, Sign.TIMES) and left[1:] == right[:0:-1]):
        yield "turned-round", (Step(Kind.RECALL, Equation(problem.left, problem.right)),)
