"""Per cents of a number."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from fractions import Fraction
from itertools import product

from waysaid.number import Exact, Problem, percent
from waysaid.strings.year.numbers.made import part_of

_TENS = (*range(20, 130, 10), 140, 150, 160, 180, 200, 240)


def _shares(shares: Iterable[Exact], numbers: Iterable[int]) -> Iterator[Problem]:
    """Yield so many per cent of a number; what comes out goes to tenths at the most."""
    for share, number in product(shares, numbers):
        if Fraction(share) * number % 10 == 0:
            yield part_of(percent(Fraction(share) / 100), number)


def _swapped() -> Iterator[Problem]:
    """Yield so many per cent of an easy number, and the same turned around."""
    for easy, other in product((10, 20, 25, 50), range(6, 90, 2)):
        if easy * other % 100 == 0:
            yield part_of(percent(Fraction(easy, 100)), other)
            yield part_of(percent(Fraction(other, 100)), easy)


def _written_two_ways() -> Iterator[Problem]:
    """Yield parts of a number as fractions and as per cents."""
    shares = [Fraction(top, each) for each in (2, 4, 5, 10) for top in range(1, each)]
    for share, number in product(dict.fromkeys(shares), range(12, 101, 2)):
        if number % share.denominator == 0:
            yield part_of(share, number)
            yield part_of(percent(share), number)


PERCENTS: Mapping[str, Callable[[], Iterator[Problem]]] = {
    "tens-of-per-cent": lambda: _shares((*range(5, 50, 5), 60, 70, 80, 90), _TENS),
    "halves-and-quarters-of-it": lambda: _shares(
        (50, 25, 75, Fraction(25, 2), Fraction(75, 2)), range(8, 201, 4)
    ),
    "one-per-cent-too-much": lambda: _shares(
        (100, 101, 99, 50, 51, 49, 20, 21, 19, 10, 11, 9), range(30, 260, 20)
    ),
    "swap-the-two-numbers": _swapped,
    "fractions-and-per-cents": _written_two_ways,
    "all-of-it-and-some-more": lambda: _shares((100, 10, 20, 25, 50, 110, 120, 125, 150), _TENS),
}
