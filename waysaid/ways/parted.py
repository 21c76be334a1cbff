"""A number as wholes and parts, however it is written, and the tenths for writing it."""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from waysaid.number import Form, Number, Written, has_form
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.sum_costs import digits

_DIGIT = TENTHS[Charge.DIGIT]
_PART = TENTHS[Charge.PART]


@dataclass(frozen=True, slots=True)
class Parted:
    """Wholes, and so many parts of a size: 2 and 3/4; `size` is what its digits cost in tenths.

    A number below 0 is taken without its sign, and `value` with it.
    """

    value: Fraction
    whole: int
    top: int
    bottom: int
    size: int

    @property
    def tops(self) -> int:
        """How many parts there are with the wholes cut up too: 11 for 2 3/4."""
        return self.whole * self.bottom + self.top


@lru_cache(maxsize=1 << 14)
def parted(number: Number) -> Parted:
    """Return a number as it is written; a decimal or a percent in its tenths, hundredths, ..."""
    if isinstance(number, int):
        return Parted(Fraction(number), abs(number), 0, 1, _DIGIT * digits(abs(number)))
    value = Fraction(number.value if isinstance(number, Written) else number)
    bottom, whole = value.denominator, abs(value) // 1
    if isinstance(number, Written):
        if number.form is Form.PARTS:
            bottom, whole = number.size, abs(number.whole)
        else:
            bottom = 10**number.size * (100 if number.form is Form.PERCENT else 1)
    top = int((abs(value) - whole) * bottom)
    return Parted(value, whole, top, bottom, _size(number, whole, top, bottom))


def _size(number: Number, whole: int, top: int, bottom: int) -> int:
    """Return the tenths for the digits that are not 0, and for a top and bottom to keep apart."""
    if isinstance(number, Written) and number.form is not Form.PARTS:
        return _DIGIT * digits(whole * bottom + top)
    return _PART + _DIGIT * (digits(whole) + digits(top) + digits(bottom))


def is_percent(number: object) -> bool:
    """Tell whether a number is written as so many hundredths: 15%."""
    return has_form(number, Form.PERCENT)


def is_decimal(number: object) -> bool:
    """Tell whether a number is written with a point."""
    return has_form(number, Form.DECIMAL)


def hundredths(number: Number) -> int:
    """Return how many per cent a number is, without its point: 15 for 15%, 125 for 12.5%."""
    value = Fraction(number.value if isinstance(number, Written) else number) * 100
    while value.denominator > 1 and value < 10**9:
        value *= 10
    return int(value)
