"""Print numbers, expressions and equations: plainly for files, or with true signs for people."""

from enum import Enum
from fractions import Fraction

from waysaid.number.expression import (
    Blank,
    Equation,
    Exact,
    Expression,
    Operation,
    Problem,
    Sign,
)


class Print(Enum):
    """How signs are printed: `PLAIN` in files and JSON (`-`, `x`, `/`), `TRUE` on screens."""

    PLAIN = "plain"
    TRUE = "true"


_TRUE_SIGNS = {Sign.PLUS: "+", Sign.MINUS: "−", Sign.TIMES: "×", Sign.OVER: "÷"}
_WEIGHT = {Sign.PLUS: 1, Sign.MINUS: 1, Sign.TIMES: 2, Sign.OVER: 2}


def text(problem: Problem, style: Print = Print.PLAIN) -> str:
    """Return the expression or equation as text, with brackets only where they are needed."""
    if isinstance(problem, Equation):
        return f"{text(problem.left, style)} = {text(problem.right, style)}"
    if isinstance(problem, Operation):
        return _operation(problem, style)
    if isinstance(problem, Blank):
        return problem.value
    return number_text(problem, style)


def number_text(value: Exact, style: Print = Print.PLAIN) -> str:
    """Return a number as text: `62`, `3/4`, `1 1/4`, `-5` (or with a true minus)."""
    minus = "-" if style is Print.PLAIN else _TRUE_SIGNS[Sign.MINUS]
    sign = minus if value < 0 else ""
    size = abs(value)
    if isinstance(size, Fraction):
        whole, over = divmod(size.numerator, size.denominator)
        part = f"{over}/{size.denominator}"
        return f"{sign}{whole} {part}" if whole else f"{sign}{part}"
    return f"{sign}{size}"


def sign_text(sign: Sign, style: Print = Print.PLAIN) -> str:
    """Return the sign as text."""
    return sign.value if style is Print.PLAIN else _TRUE_SIGNS[sign]


def _operation(operation: Operation, style: Print) -> str:
    left = _inside(operation.left, operation.sign, False, style)
    right = _inside(operation.right, operation.sign, True, style)
    return f"{left} {sign_text(operation.sign, style)} {right}"


def _inside(part: Expression, sign: Sign, right: bool, style: Print) -> str:
    """Print one side of an operation, in brackets where leaving them out would change it."""
    plain = text(part, style)
    return f"({plain})" if bracketed(part, sign, right) else plain


def bracketed(part: Expression, sign: Sign, right: bool) -> bool:
    """Tell whether the part needs brackets on that side of the sign: `10 - (3 + 2)`, `3 - (-5)`."""
    if isinstance(part, Operation):
        return _WEIGHT[part.sign] < _WEIGHT[sign] + right
    return right and isinstance(part, (int, Fraction)) and part < 0
