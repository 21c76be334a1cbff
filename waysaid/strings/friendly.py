"""The friendly number beside another, and the link of a problem with its friendly twin."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from waysaid.number import Exact
from waysaid.strings.link import Link, LinkKind, Saying
from waysaid.strings.show import change
from waysaid.strings.sight import Sight, Term

_HALF = Fraction(1, 2)
_BESIDE_A_THOUSAND = 100
_BESIDE_A_HUNDRED = 10


def nearest_friendly(number: Exact) -> int | None:
    """Return the friendly number beside another; None where it has none. Our choice.

    For a whole number above 1000 the thousand that is less than a hundred away; else the hundred
    that is less than ten away, else the ten it lies nearest to: none for one that ends in 0, lies
    half-way between tens, or is below 5. For any other the whole number it lies nearest to, from
    1 up: none half-way between two.
    """
    if not isinstance(number, int):
        nearest = int(number + _HALF)
        return nearest if nearest > 0 and abs(number - nearest) < _HALF else None
    thousand = (number + 500) // 1000 * 1000
    if number > 1000 and 0 < abs(number - thousand) < _BESIDE_A_THOUSAND:
        return thousand
    if number < 5 or number % 10 == 0:
        return None
    hundred = (number + 50) // 100 * 100
    if hundred and abs(number - hundred) < _BESIDE_A_HUNDRED:
        return hundred
    return None if number % 10 == 5 else (number + 5) // 10 * 10


def twin_link(first: Sight, second: Sight, pairs: Sequence[tuple[Term, Term]]) -> Iterator[Link]:
    """Yield a link where one is the other with some numbers at their nearest friendly number."""
    if not pairs:
        return
    for twin, other, way in ((first, second, 1), (second, first, -1)):
        moves = [(new, old) if way == 1 else (old, new) for old, new in pairs]
        if all(friend.size == nearest_friendly(plain.size) for plain, friend in moves):
            yield Link(
                LinkKind.FRIENDLY_TWIN,
                (first.at, second.at),
                (
                    *(change(friend.shown, plain.shown) for plain, friend in moves),
                    twin.filled,
                    other.filled,
                ),
                Saying.TWIN,
                tuple(size for plain, friend in moves for size in (friend.shown, plain.shown)),
                tuple((twin.at, friend.place) for _, friend in moves),
            )
            return
