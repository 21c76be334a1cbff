"""Print numbers and problems: plainly for files, or with true signs for people."""

from enum import Enum
from fractions import Fraction

from waysaid.number.expression import Blank, Equation, Expression, Operation, Sign
from waysaid.number.image import Image, image_text
from waysaid.number.language import Language
from waysaid.number.problem import About, Claim, Compare, Problem
from waysaid.number.written import Form, Number, Written


class Print(Enum):
    """How signs are printed: `PLAIN` in files and JSON (`-`, `x`, `/`), `TRUE` on screens."""

    PLAIN = "plain"
    TRUE = "true"


_TRUE_SIGNS = {Sign.PLUS: "+", Sign.MINUS: "−", Sign.TIMES: "×", Sign.OVER: "÷"}
_OF = {Language.EN: "of", Language.ES: "de"}
_ABOUT = {Language.EN: "about", Language.ES: "cerca de"}
_WEIGHT = {Sign.PLUS: 1, Sign.MINUS: 1, Sign.TIMES: 2, Sign.OVER: 2, Sign.OF: 2}


def text(problem: Problem, style: Print = Print.PLAIN, language: Language = Language.EN) -> str:
    """Return the problem as text, with brackets only where they are needed.

    The language is that of `of` and `about`, and counts only in the `TRUE` style.
    """
    match problem:
        case Equation():
            left = text(problem.left, style, language)
            return f"{left} = {text(problem.right, style, language)}"
        case Operation():
            return _operation(problem, style, language)
        case Blank():
            return problem.value
        case Claim():
            return f"{text(problem.equation, style, language)} ?"
        case Compare():
            left = text(problem.left, style, language)
            return f"{left} ? {text(problem.right, style, language)}"
        case About():
            word = _ABOUT[Language.EN if style is Print.PLAIN else language]
            return f"{word} {text(problem.expression, style, language)}"
        case Image():
            return image_text(problem)
        case _:
            return number_text(problem, style)


def number_text(value: Number, style: Print = Print.PLAIN) -> str:
    """Return a number as text: `62`, `3/4`, `1 1/4`, `0.50`, `15%`, `-5` (or with a true minus)."""
    minus = "-" if style is Print.PLAIN else _TRUE_SIGNS[Sign.MINUS]
    if isinstance(value, Written):
        return f"{minus if value.value < 0 else ''}{_written(value)}"
    sign = minus if value < 0 else ""
    size = abs(value)
    if isinstance(size, Fraction):
        whole, over = divmod(size.numerator, size.denominator)
        part = f"{over}/{size.denominator}"
        return f"{sign}{whole} {part}" if whole else f"{sign}{part}"
    return f"{sign}{size}"


def _written(number: Written) -> str:
    """Print the size of a number in its form."""
    size = abs(Fraction(number.value))
    match number.form:
        case Form.DECIMAL:
            return _pointed(size, number.size)
        case Form.PERCENT:
            return f"{_pointed(size * 100, number.size)}%"
        case Form.PARTS:
            part = f"{abs(number.top)}/{number.size}"
            return f"{abs(number.whole)} {part}" if number.whole else part


def _pointed(size: Fraction, places: int) -> str:
    whole, rest = divmod(int(size * 10**places), 10**places)
    return f"{whole}.{rest:0{places}}" if places else str(whole)


def sign_text(sign: Sign, style: Print = Print.PLAIN, language: Language = Language.EN) -> str:
    """Return the sign as text."""
    if style is Print.PLAIN:
        return sign.value
    return _OF[language] if sign is Sign.OF else _TRUE_SIGNS[sign]


def _operation(operation: Operation, style: Print, language: Language) -> str:
    left = _inside(operation.left, operation.sign, False, style, language)
    right = _inside(operation.right, operation.sign, True, style, language)
    return f"{left} {sign_text(operation.sign, style, language)} {right}"


def _inside(part: Expression, sign: Sign, right: bool, style: Print, language: Language) -> str:
    """Print one side of an operation, in brackets where leaving them out would change it."""
    plain = text(part, style, language)
    return f"({plain})" if bracketed(part, sign, right) else plain


def bracketed(part: Expression, sign: Sign, right: bool) -> bool:
    """Tell whether the part needs brackets on that side of the sign: `10 - (3 + 2)`, `3 - (-5)`."""
    if isinstance(part, Operation):
        return _WEIGHT[part.sign] < _WEIGHT[sign] + right
    if isinstance(part, Written):
        return right and part.value < 0
    return right and isinstance(part, (int, Fraction)) and part < 0
