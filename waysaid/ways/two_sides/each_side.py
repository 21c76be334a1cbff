"""Each side worked out to one number: 29 + 14 = 43 and 30 + 13 = 43."""

from collections.abc import Iterator

from waysaid.number import (
    Equation,
    Expression,
    Operation,
    as_written_in,
    value_of,
)
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, Step
from waysaid.ways.two_sides.shape import Closed


def plans(problem: Closed) -> Iterator[Plan]:
    """Yield both sides worked out, a side that is one number left as it is."""
    sides = (problem.left, problem.right)
    yield "both-sides", tuple(made(side) for side in sides if isinstance(side, Operation))


def made(side: Expression) -> Step:
    """Return the step that works a side out."""
    value = value_of(side)
    return Step(Kind.JOIN, Equation(side, as_written_in(value, side)))
