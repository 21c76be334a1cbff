"""Two sides of an equals sign, or of the question which is more."""

from dataclasses import dataclass

from waysaid.number import (
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Number,
    Operation,
    Problem,
    Sign,
    blanks,
    exact,
    fill,
    solve,
)


@dataclass(frozen=True, slots=True)
class Closed:
    """Two sides with nothing missing, at least one of them still to be worked out."""

    left: Expression
    right: Expression


@dataclass(frozen=True, slots=True)
class Open:
    """One side that is whole, another with a blank, and what fills it.

    `first` tells whether the blank is the first of the two numbers of its side.
    """

    whole: Expression
    sign: Sign
    given: Number
    first: bool
    found: Exact


def shapes_of(problem: Problem) -> tuple[Closed | Open, ...]:
    """Return the shape of a claim, of a comparison of work, or of `8 + 4 = _ + 5`."""
    match problem:
        case Claim():
            return _closed(problem.equation.left, problem.equation.right)
        case Compare():
            return _closed(problem.left, problem.right)
        case Equation():
            return _open(problem)
        case _:
            return ()


def pair_of(expression: Expression) -> tuple[Sign, Number, Number] | None:
    """Return the sign and the numbers of `29 + 14`; None for any other expression."""
    if not isinstance(expression, Operation):
        return None
    left, right = expression.left, expression.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return None
    return expression.sign, left, right


def whole_numbers(*numbers: Number) -> bool:
    """Tell whether all are whole numbers above 0, written plainly."""
    return all(isinstance(number, int) and number > 0 for number in numbers)


def _closed(left: Expression, right: Expression) -> tuple[Closed, ...]:
    if isinstance(left, Operation) or isinstance(right, Operation):
        return (Closed(left, right),)
    return ()


def _open(problem: Equation) -> tuple[Open, ...]:
    whole, side = problem.left, problem.right
    if blanks(whole):
        whole, side = side, whole
    if not isinstance(whole, Operation) or not isinstance(side, Operation):
        return ()
    given = side.right if isinstance(side.left, Blank) else side.left
    if isinstance(given, Operation | Blank) or blanks(side) != 1:
        return ()
    found = solve(problem)
    if found < 0 or blanks(fill(problem, found)):
        return ()
    return (Open(whole, side.sign, given, isinstance(side.left, Blank), exact(found)),)
