"""Percents built from blocks that are well known: 100, 50, 25, 10, 5 and 1 per cent."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from waysaid.number import Exact, exact

Part = tuple[Exact, int]
"""A block, and how many of it: more than none; fewer than none are taken away."""

HALF_OF_FIVE = Fraction(5, 2)
HALF_OF_ONE = Fraction(1, 2)
LESS = (1, 2, 3, 4, 5, 10, 11, 15, 20, 25)
"""By how much less than a hundred a percent is worked from the whole; our choice."""
HALF_LESS = (1, 2, 5, 10)
"""By how much less than a half; our choice."""
QUARTER_MORE = (1, 2, 3, 5, 10, 15)
"""By how much more than a quarter; our choice."""


@dataclass(frozen=True, slots=True)
class Built:
    """A percent as blocks, with the slug of how it was cut."""

    slug: str
    parts: tuple[Part, ...]


@lru_cache(maxsize=1 << 10)
def builds(rate: Exact) -> tuple[Built, ...]:
    """Return the ways to build a percent from blocks, each once; the plainest first."""
    found: dict[tuple[Part, ...], Built] = {}
    for slug, parts in _builds(rate):
        if sum(Fraction(block) * many for block, many in parts) == rate:
            found.setdefault(parts, Built(slug, parts))
    return tuple(found.values())


def _builds(rate: Exact) -> Iterator[tuple[str, tuple[Part, ...]]]:
    if rate in (100, 50, 25, 10, 5, 1, HALF_OF_FIVE, HALF_OF_ONE):
        yield "one-block", ((rate, 1),)
    if rate > 100:
        yield from _over_hundred(exact(rate - 100))
        return
    if not isinstance(rate, int):
        yield from _with_half(rate)
        return
    if rate != 50:
        yield from _tens(rate)
    if 50 < rate < 75:
        for slug, parts in _tens(rate - 50):
            yield f"half-and-{slug}", ((50, 1), *parts)
    elif rate >= 75:
        yield "half-and-quarter", ((50, 1), (25, 1), *_first(rate - 75))
    if rate - 25 in QUARTER_MORE:
        yield "quarter-and-more", ((25, 1), *_first(rate - 25))
    yield from _less(rate)


def _less(rate: int) -> Iterator[tuple[str, tuple[Part, ...]]]:
    """Yield the whole, a half or a quarter less what is too much: 90% is all less 10%."""
    for block, slug, near in ((100, "all", LESS), (50, "half", HALF_LESS), (25, "quarter", (1, 5))):
        if block - rate in near:
            off = tuple([(one, -many) for one, many in _first(block - rate)])
            yield f"{slug}-less", ((block, 1), *off)


def _over_hundred(rest: Exact) -> Iterator[tuple[str, tuple[Part, ...]]]:
    if rest <= 0:
        return
    if rest > 100:
        wholes = int(rest // 100) + 1
        left = exact(rest - 100 * (wholes - 1))
        yield "wholes-and-more", ((100, wholes), *(_first(left) if left else ()))
        return
    if rest == 100:
        yield "twice-all", ((100, 2),)
        yield "all-and-all", ((100, 1), (100, 1))
        return
    for built in builds(rest):
        yield f"all-and-{built.slug}", ((100, 1), *built.parts)


def _with_half(rate: Exact) -> Iterator[tuple[str, tuple[Part, ...]]]:
    """Yield so many and a half per cent: 12.5% is 10% and 2.5%."""
    if rate % 5 == HALF_OF_FIVE:
        rest = exact(rate - HALF_OF_FIVE)
        yield "and-half-of-five", (*(_first(rest) if rest else ()), (HALF_OF_FIVE, 1))
    if rate % 1 == HALF_OF_ONE:
        rest = exact(rate - HALF_OF_ONE)
        yield "and-half-of-one", (*(_first(rest) if rest else ()), (HALF_OF_ONE, 1))


def _first(rate: Exact) -> tuple[Part, ...]:
    """Return the plainest build of a percent; the rate itself where there is none."""
    return next((parts for _, parts in _builds(rate)), ((rate, 1),))


def _tens(rate: int) -> Iterator[tuple[str, tuple[Part, ...]]]:
    """Yield so many tens and the rest by five and ones, or one ten more and some off."""
    tens, ones = divmod(rate, 10)
    some: tuple[Part, ...] = ((10, tens),) if tens else ()
    if ones == 0:
        yield "tens", some
        return
    if ones == 5:
        yield "tens-and-five", (*some, (5, 1))
        return
    if ones > 5:
        yield "tens-five-and-ones", (*some, (5, 1), (1, ones - 5))
    yield "tens-and-ones", (*some, (1, ones))
    if ones in (3, 4):
        yield "tens-and-five-less", (*some, (5, 1), (1, ones - 5))
    if ones > 6 and tens < 9:
        yield "tens-less-ones", ((10, tens + 1), (1, ones - 10))
