"""Exact numbers, and what children and teachers write with them: expressions and equations.

A leaf is a plain whole number, a `Fraction` or a `Written` number, so that no float can enter; a
`Fraction` that is whole never appears (see `exact`). A longer sum is nested to the left:
`a + b + c` is `(a + b) + c`.
"""

from dataclasses import dataclass
from enum import Enum, StrEnum
from fractions import Fraction

from waysaid.number.written import Exact, Written, exact


class Sign(StrEnum):
    """The four operations, and a part `of` a number, each with the sign of files and JSON."""

    PLUS = "+"
    MINUS = "-"
    TIMES = "x"
    OVER = "/"
    OF = "of"

    __hash__ = str.__hash__


class Blank(Enum):
    """The unknown of an equation, or a part that nobody said."""

    BLANK = "_"


BLANK = Blank.BLANK


@dataclass(frozen=True, slots=True)
class Operation:
    """Two expressions joined by one sign."""

    sign: Sign
    left: "Expression"
    right: "Expression"


Expression = int | Fraction | Written | Blank | Operation


@dataclass(frozen=True, slots=True)
class Equation:
    """Two expressions that are said to be equal; whether they are is `is_true`."""

    left: Expression
    right: Expression


Arithmetic = Expression | Equation
"""What has one number for an answer."""


class NoValue(ValueError):  # noqa: N818  the name says what went wrong
    """Raised where an expression has no value: a blank in it, or a division by zero."""


def apply(sign: Sign, left: Exact, right: Exact) -> Exact:
    """Return `left sign right`, exactly. Raises `NoValue` for a division by zero."""
    match sign:
        case Sign.PLUS:
            return exact(left + right)
        case Sign.MINUS:
            return exact(left - right)
        case Sign.TIMES | Sign.OF:
            return exact(left * right)
        case Sign.OVER:
            if right == 0:
                raise NoValue("division by zero")
            if type(left) is int and type(right) is int:
                return exact(Fraction(left, right)) if left % right else left // right
            return exact(Fraction(left) / right)


def value_of(expression: Expression) -> Exact:
    """Return the exact value. Raises `NoValue` for a blank or a division by zero."""
    if type(expression) is int:
        return expression
    if isinstance(expression, Operation):
        left, right = value_of(expression.left), value_of(expression.right)
        return apply(expression.sign, left, right)
    if isinstance(expression, Blank):
        raise NoValue("a blank has no value")
    return exact(expression)


def is_true(equation: Equation) -> bool | None:
    """Tell whether both sides are equal; None where either has no value."""
    try:
        return value_of(equation.left) == value_of(equation.right)
    except NoValue:
        return None


def leaves(expression: Expression) -> list[Exact | Blank]:
    """Return the value of every number, and every blank, of an expression, from left to right."""
    return [
        leaf if type(leaf) is int or isinstance(leaf, Blank) else exact(leaf)
        for leaf in written(expression)
    ]


def written(expression: Expression) -> list[Exact | Written | Blank]:
    """Return every number and blank of an expression as it is written, from left to right."""
    if isinstance(expression, Operation):
        return written(expression.left) + written(expression.right)
    return [expression]


def blanks(problem: Arithmetic) -> int:
    """Count the blanks of an expression or an equation."""
    if isinstance(problem, Equation):
        return blanks(problem.left) + blanks(problem.right)
    return sum(leaf is BLANK for leaf in leaves(problem))


def signed_terms(expression: Expression) -> tuple[tuple[Sign, Exact | Blank], ...] | None:
    """Return the terms of a sum or difference in order, each with its sign.

    `58 + 47 - 38` gives plus 58, plus 47, minus 38. None where a multiplication or a division
    is in it, or a bracket on the right of a sign.
    """
    if not isinstance(expression, Operation):
        return ((Sign.PLUS, _value(expression)),)
    if expression.sign not in (Sign.PLUS, Sign.MINUS) or isinstance(expression.right, Operation):
        return None
    before = signed_terms(expression.left)
    if before is None:
        return None
    return (*before, (expression.sign, _value(expression.right)))


def _value(leaf: Exact | Written | Blank) -> Exact | Blank:
    return leaf if isinstance(leaf, Blank) else exact(leaf)


def chain(first: Expression, *rest: tuple[Sign, Expression]) -> Expression:
    """Build an expression nested to the left: the inverse of `signed_terms`."""
    whole = first
    for sign, part in rest:
        whole = Operation(sign, whole, part)
    return whole


def unknown(problem: Arithmetic) -> Exact:
    """Return the answer: the value of an expression, or the number that fills the one blank.

    Raises `NoValue` where there is none (no value, no blank, more than one, or a blank that any
    number or no number fills).
    """
    if not isinstance(problem, Equation):
        return value_of(problem)
    if blanks(problem) != 1:
        raise NoValue("an equation to solve has exactly one blank")
    open_side, shut_side = problem.left, problem.right
    if blanks(shut_side):
        open_side, shut_side = shut_side, open_side
    found = value_of(undone(open_side, shut_side))
    if not is_true(fill(problem, found)):
        raise NoValue("no number fills the blank")
    return found


def fill(problem: Equation, value: Exact) -> Equation:
    """Return the equation with the value in every blank."""
    return Equation(_filled(problem.left, value), _filled(problem.right, value))


def _filled(expression: Expression, value: Exact) -> Expression:
    if isinstance(expression, Operation):
        left, right = _filled(expression.left, value), _filled(expression.right, value)
        return Operation(expression.sign, left, right)
    return value if isinstance(expression, Blank) else expression


_OPPOSITE = {
    Sign.PLUS: Sign.MINUS,
    Sign.MINUS: Sign.PLUS,
    Sign.TIMES: Sign.OVER,
    Sign.OVER: Sign.TIMES,
    Sign.OF: Sign.OVER,
}


def undone(side: Expression, total: Expression) -> Expression:
    """Return what the one blank of a side is, given the total: (19 - 4) / 3 for _ x 3 + 4 = 19."""
    if not isinstance(side, Operation):
        return total
    sign = side.sign
    if blanks(side.left):
        return undone(side.left, Operation(_OPPOSITE[sign], total, side.right))
    if sign in (Sign.MINUS, Sign.OVER):
        return undone(side.right, Operation(sign, side.left, total))
    return undone(side.right, Operation(_OPPOSITE[sign], total, side.left))
