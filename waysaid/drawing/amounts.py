"""The numbers of a problem as amounts to be shaded: fractions, decimals and per cents.

Drawn is what the problem says, in the form it says it, and how the child fills one number up from
the other; never a result, so that a wrong answer has the same drawing.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from waysaid.drawing.story import hops_of, terms_in
from waysaid.drawing.telling import Telling
from waysaid.number import (
    About,
    Blank,
    Compare,
    Exact,
    Form,
    Number,
    Operation,
    Print,
    Sign,
    Written,
    exact,
    has_form,
    number_text,
    sides,
    sign_text,
)

MOST_BOTTOM = 12
"""A whole is cut into no more parts than this, the largest bottom number of a class's fractions."""
MOST_WHOLES = 4
"""No more wholes than this for one number (our choice)."""


@dataclass(frozen=True, slots=True)
class Amount:
    """One number: its sign and label, `top` parts of `bottom` shaded, `added` more outlined."""

    sign: str
    label: str
    top: int
    bottom: int
    added: int = 0

    @property
    def wholes(self) -> int:
        """How many wholes it takes, at least one."""
        return max(1, -(-(self.top + self.added) // self.bottom))


@dataclass(frozen=True, slots=True)
class Amounts:
    """The amounts in order; `apart` where they are to be compared."""

    amounts: tuple[Amount, ...]
    apart: bool = False


_Terms = tuple[tuple[Sign | None, Number], ...]


def fractions_of(telling: Telling) -> Amounts | None:
    """Return the fractions of a sum, a difference or a comparison; None for other problems."""
    terms = _terms(telling)
    if terms is None or not any(_is_fraction(number) for _, number in terms):
        return None
    bottoms = [_bottom(number) for _, number in terms]
    common = max((bottom for bottom in bottoms if bottom > 1), default=1)
    made = [
        _amount(place, sign, number, max(bottom, 1) if bottom > 1 else common)
        for place, ((sign, number), bottom) in enumerate(zip(terms, bottoms, strict=True))
    ]
    whole = [one for one in made if one is not None]
    fits = all(one.bottom <= MOST_BOTTOM and one.wholes <= MOST_WHOLES for one in whole)
    if len(whole) < len(made) or not fits:
        return None
    filled = _filled_up(telling, terms, whole)
    return Amounts(tuple(filled), isinstance(telling.problem, Compare))


def hundredths_of(telling: Telling) -> Amounts | None:
    """Return the decimals and per cents of a problem in hundredths; None where it has none.

    Whole numbers are shaded beside decimals that they are added to or taken from, and not where
    they are what a part is taken of.
    """
    terms = _terms(telling)
    if terms is None:
        terms = _parts(telling)
    if terms is None or not any(isinstance(number, Written) for _, number in terms):
        return None
    made: list[Amount] = []
    for place, (sign, number) in enumerate(terms):
        cells = exact(Fraction(exact(number)) * 100)
        if not isinstance(cells, int) or not 0 <= cells <= 300 or _is_fraction(number):
            return None
        made.append(Amount(_sign(place, sign), number_text(number, Print.TRUE), cells, 100))
    wholes = sum(one.wholes for one in made)
    if len(made) > 3 or wholes > MOST_WHOLES:
        return None
    return Amounts(tuple(made), isinstance(telling.problem, Compare))


def _terms(telling: Telling) -> _Terms | None:
    """Return the signed numbers of a sum or a difference, or both sides of a comparison."""
    told = sides(telling.problem)
    if isinstance(telling.problem, About) or not told:
        return None
    if isinstance(telling.problem, Compare):
        return _known([(None, side) for side in told])
    terms = terms_in(told[0]) if len(told) == 1 else None
    if terms is None or not 1 < len(terms) <= 3:
        return None
    return _known(terms)


def _known(terms: Sequence[tuple[Sign | None, Number | Blank | Operation]]) -> _Terms | None:
    known = tuple((sign, leaf) for sign, leaf in terms if not isinstance(leaf, Blank | Operation))
    return known if len(known) == len(terms) else None


def _parts(telling: Telling) -> _Terms | None:
    """Return the decimal or per cent of a product."""
    told = sides(telling.problem)
    if len(told) != 1 or not isinstance(told[0], Operation):
        return None
    if told[0].sign not in (Sign.TIMES, Sign.OF):
        return None
    found = [one for one in (told[0].left, told[0].right) if isinstance(one, Written)]
    return tuple((Sign.PLUS, one) for one in found) if len(found) == 1 else None


def _is_fraction(number: Number) -> bool:
    plain = isinstance(number, Fraction)
    return plain or (has_form(number, Form.PARTS))


def _bottom(number: Number) -> int:
    """Return the bottom number as it was written; 1 for a whole number, 0 where there is none."""
    if isinstance(number, Written):
        return number.size if number.form is Form.PARTS else 0
    return number.denominator


def _amount(place: int, sign: Sign | None, number: Number, bottom: int) -> Amount | None:
    top: Exact = exact(number) * bottom
    if exact(Fraction(top)) != int(top) or top < 0 or not bottom or not _bottom(number):
        return None
    return Amount(_sign(place, sign), number_text(number, Print.TRUE), int(top), bottom)


def _sign(place: int, sign: Sign | None) -> str:
    return sign_text(sign, Print.TRUE) if place and sign is not None else ""


def _filled_up(telling: Telling, terms: _Terms, made: list[Amount]) -> list[Amount]:
    """Return the amounts, the first filled up from the second where the child hopped so."""
    if len(made) != 2 or terms[1][0] is not Sign.PLUS or isinstance(telling.problem, Compare):
        return made
    first, second = (exact(number) for _, number in terms)
    for place, step in enumerate(telling.steps):
        for hop in hops_of(step, telling.unsaid(place)):
            more = exact(Fraction(hop.amount.value) * made[0].bottom)
            rest = exact(Fraction(second - hop.amount.value) * made[1].bottom)
            starts = hop.sign is Sign.PLUS and hop.start.value == first
            parts = isinstance(more, int) and isinstance(rest, int)
            if starts and parts and 0 < hop.amount.value < second:
                return _moved(made, int(more), int(rest))
    return made


def _moved(made: list[Amount], more: int, rest: int) -> list[Amount]:
    one, other = made
    filled = Amount(one.sign, one.label, one.top, one.bottom, more)
    left = Amount(other.sign, other.label, rest, other.bottom)
    return [filled, left] if filled.wholes <= MOST_WHOLES else made
