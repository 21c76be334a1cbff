"""Which factor of one product or quotient became which of another of the same form."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import permutations

from waysaid.number import Exact, exact, places_of
from waysaid.strings.changes import Pair, leftovers
from waysaid.strings.show import gap
from waysaid.strings.sight import Sight, Term

FOUND_AT_MOST = 3
"""Numbers that may change for a link to be seen between two products (our choice)."""


def ratio(pair: Pair) -> Exact | None:
    """Return how many times as big a number became; None where one of the two is 0."""
    old, new = pair
    return exact(Fraction(new.size) / old.size) if old.size and new.size else None


def whole_ratio(by: Exact | None) -> int | None:
    """Return a ratio as a whole number above 1: the same for three times and for a third."""
    if by is None:
        return None
    up = max(by, exact(1 / Fraction(by)))
    return up if isinstance(up, int) and up > 1 else None


def changed_factors(first: Sight, second: Sight) -> tuple[Pair, ...] | None:
    """Pair every factor that changed with what it became; None for unlike forms.

    Factors of one sign are paired so that as many as can be are whole times as big or as small;
    after that those in the same place, and those that change least.
    """
    if first.form != second.form or not first.factors:
        return None
    left, right = leftovers(first.factors, second.factors)
    if len(left) > FOUND_AT_MOST:
        return None
    return min(_pairings(left, right), key=_cost, default=None)


def _pairings(left: list[Term], right: list[Term]) -> Iterator[tuple[Pair, ...]]:
    for order in permutations(right):
        if all(old.sign is new.sign for old, new in zip(left, order, strict=True)):
            yield tuple(zip(left, order, strict=True))


def _cost(pairs: tuple[Pair, ...]) -> tuple[int, int, Exact]:
    unlike = sum(whole_ratio(ratio(pair)) is None for pair in pairs)
    moved = sum(old.place != new.place for old, new in pairs)
    return unlike, moved, exact(sum((gap(old.size, new.size) for old, new in pairs), Fraction(0)))


def tens_between(by: Exact | None) -> int | None:
    """Return the power of ten by which something grew or shrank, 0 for 1; None for any other."""
    if by is None or by <= 0:
        return None
    places = places_of(by)
    if places is None:
        return None
    up = exact(by * 10**places)
    digits = str(up)
    if digits.strip("0") != "1" or digits[0] != "1":
        return None
    return len(digits) - 1 - places
