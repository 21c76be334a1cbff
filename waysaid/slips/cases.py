"""See a problem as two numbers with a sign between them, asked outright or by a blank."""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.number import (
    BLANK,
    Blank,
    Compare,
    Equation,
    Expression,
    Form,
    Number,
    Operation,
    Problem,
    Sign,
    Written,
    blanks,
    exact,
    has_form,
)
from waysaid.slips.slip import Pair

_UNDONE = {Sign.PLUS: Sign.MINUS, Sign.TIMES: Sign.OVER}
_PUT_BACK = {Sign.MINUS: Sign.PLUS, Sign.OVER: Sign.TIMES}


@dataclass(frozen=True, slots=True)
class Two:
    """Two numbers from 0 up, as they are written, and the sign between them."""

    left: Number
    sign: Sign
    right: Number


def two_of(problem: Problem) -> Two | None:
    """Return the two numbers and the sign that answer a problem; None for any other shape."""
    if isinstance(problem, Equation):
        found = asked(problem)
    elif isinstance(problem, Operation):
        found = _two(problem.left, problem.sign, problem.right)
    else:
        return None
    if found is None or exact(found.left) < 0 or exact(found.right) < 0:
        return None
    return None if found.sign is Sign.OVER and exact(found.right) == 0 else found


def _two(left: Expression, sign: Sign, right: Expression) -> Two | None:
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return None
    return Two(left, sign, right)


def asked(equation: Equation) -> Two | None:
    """Return what finds the blank: `7 + _ = 12` asks for 12 - 7, `_ x 6 = 54` for 54 / 6.

    None where the equation has another shape than two numbers, a blank and one sign.
    """
    side, other = equation.left, equation.right
    if not isinstance(side, Operation):
        side, other = other, side
    if not isinstance(side, Operation) or not blanks(side):
        return None
    known = side.right if side.left is BLANK else side.left
    if side.sign in _UNDONE:
        return _two(other, _UNDONE[side.sign], known)
    if side.sign not in _PUT_BACK:
        return None
    if side.left is BLANK:
        return _two(other, _PUT_BACK[side.sign], known)
    return _two(known, side.sign, other)


def pair_of(problem: Problem) -> Pair | None:
    """Return two whole numbers from 0 up and their sign."""
    two = two_of(problem)
    if two is None or type(two.left) is not int or type(two.right) is not int:
        return None
    return None if two.sign is Sign.OF else Pair(two.left, two.sign, two.right)


def sum_of(problem: Problem) -> Pair | None:
    """Return a sum or a difference of two whole numbers."""
    pair = pair_of(problem)
    return pair if pair is not None and pair.sign in (Sign.PLUS, Sign.MINUS) else None


def product_of(problem: Problem) -> Pair | None:
    """Return a product of two whole numbers."""
    pair = pair_of(problem)
    return pair if pair is not None and pair.sign is Sign.TIMES else None


def quotient_of(problem: Problem) -> Pair | None:
    """Return a division of two whole numbers, the second from 1 up."""
    pair = pair_of(problem)
    return pair if pair is not None and pair.sign is Sign.OVER else None


def is_pointed(number: Expression) -> bool:
    """Tell whether a number is written with a point."""
    return has_form(number, Form.DECIMAL)


def places(number: Number) -> int:
    """Return how many places after the point a whole number or a decimal is written with."""
    return number.size if isinstance(number, Written) else 0


def unpointed(number: Number) -> int:
    """Return the digits of a whole number or a decimal, read without the point."""
    return int(exact(number) * 10 ** places(number))


def pointed_of(problem: Problem) -> Two | None:
    """Return two numbers of which one or both are written with a point."""
    two = two_of(problem)
    if two is None or not (is_pointed(two.left) or is_pointed(two.right)):
        return None
    both = all(type(each) is int or is_pointed(each) for each in (two.left, two.right))
    return two if both else None


@dataclass(frozen=True, slots=True)
class Part:
    """A number as wholes and parts: 1 2/4 is 1, 2 and 4; a whole number has a bottom of 1."""

    whole: int
    top: int
    bottom: int

    @property
    def value(self) -> Fraction:
        """The number."""
        return self.whole + Fraction(self.top, self.bottom)


def part_of(number: Number) -> Part | None:
    """Return a whole number or a fraction as wholes and parts; None for other forms."""
    if isinstance(number, Written):
        if number.form is not Form.PARTS:
            return None
        return Part(number.whole, number.top, number.size)
    whole, top = divmod(number.numerator, number.denominator)
    return Part(whole, top, number.denominator)


@dataclass(frozen=True, slots=True)
class Parts:
    """Two numbers of which one or both are fractions, and the sign between them."""

    two: Two
    left: Part
    right: Part

    @property
    def sign(self) -> Sign:
        """The sign between the two."""
        return self.two.sign


def parts_in(problem: Problem) -> Parts | None:
    """Return two numbers of which one or both are fractions."""
    two = two_of(problem)
    if two is None:
        return None
    left, right = part_of(two.left), part_of(two.right)
    if left is None or right is None or left.bottom == right.bottom == 1:
        return None
    return Parts(two, left, right)


@dataclass(frozen=True, slots=True)
class Rate:
    """So many hundredths of a number."""

    two: Two
    rate: Written
    number: Number

    @property
    def percent(self) -> Fraction:
        """How many hundredths."""
        return Fraction(self.rate.value) * 100


def rate_of(problem: Problem) -> Rate | None:
    """Return a percent of a number, said with `of` or with a multiplication sign."""
    two = two_of(problem)
    if two is None or two.sign not in (Sign.OF, Sign.TIMES):
        return None
    for rate, number in ((two.left, two.right), (two.right, two.left)):
        if has_form(rate, Form.PERCENT):
            return Rate(two, rate, number)
    return None


@dataclass(frozen=True, slots=True)
class Versus:
    """Two numbers to compare."""

    left: Number
    right: Number


def versus_of(problem: Problem) -> Versus | None:
    """Return two numbers to compare; None where a side is worked out first."""
    if not isinstance(problem, Compare):
        return None
    two = _two(problem.left, Sign.MINUS, problem.right)
    return Versus(two.left, two.right) if two is not None else None
