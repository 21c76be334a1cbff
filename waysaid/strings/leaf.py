"""The numbers of a problem by their place, and the same problem with others in those places."""

from collections.abc import Iterator, Sequence

from waysaid.number import (
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Image,
    Operation,
    Problem,
    leaves,
    sides,
)


def leaves_of(problem: Problem) -> tuple[Exact | Blank, ...]:
    """Return every number and blank of a problem from left to right, both sides of an equation."""
    return tuple(leaf for side in sides(problem) for leaf in leaves(side))


def with_leaves(problem: Problem, new: Sequence[Exact | Blank]) -> Problem:
    """Return the problem with `new` in the places of its numbers and blanks, in order.

    Raises `ValueError` where the count differs, or the problem is no expression and no equation.
    """
    if len(new) != len(leaves_of(problem)):
        raise ValueError("one new number is needed for each place of the problem")
    rest = iter(new)
    if isinstance(problem, Equation):
        left = _rebuilt(problem.left, rest)
        return Equation(left, _rebuilt(problem.right, rest))
    if isinstance(problem, Claim | Compare | About | Image):
        raise ValueError("only sums, products and equations take new numbers")
    return _rebuilt(problem, rest)


def _rebuilt(expression: Expression, rest: Iterator[Exact | Blank]) -> Expression:
    if isinstance(expression, Operation):
        left = _rebuilt(expression.left, rest)
        return Operation(expression.sign, left, _rebuilt(expression.right, rest))
    return next(rest)
