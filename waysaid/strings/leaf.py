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
    Number,
    Operation,
    Problem,
    leaves,
    sides,
    written,
)


def leaves_of(problem: Problem) -> tuple[Exact | Blank, ...]:
    """Return every number and blank of a problem from left to right, both sides of an equation."""
    return tuple(leaf for side in sides(problem) for leaf in leaves(side))


def written_of(problem: Problem) -> tuple[Number | Blank, ...]:
    """Return every number, as it is written, and blank of a problem from left to right."""
    return tuple(leaf for side in sides(problem) for leaf in written(side))


def with_leaves(problem: Problem, new: Sequence[Number | Blank]) -> Problem:
    """Return the problem with `new` in the places of its numbers and blanks, in order.

    A picture has no such places and stays. Raises `ValueError` where the count differs.
    """
    if len(new) != len(leaves_of(problem)):
        raise ValueError("one new number is needed for each place of the problem")
    rest = iter(new)
    match problem:
        case Image():
            return problem
        case Equation():
            return _equation(problem, rest)
        case Claim():
            return Claim(_equation(problem.equation, rest))
        case Compare():
            left = _rebuilt(problem.left, rest)
            return Compare(left, _rebuilt(problem.right, rest))
        case About():
            return About(_rebuilt(problem.expression, rest))
        case _:
            return _rebuilt(problem, rest)


def _equation(equation: Equation, rest: Iterator[Number | Blank]) -> Equation:
    left = _rebuilt(equation.left, rest)
    return Equation(left, _rebuilt(equation.right, rest))


def _rebuilt(expression: Expression, rest: Iterator[Number | Blank]) -> Expression:
    if isinstance(expression, Operation):
        left = _rebuilt(expression.left, rest)
        return Operation(expression.sign, left, _rebuilt(expression.right, rest))
    return next(rest)
