"""Exact numbers, and the form a number was written in where its value alone would not tell.

A plain `int` prints as it is and a plain `Fraction` as `3/4` or `1 1/4`, in lowest terms. What a
child writes in another form keeps it: `0.50`, `6/4`, `1 2/4`, `15%`.
"""

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction
from typing import TypeGuard

Exact = int | Fraction

MOST_PLACES = 9
"""The most places after a point that are written: as many as a number may have digits."""


class Form(StrEnum):
    """How a number is written, other than as a whole number or a fraction in lowest terms."""

    DECIMAL = "decimal"
    PARTS = "parts"
    PERCENT = "percent"


@dataclass(frozen=True, slots=True)
class Written:
    """A number in the form it was written in.

    `size` is the number of places after the point for `DECIMAL` and `PERCENT`, and the bottom
    number for `PARTS`; `whole` is the whole number in front of `PARTS`: 1 for `1 2/4`, 0 for `6/4`.
    """

    value: Exact
    form: Form
    size: int
    whole: int = 0

    def __hash__(self) -> int:
        """Return a hash that equal numbers share; soon, for steps are told apart by it."""
        return hash((self.value.numerator, self.value.denominator, self.size, self.whole))

    @property
    def top(self) -> int:
        """The top number of `PARTS`."""
        return int((self.value - self.whole) * self.size)


Number = int | Fraction | Written
"""A number as a leaf of an expression."""


def has_form(leaf: object, form: Form) -> TypeGuard[Written]:
    """Tell whether a leaf is a number that is written in that form."""
    return isinstance(leaf, Written) and leaf.form is form


def exact(value: Number) -> Exact:
    """Return the value as an `int` where it is whole, else as a `Fraction`."""
    if type(value) is int:
        return value
    if isinstance(value, Written):
        value = value.value
    return value.numerator if value.denominator == 1 else value


def places_of(value: Exact) -> int | None:
    """Return how many places after the point write a number exactly; None where none would."""
    bottom, places = Fraction(value).denominator, 0
    while 10**places % bottom:
        places += 1
        if places > MOST_PLACES:
            return None
    return places


def decimal(value: Exact, places: int | None = None) -> Number:
    """Return a number with a point, with no more places than needed unless `places` says more.

    A whole number with no places asked for stays whole; a number that no places write exactly
    stays a fraction.
    """
    needed = places_of(value)
    if needed is None:
        return exact(value)
    size = max(needed, places or 0)
    return Written(exact(value), Form.DECIMAL, size) if size else exact(value)


def parts(top: int, bottom: int) -> Number:
    """Return so many parts as they are written: `6/4`, `2/4`, `4/4`; `bottom` is from 1 up."""
    value = Fraction(top, bottom)
    plain = 0 < abs(value) < 1 and value.denominator == bottom
    return value if plain else Written(exact(value), Form.PARTS, bottom)


def mixed(whole: int, top: int, bottom: int) -> Number:
    """Return wholes and parts as they are written: `1 2/4`; all three are from 1 up."""
    value = whole + Fraction(top, bottom)
    plain = top < bottom and value.denominator == bottom
    return value if plain else Written(exact(value), Form.PARTS, bottom, whole)


def percent(value: Exact) -> Number:
    """Return a number written as so many hundredths: `percent(Fraction(3, 20))` is `15%`.

    A number that no places write exactly stays a fraction.
    """
    places = places_of(Fraction(value) * 100)
    return exact(value) if places is None else Written(exact(value), Form.PERCENT, places)


def negative(number: Number) -> Number:
    """Return the number below zero (or above, for one below) in the same form."""
    if isinstance(number, Written):
        return Written(-number.value, number.form, number.size, -number.whole)
    return -number
