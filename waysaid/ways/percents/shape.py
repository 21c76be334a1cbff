"""What a problem with a percent of a number is about."""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.number import (
    BLANK,
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Form,
    Image,
    Number,
    Operation,
    Problem,
    Sign,
    Written,
    decimal,
    exact,
    has_form,
    places_of,
)
from waysaid.ways.fractions.amount import is_fraction

MOST_PLACES = 3
"""The most places after the point that a percent, or the number it is of, may have."""


@dataclass(frozen=True, slots=True)
class PercentOf:
    """So many per cent of a number: 15% of 60, 60 x 15%; `first` tells which is said first."""

    rate: Exact
    number: Exact
    sign: Sign
    first: bool

    def share(self, rate: Exact) -> Exact:
        """Return so many per cent of the number."""
        return exact(Fraction(self.number) * rate / 100)

    def pair(self, part: Number, number: Number) -> tuple[Number, Number]:
        """Return a part and a number in the order of the problem."""
        return (part, number) if self.first else (number, part)


@dataclass(frozen=True, slots=True)
class PercentWhole:
    """The number that so many per cent of is known: 15% of _ = 9."""

    rate: Exact
    part: Exact


@dataclass(frozen=True, slots=True)
class PercentSum:
    """Two percents put together or one taken from the other, as so many hundredths."""

    left: Written
    sign: Sign
    right: Written


PercentShape = PercentOf | PercentWhole | PercentSum


def shapes_of(problem: Problem) -> tuple[PercentShape, ...]:
    """Return every shape the problem can be seen as; empty where no number is a percent."""
    if isinstance(problem, Claim | Compare | About | Image):
        return ()
    if isinstance(problem, Equation):
        return _asked(problem)
    return _known(problem) if isinstance(problem, Operation) else ()


def is_percent(number: object) -> bool:
    """Tell whether a number is written as so many hundredths: 15%."""
    return has_form(number, Form.PERCENT)


def shown(value: Exact) -> Number:
    """Return a number as it is written beside percents: with a point where it is not whole."""
    return value if isinstance(value, int) else decimal(value)


def units_of(value: Exact) -> int:
    """Return a number above 0 without its point: 14 for 1.4."""
    size = Fraction(value)
    while size.denominator > 1:
        size *= 10
    return int(size)


def _known(problem: Operation) -> tuple[PercentShape, ...]:
    left, right = problem.left, problem.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return ()
    if is_percent(left) and is_percent(right):
        return _both(left, problem.sign, right)
    if problem.sign not in (Sign.OF, Sign.TIMES):
        return ()
    if is_percent(left):
        return _of(left, right, problem.sign, True)
    return _of(right, left, problem.sign, False) if is_percent(right) else ()


def _both(left: Number, sign: Sign, right: Number) -> tuple[PercentShape, ...]:
    if not isinstance(left, Written) or not isinstance(right, Written):
        return ()
    if sign not in (Sign.PLUS, Sign.MINUS) or min(left.value, right.value) <= 0:
        return ()
    less = sign is Sign.MINUS and left.value <= right.value
    return () if less else (PercentSum(left, sign, right),)


def _of(part: Number, number: Number, sign: Sign, first: bool) -> tuple[PercentShape, ...]:
    rate, whole = exact(Fraction(exact(part)) * 100), exact(number)
    if is_fraction(number) or rate <= 0 or whole <= 0 or not (_short(rate) and _short(whole)):
        return ()
    return (PercentOf(rate, whole, sign, first),)


def _short(value: Exact) -> bool:
    places = places_of(value)
    return places is not None and places <= MOST_PLACES


def _asked(equation: Equation) -> tuple[PercentShape, ...]:
    """Return the whole that is asked for, or the known product where the blank stands alone."""
    side, total = equation.left, equation.right
    if not isinstance(side, Operation):
        side, total = total, side
    if not isinstance(side, Operation) or isinstance(total, Operation):
        return ()
    if total is BLANK:
        return _known(side)
    left, right = side.left, side.right
    part, other = (left, right) if is_percent(left) else (right, left)
    grouped = side.sign in (Sign.OF, Sign.TIMES)
    if isinstance(total, Blank) or isinstance(part, Operation | Blank):
        return ()
    if not grouped or not is_percent(part) or other is not BLANK or is_percent(total):
        return ()
    rate, found = exact(Fraction(exact(part)) * 100), exact(total)
    return (PercentWhole(rate, found),) if rate > 0 and found > 0 else ()
