"""Fractions: parts of a whole, of a number, and which is more."""

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from itertools import product
from math import gcd

from waysaid.number import Compare, Number, Problem, exact, mixed, parts
from waysaid.strings.year.numbers.made import minus, part_of, plus

_BOTTOMS = (3, 4, 5, 6, 8, 10)
_HALF = Fraction(1, 2)


def _same_parts() -> Iterator[Problem]:
    """Yield a fraction beside the same in smaller parts, or one such part more or less."""
    for bottom, many in product((2, 3, 4, 5, 6), (2, 3, 4)):
        for top, more in product(range(1, bottom), (-1, 0, 1)):
            if bottom * many <= 12 and gcd(top, bottom) == 1:
                yield Compare(parts(top, bottom), parts(top * many + more, bottom * many))


def _on_either_side_of_a_half() -> Iterator[Problem]:
    """Yield fractions on either side of a half, and a half beside those that strings begin with."""
    every = dict.fromkeys(Fraction(top, each) for each in _BOTTOMS for top in range(1, each))
    for one, other in product((each for each in every if 2 * each != 1), repeat=2):
        if (2 * one < 1) != (2 * other < 1):
            yield Compare(one, other)
    yield from (problem for begun in BEGUN["more-or-less-than-half"] for problem in begun)


def _filled() -> Iterator[Problem]:
    """Yield parts of one kind that fill a whole, or more."""
    for bottom in _BOTTOMS:
        for one, other in product(range(1, bottom), repeat=2):
            if bottom <= one + other:
                yield plus(parts(one, bottom), parts(other, bottom))


def _to_the_whole() -> Iterator[Problem]:
    for bottom in _BOTTOMS:
        for less in range(1, bottom):
            yield minus(1, parts(less, bottom))
            for more in range(1, less):
                yield minus(mixed(1, more, bottom), parts(less, bottom))


def _several_parts(bottoms: tuple[int, ...], most: int) -> Iterator[Problem]:
    """Yield one part of a number, and several."""
    for bottom, many in product(bottoms, range(2, 13)):
        if bottom * many <= most:
            for part in (Fraction(top, bottom) for top in range(1, bottom)):
                if part.denominator == bottom:
                    yield part_of(part, bottom * many)


def _past_one() -> Iterator[Problem]:
    """Yield fractions that together make one or more, of parts that can be cut alike."""
    lowest = [Fraction(top, each) for each in (2, 3, 4, 6, 8, 12) for top in range(1, each)]
    for one, other in product(dict.fromkeys(lowest), repeat=2):
        small, large = sorted((one.denominator, other.denominator))
        if one + other >= 1 and large % small == 0 and one >= Fraction(1, 2):
            yield plus(one, other)


def _mixed_numbers() -> Iterator[Problem]:
    """Yield a whole and a mixed number, and the same with a part or two moved across."""
    for whole, more, bottom in product((2, 3, 4), (1, 2), (3, 4, 5, 8)):
        for top, moved in product(range(1, bottom), (0, 1, 2)):
            one = exact(whole - Fraction(moved, bottom))
            other = more + Fraction(top + moved, bottom)
            if one.denominator in (1, bottom) and other.denominator == bottom:
                yield plus(one, other)


def _nearly_a_whole_taken() -> Iterator[Problem]:
    """Yield wholes taken away, and a part or two less than that."""
    for whole, taken, bottom in product(range(2, 7), (1, 2, 3), (3, 4, 5, 6, 8)):
        if taken < whole:
            yield minus(whole, taken)
            yield minus(whole, taken - Fraction(1, bottom))
            yield minus(whole + Fraction(1, bottom), taken - Fraction(1, bottom))


def _past_the_whole() -> Iterator[Problem]:
    """Yield a number from a whole to the next, and one just below the whole, taken from it."""
    for whole, bottom in product(range(2, 6), (2, 3, 4, 5, 6, 8)):
        for less, more in product((1, 2), range(bottom)):
            below, above = (
                exact(whole - Fraction(less, bottom)),
                exact(whole + Fraction(more, bottom)),
            )
            if below.denominator == bottom and above.denominator in (1, bottom):
                yield minus(above, below)


def _nearer_to_one() -> Iterator[Problem]:
    """Yield fractions that lack one part of a whole."""
    lacking: list[Number] = [Fraction(each - 1, each) for each in range(3, 14)]
    yield from (Compare(one, 1) for one in lacking)
    yield from (Compare(one, other) for one, other in product(lacking, repeat=2) if one != other)


_FIRST = ((1, 4), (3, 5), (1, 3), (5, 8), (4, 10), (7, 12), (1, 8), (4, 5))
_LATER = ((2, 6), (7, 10), (1, 6), (6, 8), (4, 12), (8, 10), (3, 12), (9, 10))
"""The fractions that a half stands beside first, in turn below it and above it."""

BEGUN: Mapping[str, tuple[tuple[Problem, Problem], ...]] = {
    "more-or-less-than-half": tuple(
        (Compare(_HALF, parts(top, each)), Compare(_HALF, parts(each - top, each)))
        for top, each in _FIRST + _LATER
    )
}
"""What the strings of an idea may begin with: a half beside a fraction, then beside its rest.

So the half is once the larger and once the smaller, which no help between two problems sees to; on
which side the larger stands behind them is up to which of them comes first.
"""

PARTS: Mapping[str, Callable[[], Iterator[Problem]]] = {
    "same-parts-to-compare": _same_parts,
    "more-or-less-than-half": _on_either_side_of_a_half,
    "fill-the-whole": _filled,
    "how-much-to-the-whole": _to_the_whole,
    "one-part-then-several": lambda: _several_parts((3, 4, 5, 6, 8), 60),
    "past-one-with-fractions": _past_one,
    "mixed-numbers-move-across": _mixed_numbers,
    "a-part-less-to-take": _nearly_a_whole_taken,
    "how-far-past-the-whole": _past_the_whole,
    "parts-of-a-number": lambda: _several_parts((3, 4, 5, 6, 7, 8, 9), 90),
    "which-is-nearer-to-one": _nearer_to_one,
}
