"""Decimals: beside whole numbers, through them, and as tenths."""

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from itertools import product

from waysaid.number import About, Compare, Exact, Number, Problem, decimal
from waysaid.strings.year.numbers.made import minus, over, plus, times


def _tenths(many: Exact) -> Number:
    return decimal(Fraction(many) / 10)


def _compared() -> Iterator[Problem]:
    """Yield tenths beside the same as hundredths, and beside a few hundredths more or less."""
    for tenths, more in product(range(1, 10), (-3, -2, 0, 2, 4, 5, 6)):
        hundredths = decimal(Fraction(10 * tenths + more, 100), 2)
        yield Compare(_tenths(tenths), hundredths)
        if more > 0:
            yield Compare(hundredths, _tenths(tenths + 1))


def _beside_a_whole() -> Iterator[Problem]:
    """Yield a whole number, and a little less, added or taken away."""
    for whole, less in product((2, 3, 4, 5, 7), (0, 10, 20, 1, 2)):
        beside = decimal(whole - Fraction(less, 100))
        for other in (16, 24, 27, 35, 46):
            yield plus(beside, _tenths(other))
        for other in (64, 80):
            yield minus(_tenths(other), beside)


def _through_a_whole() -> Iterator[Problem]:
    firsts = (*range(16, 20), *range(25, 30), *range(36, 40), 47, 48, 58)
    for tenths, more in product(firsts, range(2, 10)):
        if more >= -tenths % 10:
            yield plus(_tenths(tenths), _tenths(more))


def _given_and_taken() -> Iterator[Problem]:
    """Yield a whole number and another, and the same with a tenth or two, or less, moved across."""
    for whole, other, moved in product((3, 4, 6, 8), (140, 175, 230, 260, 340), (0, 10, 20, 5, 3)):
        yield plus(decimal(whole - Fraction(moved, 100)), decimal(Fraction(other + moved, 100)))


def _small_gaps() -> Iterator[Problem]:
    """Yield a number from a whole on, and one a few tenths below the whole."""
    for whole, more, less in product(range(3, 9), range(5), (1, 2, 3, 4)):
        yield minus(_tenths(10 * whole + more), _tenths(10 * whole - less))


def _tenths_as_things() -> Iterator[Problem]:
    for many, each in product(range(3, 13), range(2, 10)):
        yield times(many, each)
        yield times(many, _tenths(each))


def _no_point() -> Iterator[Problem]:
    """Yield quotients, and the same of tenths."""
    for many, each in product(range(2, 13), range(2, 10)):
        yield over(many * each, each)
        yield over(_tenths(many * each), _tenths(each))


def _a_tenth_too_much() -> Iterator[Problem]:
    """Yield so many groups, and a tenth or two of a group less."""
    for many, less, each in product((2, 3, 4, 5, 10), (0, 1, 2), (6, 8, 9, 12, 15, 20)):
        yield times(_tenths(10 * many - less), each)


def _and_a_half() -> Iterator[Problem]:
    """Yield so many wholes of a number, a half of it, and both."""
    for many, each in product((5, 10, 15, 20, 25, 30, 35, 40, 45), range(6, 33, 2)):
        yield times(_tenths(many), each)


def _doubled_and_halved() -> Iterator[Problem]:
    """Yield fives and tens of a number, and half as much of twice the number."""
    for many, each in product((15, 25, 35, 45, 30, 50, 70, 90), range(6, 41, 2)):
        yield times(_tenths(many), each)


def _about() -> Iterator[Problem]:
    """Yield products, and about how much those of numbers a tenth or two beside them are."""
    for many, each, one, other in product((3, 4, 5, 8, 20), (5, 6, 8, 9), (-2, -1, 1), (0, -1, 1)):
        yield times(many, each)
        yield About(times(_tenths(10 * many + one), _tenths(10 * each + other)))


POINTS: Mapping[str, Callable[[], Iterator[Problem]]] = {
    "tenths-and-hundredths": _compared,
    "nearly-a-whole-in-decimals": _beside_a_whole,
    "through-a-whole-in-decimals": _through_a_whole,
    "give-and-take-in-decimals": _given_and_taken,
    "small-gaps-with-tenths": _small_gaps,
    "tenths-as-things": _tenths_as_things,
    "no-point-in-the-divisor": _no_point,
    "a-tenth-of-a-group-too-much": _a_tenth_too_much,
    "wholes-and-a-half": _and_a_half,
    "until-the-point-is-gone": _doubled_and_halved,
    "about-with-decimals": _about,
}
