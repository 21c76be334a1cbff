"""Wholes and parts: numbers as they are written with fractions, and the steps made of them."""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from waysaid.number import (
    Equation,
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    exact,
    has_form,
    mixed,
    parts,
)
from waysaid.number import value_of as worth
from waysaid.ways.step import Kind, Step

ONE_GO = 4
"""How many times as many parts a child makes in one go: 1/2 + 3/8, but not 1/2 + 1/12; our choice.
"""


@dataclass(frozen=True, slots=True)
class Amount:
    """A number above 0 as wholes and parts: 2 and 3/4; `6/4` has no wholes and six parts."""

    number: Number
    value: Exact
    whole: int
    top: int
    bottom: int

    @property
    def part(self) -> Number:
        """The parts alone, as they are written; 0 where there are none."""
        return parts(self.top, self.bottom) if self.top else 0

    @property
    def tops(self) -> int:
        """How many parts there are with the wholes cut up too: 11 for 2 3/4."""
        return self.whole * self.bottom + self.top

    @property
    def gap(self) -> Exact:
        """What is missing to the next whole; 0 on a whole."""
        return exact(Fraction(-self.tops % self.bottom, self.bottom))

    @property
    def over(self) -> Exact:
        """What is over the last whole."""
        return exact(Fraction(self.tops % self.bottom, self.bottom))


@lru_cache(maxsize=1 << 12)
def amount(number: Number) -> Amount:
    """Return a number above 0 as wholes and parts; a decimal or a percent in lowest terms."""
    value = exact(number)
    if has_form(number, Form.PARTS):
        return Amount(number, value, number.whole, number.top, number.size)
    whole, top = divmod(Fraction(value).numerator, Fraction(value).denominator)
    return Amount(number, value, whole, top, Fraction(value).denominator)


def is_fraction(number: object) -> bool:
    """Tell whether a number is written as a fraction or a mixed number."""
    if isinstance(number, Written):
        return number.form is Form.PARTS
    return isinstance(number, Fraction)


@lru_cache(maxsize=1 << 15)
def did(kind: Kind, left: Number, sign: Sign, right: Number, result: Number | None = None) -> Step:
    """Return the true step of two numbers; the result is in lowest terms unless it is given."""
    whole = Operation(sign, left, right)
    return Step(kind, Equation(whole, _known(left, sign, right) if result is None else result))


def _known(left: Number, sign: Sign, right: Number) -> Exact:
    return worth(Operation(sign, left, right))


@lru_cache(maxsize=1 << 14)
def said_as(old: Expression, new: Expression) -> Step:
    """Return the step that writes a number another way: 3/4 = 6/8."""
    return Step(Kind.SPLIT, Equation(old, new))


def in_wholes(tops: int, bottom: int) -> Number:
    """Return so many parts as wholes and parts, not in lowest terms: 6 quarters are 1 2/4."""
    whole, top = divmod(tops, bottom)
    if not top:
        return whole
    return mixed(whole, top, bottom) if whole else parts(top, bottom)


def bottom_of(value: Exact) -> int:
    """Return the bottom number in lowest terms; 1 for a whole number."""
    return 1 if isinstance(value, int) else value.denominator


def go_together(one: int, other: int) -> bool:
    """Tell whether parts of two sizes are added in one go: one cuts the other in a few."""
    small, large = (one, other) if one < other else (other, one)
    return large % small == 0 and (small == 1 or large // small <= ONE_GO)


def one_go(left: Exact, right: Exact) -> bool:
    """Tell whether a child would add or take two numbers in one go."""
    return go_together(bottom_of(left), bottom_of(right))
