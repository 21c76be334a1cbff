"""Numbers of units as decimals, and the steps of whole numbers told in units."""

from fractions import Fraction
from functools import lru_cache

from waysaid.number import Equation, Expression, Number, Operation, Sign, decimal
from waysaid.ways.step import Kind, Step

Units = tuple[int, int]
"""So many units, and the places after the point that a unit has: (24, 1) is 2.4."""


@lru_cache(maxsize=1 << 14)
def pointed(units: int, places: int) -> Number:
    """Return so many units of so many places as a number: 24 of one place is 2.4, 40 is 4."""
    return decimal(Fraction(units, 10**places)) if places else units


def made(kind: Kind, left: Units, sign: Sign, right: Units, result: Units) -> Step:
    """Return a step of three numbers in units; the caller answers for the result."""
    whole = Operation(sign, pointed(*left), pointed(*right))
    return Step(kind, Equation(whole, pointed(*result)))


def all_in(step: Step, places: int) -> Step:
    """Return a step of whole numbers with every one of them in one unit."""
    left, right = in_unit(step.equation.left, places), in_unit(step.equation.right, places)
    return Step(step.kind, Equation(left, right))


def in_unit(side: Expression, places: int) -> Expression:
    """Return an expression of whole numbers with every one of them in one unit."""
    if isinstance(side, Operation):
        return Operation(side.sign, in_unit(side.left, places), in_unit(side.right, places))
    return pointed(side, places) if isinstance(side, int) else side
