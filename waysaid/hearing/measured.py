"""Amounts said in a measure and its hundredths: a dollar twenty, fifty cents, two pounds ten."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.wholes import Scan, Whole, wholes_at

_HUNDRED = 100

Measured = tuple[int | Fraction, int, int, bool]
"""What it is worth, where it ends, its noise, and whether the measure was said."""


def measured(scan: Scan, wholes: tuple[Whole, ...]) -> Iterator[Measured]:
    """Yield the amounts that begin at the first word; with no measure said: two seventy five."""
    heads = [one for one in wholes if not one.many]
    for head in heads:
        yield from _hundredths(scan, head)
        yield from _whole_and_rest(scan, head)
        for rest in wholes_at(scan, head.end):
            worded = not head.digits and not rest.digits
            if worded and 0 < head.value < _HUNDRED and _two_digits(rest):
                yield _joined(head, rest, rest.end, max(1, head.noise, rest.noise), False)
    for article in scan.lexicon.numbers.articles:
        if scan.has(article, 0):
            yield from _whole_and_rest(scan, Whole(1, len(article)))
            yield from _coins(scan, Whole(1, len(article)))
            yield from _hundredths(scan, Whole(1, len(article)))
    for head in heads:
        yield from _coins(scan, head)


def _whole_and_rest(scan: Scan, head: Whole) -> Iterator[Measured]:
    words = scan.lexicon.numbers
    for measure in words.measures:
        if not scan.has(measure, head.end):
            continue
        end = head.end + len(measure)
        yield head.value, end, head.noise, False
        for join in words.measure_joins:
            if join and not scan.has(join, end):
                continue
            for rest in wholes_at(scan, end + len(join)):
                if _two_digits(rest):
                    yield _joined(head, rest, rest.end, max(1, head.noise, rest.noise), True)
                for small in words.small_measures:
                    if scan.has(small, rest.end) and rest.value < _HUNDRED and not rest.many:
                        last = rest.end + len(small)
                        yield _joined(head, rest, last, max(1, head.noise, rest.noise), True)


def _hundredths(scan: Scan, head: Whole) -> Iterator[Measured]:
    for small in scan.lexicon.numbers.small_measures:
        if scan.has(small, head.end) and head.value:
            value = Fraction(head.value, _HUNDRED)
            yield value, head.end + len(small), max(1, head.noise), True


def _coins(scan: Scan, head: Whole) -> Iterator[Measured]:
    for coin, found in scan.lexicon.numbers.coins.items():
        if scan.has(coin, head.end):
            for one in found:
                value = Fraction(head.value * one.value, _HUNDRED)
                yield value, head.end + len(coin), max(1, head.noise, one.noise), True


def _two_digits(rest: Whole) -> bool:
    return 10 <= rest.value < _HUNDRED and not rest.many


def _joined(head: Whole, rest: Whole, end: int, noise: int, places: bool) -> Measured:
    return head.value + Fraction(rest.value, _HUNDRED), end, noise, places
