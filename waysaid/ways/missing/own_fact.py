"""Known fact in the problem's own form: 12 - _ = 7 because 12 - 5 = 7."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.ways.add.known_fact import is_known
from waysaid.ways.factor import knows
from waysaid.ways.plan import Plan
from waysaid.ways.shape import Missing
from waysaid.ways.step import Kind


def plans(problem: Missing) -> Iterator[Plan]:
    """Yield the equation with its blank filled, where the fact is one to know."""
    left, sign, right = problem.left, problem.sign, problem.right
    if _knows(left, sign, right):
        yield "own-form", ((Kind.RECALL, left, sign, right),)


def _knows(left: int, sign: Sign, right: int) -> bool:
    match sign:
        case Sign.PLUS:
            return is_known(left, right)
        case Sign.MINUS:
            return is_known(right, left - right)
        case Sign.TIMES | Sign.OF:
            return min(left, right) < 2 or knows(left, right)
        case Sign.OVER:
            return right in (1, left) or not left or knows(right, left // right)
