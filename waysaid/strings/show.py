"""The plain equations a link shows."""

from waysaid.number import Equation, Exact, Operation, Sign, apply, exact, text


def gap(one: Exact, other: Exact) -> Exact:
    """Return how far apart two numbers are."""
    return exact(max(one, other) - min(one, other))


def change(old: Exact, new: Exact) -> str:
    """Return the equation that turns one number into another: `40 - 3 = 37`, `25 + 3 = 28`."""
    sign = Sign.PLUS if new >= old else Sign.MINUS
    return text(Equation(Operation(sign, old, gap(old, new)), new))


def times(old: Exact, by: Exact) -> str:
    """Return `old x by = ...`."""
    return text(Equation(Operation(Sign.TIMES, old, by), apply(Sign.TIMES, old, by)))
