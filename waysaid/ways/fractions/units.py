"""Parts of one size: numbers cut into them, put together, and said again as wholes and parts."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Number, Sign, exact, parts
from waysaid.ways.fractions.amount import Amount, amount, did, in_wholes, one_go, said_as
from waysaid.ways.step import Kind, Step

Steps = tuple[Step, ...]


def endings(tops: int, bottom: int) -> Iterator[tuple[str, Steps]]:
    """Yield how so many parts are said in the end, each with a slug.

    As wholes and parts (6/4 = 1 2/4, 13/8 = 1 5/8), in lowest terms at once, or one after another;
    parts of one whole that are not in lowest terms may also be left as they are.
    """
    plain, value = parts(tops, bottom), exact(Fraction(tops, bottom))
    if plain == value:
        yield "", ()
        return
    if tops < bottom:
        yield "-left", ()
        yield "", (said_as(plain, value),)
        return
    mixed = in_wholes(tops, bottom)
    yield "", (said_as(plain, mixed),)
    if mixed != value:
        yield "-lowest-last", (said_as(plain, mixed), said_as(mixed, value))
        yield "-lowest", (said_as(plain, value),)
        least = Fraction(tops, bottom)
        small = parts(least.numerator, least.denominator)
        yield "-lowest-first", (said_as(plain, small), said_as(small, value))


def to_lowest(tops: int, bottom: int) -> Steps:
    """Return the step that says so many parts in lowest terms; none where they are."""
    plain, value = parts(tops, bottom), exact(Fraction(tops, bottom))
    return () if plain == value else (said_as(plain, value),)


def cut_into(number: Amount, unit: int) -> Steps:
    """Return the step that cuts a number into parts of a size: 3/4 = 6/8; none where it is."""
    new = parts(number.tops, number.bottom)
    if unit != number.bottom:
        new = parts(number.tops * (unit // number.bottom), unit)
    return () if new == number.number else (said_as(number.number, new),)


def tops_in(number: Amount, unit: int) -> int:
    """Return how many parts of a size a number is."""
    return number.tops * (unit // number.bottom)


def together(kind: Kind, one: Number, sign: Sign, other: Number, unit: int) -> Steps:
    """Return the steps to a sum or difference in lowest terms, in one go or in parts of a size."""
    if not exact(other):
        return ()
    if one_go(exact(one), exact(other)):
        return (did(kind, one, sign, other),)
    left, right = amount(one), amount(other)
    tops, more = tops_in(left, unit), tops_in(right, unit)
    total = tops + more if sign is Sign.PLUS else tops - more
    step = did(kind, parts(tops, unit), sign, parts(more, unit), parts(total, unit))
    ending = to_lowest(total, unit) if total > 0 else ()
    cuts = dict.fromkeys((*cut_into(left, unit), *cut_into(right, unit)))
    return (*cuts, step, *ending)
