"""Problems of two numbers and of three, in short."""

from waysaid.number import Exact, Number, Operation, Sign


def plus(one: Number | Operation, other: Number) -> Operation:
    """Return a sum."""
    return Operation(Sign.PLUS, one, other)


def minus(one: Number, other: Number) -> Operation:
    """Return a difference."""
    return Operation(Sign.MINUS, one, other)


def times(one: Number | Operation, other: Number) -> Operation:
    """Return a product."""
    return Operation(Sign.TIMES, one, other)


def over(one: Number, other: Number) -> Operation:
    """Return a quotient."""
    return Operation(Sign.OVER, one, other)


def part_of(part: Number, number: Exact) -> Operation:
    """Return a part of a number."""
    return Operation(Sign.OF, part, number)
