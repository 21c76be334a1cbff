"""The answer to a problem as a class would write it, and whether what was said is that answer."""

import re
from enum import StrEnum
from fractions import Fraction

from waysaid.number.errors import Unreadable
from waysaid.number.expression import (
    Blank,
    Equation,
    Expression,
    NoValue,
    Operation,
    value_of,
    written,
)
from waysaid.number.image import Image
from waysaid.number.parse import parse_expression
from waysaid.number.problem import (
    About,
    Answer,
    Claim,
    Compare,
    Order,
    Problem,
    Span,
    Verdict,
    answer_of,
)
from waysaid.number.remainder import Remainder, remainder_of
from waysaid.number.text import Print, number_text
from waysaid.number.written import Exact, Form, Number, decimal, has_form


class Rest(StrEnum):
    """How a class says what a division leaves: `5 r 1`, `5 1/3`, `5.25` where it ends."""

    LEFT_OVER = "left-over"
    FRACTION = "fraction"
    DECIMAL = "decimal"


Said = Exact | Remainder | Order | Verdict
"""What can be said for an answer."""

_REMAINDER = re.compile(
    r"\s*([0-9]{1,9})\s*(?:r|rem|remainder|left|resto|sobran?)\.?\s*([0-9]{1,9})\s*", re.IGNORECASE
)
_WORDS: dict[str, Said] = {
    **dict.fromkeys(("<", "less", "smaller", "menor", "menos"), Order.LESS),
    **dict.fromkeys(("=", "same", "equal", "igual", "iguales"), Order.SAME),
    **dict.fromkeys((">", "more", "larger", "greater", "bigger", "mayor", "más"), Order.MORE),
    **dict.fromkeys(("true", "verdadero", "cierto"), Verdict.TRUE),
    **dict.fromkeys(("false", "falso"), Verdict.FALSE),
}


def answer_text(problem: Problem, style: Print = Print.PLAIN, rest: Rest = Rest.LEFT_OVER) -> str:
    """Return the answer as text: `62`, `1 1/4`, `0.84`, `5 r 1`, `>`, `true`, `8000..8400`.

    A decimal where the problem has one, or a percent; else lowest terms, mixed above 1. A division
    of whole numbers that leaves something ends as `rest` asks. Raises `NoValue` for no answer.
    """
    left = remainder_of(problem)
    if left is not None and rest is Rest.LEFT_OVER:
        return left.text
    answer = answer_of(problem)
    if isinstance(answer, Order | Verdict):
        return answer.value
    pointed = _pointed(problem) or (left is not None and rest is Rest.DECIMAL)
    if isinstance(answer, Span):
        low, high = (_number(each, pointed, style) for each in (answer.low, answer.high))
        return low if low == high else f"{low}..{high}"
    return _number(answer, pointed, style)


def said_text(said: Answer | Remainder, problem: Problem, style: Print = Print.PLAIN) -> str:
    """Return an answer, right or wrong, as text in the problem's own form."""
    match said:
        case Remainder():
            return said.text
        case Order() | Verdict():
            return said.value
        case Span():
            return f"{number_text(said.low, style)}..{number_text(said.high, style)}"
        case _:
            return _number(said, _pointed(problem), style)


def parse_said(said: str) -> Said | None:
    """Read an answer as it was said or typed; None where it is none that we know."""
    match = _REMAINDER.fullmatch(said)
    if match:
        return Remainder(int(match[1]), int(match[2]))
    word = said.strip().lower()
    if word in _WORDS:
        return _WORDS[word]
    try:
        read = parse_expression(said)
    except Unreadable:
        return None
    return None if isinstance(read, Operation | Blank) else value_of(read)


def fits(problem: Problem, said: str) -> bool | None:
    """Tell whether what was said is the answer; None where it cannot be read as one.

    An estimate fits within the span; a remainder and the exact value of a division both fit.
    """
    given = parse_said(said)
    try:
        answer = answer_of(problem)
    except NoValue:
        return None
    if given is None:
        return None
    if isinstance(given, Remainder):
        return given == remainder_of(problem)
    if isinstance(answer, Span):
        return isinstance(given, int | Fraction) and answer.low <= given <= answer.high
    if isinstance(problem, Compare) and isinstance(given, int | Fraction):
        return _larger(problem, given)
    return given == answer if type(given) is type(answer) or _both_exact(given, answer) else None


def has_point(problem: Problem) -> bool:
    """Tell whether a number of the problem is written with a point."""
    return _has(problem, Form.DECIMAL)


def as_written_in(value: Exact, problem: Problem) -> Number:
    """Return a number as the problem writes its own: with a point where one of them has one."""
    return decimal(value) if has_point(problem) else value


def _pointed(problem: Problem) -> bool:
    """Tell whether the answer is written with a point: that of decimals and of percents."""
    return has_point(problem) or _has(problem, Form.PERCENT)


def _has(problem: Problem, form: Form) -> bool:
    return any(has_form(leaf, form) for side in sides(problem) for leaf in written(side))


def sides(problem: Problem) -> tuple[Expression, ...]:
    """Return the expressions of a problem, from left to right; none for a picture."""
    match problem:
        case Equation():
            return problem.left, problem.right
        case Compare():
            return problem.left, problem.right
        case About():
            return (problem.expression,)
        case Claim():
            return problem.equation.left, problem.equation.right
        case Image():
            return ()
        case _:
            return (problem,)


def _larger(problem: Compare, given: Exact) -> bool:
    """Tell whether a number said for a comparison is the larger of the two."""
    left, right = value_of(problem.left), value_of(problem.right)
    return left != right and given == max(left, right)


def _both_exact(one: object, other: object) -> bool:
    return isinstance(one, int | Fraction) and isinstance(other, int | Fraction)


def _number(value: Exact, pointed: bool, style: Print) -> str:
    number: Number = decimal(value) if pointed else value
    return number_text(number, style)
