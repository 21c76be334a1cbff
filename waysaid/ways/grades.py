"""In which grades a problem belongs, and who says so; 0 is kindergarten.

The lowest grade is the first in which a standard asks for such a problem. Standards say no highest
grade; two grades on is our choice, and grade 6 the last.
"""

from contextlib import suppress
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeGuard

from waysaid.number import (
    BLANK,
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Form,
    Image,
    ImageKind,
    NoValue,
    Number,
    Operation,
    Problem,
    Sign,
    Written,
    answer_of,
    exact,
    fill,
    has_form,
    sides,
    value_of,
    written,
)

LAST = 6
_ON = 2
_READ = "ccss"
_MEMORY = "ccss, from memory"


@dataclass(frozen=True, slots=True)
class GradeRange:
    """The first and the last grade, and the source of the first by its id."""

    first: int
    last: int
    source: str
    standard: str

    def holds(self, grade: int) -> bool:
        """Tell whether a grade is one of them."""
        return self.first <= grade <= self.last


_Rung = tuple[int, int, str]
_SUMS: tuple[_Rung, ...] = (
    (5, 0, "K.OA.5"),
    (20, 1, "1.OA.6"),
    (100, 2, "2.NBT.5"),
    (1000, 3, "3.NBT.2"),
    (10**9, 4, "4.NBT.4"),
)
"""Up to which total (or number taken from) a sum belongs to a grade."""
_FROM_MEMORY = {
    "1.OA.7",
    "2.NBT.4",
    "2.OA.4",
    "3.NF.3",
    "3.OA.8",
    "4.NF.2",
    "4.NF.3",
    "4.NF.4",
    "4.NF.7",
    "4.OA.3",
    "5.NBT.3",
    "5.NF.1",
    "5.NF.4",
    "5.NF.7",
    "6.NS.3",
    "6.NS.5",
    "6.RP.3",
    "K.CC.5",
    "K.OA.3",
    "K.OA.4",
}
_TEN = 10


def grades_of(problem: Problem) -> GradeRange:
    """Return the grades of a problem of any kind; of a picture none after grade 2 (our choice)."""
    first, standard = _asked(problem)
    source = _MEMORY if standard in _FROM_MEMORY else _READ
    last = _ON if isinstance(problem, Image) else first + _ON
    return GradeRange(first, min(LAST, last), source, standard)


def _asked(problem: Problem) -> tuple[int, str]:
    match problem:
        case Image(ImageKind.DICE, (_, _, _, _, _)):
            return 2, "2.OA.4"
        case Image():
            return 0, "K.CC.5"
        case About():
            return max(_about(problem.expression), _parts(problem))
        case Compare():
            return max(_compared(problem), *(_work(side) for side in sides(problem)))
        case Claim():
            return max((1, "1.OA.7"), *(_work(side) for side in sides(problem)))
        case Equation():
            filled = _filled(problem)
            worked = max(_worked(filled), _in_parts(filled), _below_zero(problem))
            return _of_ten(filled) or worked
        case _:
            return max(_worked(problem), _below_zero(problem))


def _worked(problem: Problem) -> tuple[int, str]:
    return max(_work(side) for side in sides(problem))


def _filled(problem: Equation) -> Equation:
    """Return a missing number filled in: 8 + _ = 1000 is worked with numbers to a thousand.

    A part that is missing stays so: a child may say it in parts of the kind that is written.
    """
    with suppress(NoValue):
        answer = answer_of(problem)
        return fill(problem, answer) if isinstance(answer, int) else problem
    return problem


def _in_parts(filled: Equation) -> tuple[int, str]:
    """Return the grade of a part that is missing, by all numbers there are: 10 - _ = 2.7."""
    numbers = _numbers(*sides(filled))
    worked = (one for one in sides(filled) if isinstance(one, Operation) and BLANK in written(one))
    return max((_with_numbers(one, numbers) for one in worked), default=(0, "K.OA.5"))


def _of_ten(filled: Equation) -> tuple[int, str] | None:
    """Return the grade of a number to ten in two parts, one of them missing; None for others."""
    whole, other = sorted(sides(filled), key=lambda side: isinstance(side, Operation))
    if not isinstance(other, Operation) or other.sign is not Sign.PLUS:
        return None
    pair = written(other)
    if not isinstance(whole, int) or whole > _TEN or len(pair) > 2:
        return None
    if not all(isinstance(part, int) and part >= 0 for part in pair):
        return None
    return 0, "K.OA.4" if whole == _TEN else "K.OA.3"


def _below_zero(problem: Problem) -> tuple[int, str]:
    """Return the grade of an answer, or of a number of the problem, below zero."""
    if any(exact(one) < 0 for one in _numbers(*sides(problem))):
        return 6, "6.NS.5"
    try:
        answer = answer_of(problem)
    except NoValue:
        return 0, "K.OA.5"
    below = isinstance(answer, int | Fraction) and answer < 0
    return (6, "6.NS.5") if below else (0, "K.OA.5")


def _about(expression: Expression) -> tuple[int, str]:
    times = isinstance(expression, Operation) and expression.sign in (Sign.TIMES, Sign.OVER)
    return (4, "4.OA.3") if times else (3, "3.OA.8")


def _parts(problem: Problem) -> tuple[int, str]:
    """Return the grade of the fractions, decimals and percents in an estimate."""
    numbers = _numbers(*sides(problem))
    if any(has_form(one, Form.PERCENT) for one in numbers):
        return 6, "6.RP.3"
    if _places(numbers):
        return 5, "5.NBT.7"
    return (5, "5.NF.2") if any(map(_is_fraction, numbers)) else (0, "K.OA.5")


def _compared(problem: Compare) -> tuple[int, str]:
    numbers = _numbers(*sides(problem))
    fractions = [one for one in numbers if _is_fraction(one)]
    places = _places(numbers)
    if any(has_form(one, Form.PERCENT) for one in numbers):
        return 6, "6.RP.3"
    if places:
        return (5, "5.NBT.3") if places > 2 else (4, "4.NF.7")
    if fractions:
        seen = (exact, _bottom, _top)
        alike = any(len(set(map(one, fractions))) == 1 for one in seen)
        return (3, "3.NF.3") if alike else (4, "4.NF.2")
    return 2, "2.NBT.4"


def _work(side: Expression) -> tuple[int, str]:
    """Return the grade of an expression: the hardest of its operations."""
    if not isinstance(side, Operation):
        return 0, "K.OA.5"
    inner = max(_work(side.left), _work(side.right))
    return max(inner, _operation(side))


def _operation(operation: Operation) -> tuple[int, str]:
    return _with_numbers(operation, _numbers(operation))


def _with_numbers(operation: Operation, numbers: list[Number]) -> tuple[int, str]:
    """Return the grade of an operation that these numbers are in."""
    if any(has_form(one, Form.PERCENT) for one in numbers) or operation.sign is Sign.OF:
        return _of(numbers)
    places = _places(numbers)
    if places:
        return (6, "6.NS.3") if places > 2 else (5, "5.NBT.7")
    if any(_is_fraction(one) for one in numbers):
        return _fractions(operation, numbers)
    return _whole(operation, numbers)


def _of(numbers: list[Number]) -> tuple[int, str]:
    if any(has_form(one, Form.PERCENT) for one in numbers):
        return 6, "6.RP.3"
    return (5, "5.NF.4") if sum(map(_is_fraction, numbers)) > 1 else (4, "4.NF.4")


def _fractions(operation: Operation, numbers: list[Number]) -> tuple[int, str]:
    if operation.sign is Sign.OVER:
        return 5, "5.NF.7"
    if operation.sign is Sign.TIMES:
        return (5, "5.NF.4") if sum(map(_is_fraction, numbers)) > 1 else (4, "4.NF.4")
    bottoms = {_bottom(one) for one in numbers if _is_fraction(one)}
    return (5, "5.NF.1") if len(bottoms) > 1 else (4, "4.NF.3")


def _whole(operation: Operation, numbers: list[Number]) -> tuple[int, str]:
    sizes = sorted(abs(int(exact(one))) for one in numbers)
    largest: Exact = sizes[-1]
    with suppress(NoValue):
        value = value_of(operation)
        largest = max(largest, value, -value)
    if operation.sign in (Sign.PLUS, Sign.MINUS):
        return next((grade, standard) for top, grade, standard in _SUMS if largest <= top)
    digits = [len(str(size).rstrip("0")) for size in sizes]
    if largest <= 100:
        return 3, "3.OA.7"
    if operation.sign is Sign.TIMES:
        if max(digits) == 1 and len(str(sizes[-1])) <= 2:
            return 3, "3.NBT.3"
        small = len(str(sizes[0]))
        return (4, "4.NBT.5") if small == 1 or len(str(sizes[-1])) <= 2 else (5, "5.NBT.5")
    return (4, "4.NBT.6") if len(str(sizes[0])) == 1 else (5, "5.NBT.6")


def _numbers(*parts: Expression) -> list[Number]:
    return [leaf for part in parts for leaf in written(part) if not isinstance(leaf, Blank)]


def _places(numbers: list[Number]) -> int:
    """Return the most places after a point."""
    return max((one.size for one in numbers if _is_pointed(one)), default=0)


def _is_pointed(leaf: Number) -> TypeGuard[Written]:
    return has_form(leaf, Form.DECIMAL)


def _is_fraction(leaf: object) -> bool:
    return isinstance(leaf, Fraction) or has_form(leaf, Form.PARTS)


def _bottom(fraction: Number) -> int:
    """Return the bottom number of a fraction as it is written: 6 of 2/6."""
    return fraction.size if has_form(fraction, Form.PARTS) else exact(fraction).denominator


def _top(fraction: Number) -> int:
    """Return all the parts of a fraction as it is written: 2 of 2/6, 5 of 1 1/4."""
    return int(exact(fraction) * _bottom(fraction))
