"""The problems of each topic: which numbers are candidates for a string.

Our choice, by common practice, no source: all that a grade works with to a hundred; above it, and
in parts, numbers on and beside the friendly ones.
"""

from collections.abc import Callable, Iterator
from fractions import Fraction
from itertools import product

from waysaid.number import (
    BLANK,
    About,
    Claim,
    Compare,
    Equation,
    Exact,
    Image,
    ImageKind,
    Number,
    Operation,
    Problem,
    Sign,
    decimal,
    mixed,
    parts,
    percent,
)
from waysaid.strings.topic import Topic

PLUS, MINUS, TIMES, OVER, OF = Sign.PLUS, Sign.MINUS, Sign.TIMES, Sign.OVER, Sign.OF

_TO_HUNDRED = range(1, 100)
_BESIDE = (-3, -2, -1, 0, 1, 2)
_HUNDREDS = tuple(hundred + beside for hundred in range(200, 1000, 100) for beside in _BESIDE)
_ADDED = tuple(number for number in range(15, 100) if number % 10 in (0, 5, 7, 8, 9))
_GROUPS = range(2, 13)
_OF_GROUPS = (*range(2, 31), 32, 35, 36, 40, 45, 48, 49, 50, 51, 60, 64, 70, 75, 80, 90, 98, 99,
              100, 101, 120, 125, 150, 200, 250)  # fmt: skip
_BOTTOMS = (2, 3, 4, 5, 6, 8, 10, 12)
_THOUSANDTHS = (45, 75, 125, 225, 305, 350, 475, 625, 775, 875, 925)
_SEVENTHS_AND_NINTHS = tuple(
    Fraction(top, bottom) for bottom in (7, 9) for top in range(1, bottom) if top % 3 or bottom == 7
)


def problems_of(topic: Topic) -> Iterator[Problem]:
    """Yield every problem of a topic, whatever its grade; a problem may be yielded twice."""
    yield from _MADE[topic]()


def _of(sign: Sign, left: Number | Operation, right: Number) -> Problem:
    return Operation(sign, left, right)


def _sums() -> Iterator[Problem]:
    for a in _TO_HUNDRED:
        yield from (_of(PLUS, a, b) for b in range(1, min(a + 3, 100)))
        yield from (_of(PLUS, a, b) for b in range(a, 21 - a))
    yield from _with_hundreds(PLUS)


def _differences() -> Iterator[Problem]:
    yield from (_of(MINUS, a, b) for a in range(2, 101) for b in range(1, a))
    yield from _with_hundreds(MINUS)


def _with_hundreds(sign: Sign) -> Iterator[Problem]:
    """Yield the problems of a number of hundreds with each one that is no larger than it."""
    for number in _HUNDREDS:
        smaller = (other for other in _HUNDREDS if other < number)
        yield from (_of(sign, number, other) for other in (*_ADDED, *smaller))


def tables() -> Iterator[tuple[int, int]]:
    """Yield every two factors from 2 up whose product is at most a hundred."""
    yield from ((a, b) for a in range(2, 51) for b in range(2, 100 // a + 1))


def _products() -> Iterator[Problem]:
    yield from (_of(TIMES, a, b) for a, b in tables())
    yield from (_of(TIMES, a, b) for a in _GROUPS for b in _OF_GROUPS)
    yield from (_of(TIMES, a, b) for a in range(13, 51) for b in _OF_GROUPS)


def _quotients() -> Iterator[Problem]:
    yield from (_of(OVER, a * b, a) for a, b in tables())
    yield from (_of(OVER, a * b, a) for a in range(2, 10) for b in range(13, 251))
    yield from (_of(OVER, a * b, a) for a in _GROUPS for b in _OF_GROUPS)
    yield from (_of(OVER, a * b, a) for a in range(14, 49) for b in _OF_GROUPS)


def _sum_facts() -> Iterator[Problem]:
    """Yield sums and differences of one trio of numbers: to 20, and of all tens to a hundred."""
    for a, b in product(range(1, 100), repeat=2):
        if a + b <= 20 or ((a + b) % 10 == 0 and a + b <= 100) or (b < 10 and a + b <= 100):
            yield _of(PLUS, a, b)
            yield _of(MINUS, a + b, b)


def _product_facts() -> Iterator[Problem]:
    beyond = ((a, b) for a in range(2, 13) for b in (*range(2, 65), 70, 75, 80, 90, 100))
    for a, b in (*tables(), *beyond):
        yield _of(TIMES, a, b)
        yield _of(OVER, a * b, a)
        yield _of(OVER, a * b, b)
        yield _of(TIMES, b, a)


def _several() -> Iterator[Problem]:
    """Yield sums of three numbers, two of which make tens or are alike, and sums of those two."""
    for a, b in product(range(1, 60), repeat=2):
        if (a + b) % 10 == 0 and a % 10 and a + b <= 100:
            yield _of(PLUS, a, b)
    for a, b, c in product(range(1, 50), range(1, 50), (2, 3, 4, 5, 6, 7, 8, 9, 14, 27)):
        tens = (a + b) % 10 == 0 and a % 10 and a + b <= 60
        if tens or (a == b and a < 10):
            yield _of(PLUS, _of_sum(a, b), c)
            yield _of(PLUS, _of_sum(a, c), b)
            yield _of(PLUS, _of_sum(c, a), b)


def _of_sum(left: int, right: int) -> Operation:
    return Operation(PLUS, left, right)


def _missing() -> Iterator[Problem]:
    for whole in (*range(2, 21), *range(25, 101, 5)):
        for part in range(1, whole):
            rest = whole - part
            yield Equation(Operation(PLUS, part, BLANK), whole)
            yield Equation(Operation(PLUS, BLANK, part), whole)
            if whole <= 20 or whole % 10 == 0:
                yield Equation(Operation(MINUS, whole, BLANK), rest)
                yield Equation(Operation(MINUS, BLANK, part), rest)
    for whole in (*range(200, 1001, 100), *range(2000, 10_001, 1000)):
        for part in range(whole // 40, whole, whole // 40):
            yield Equation(Operation(PLUS, part, BLANK), whole)
            yield Equation(Operation(PLUS, BLANK, part), whole)
            yield Equation(Operation(MINUS, whole, BLANK), whole - part)
    for a, b in product(range(2, 13), repeat=2):
        yield Equation(Operation(TIMES, a, BLANK), a * b)
        yield Equation(Operation(OVER, a * b, BLANK), a)


def _images() -> Iterator[Problem]:
    for kind in (ImageKind.FRAME, ImageKind.PAIRS):
        yield from (Image(kind, (10, dots)) for dots in range(1, 11))
        yield from (Image(kind, (20, one, two)) for one in range(1, 11) for two in range(1, 11))
    for many in (1, 2, 3, 4):
        yield from (Image(ImageKind.DICE, dice) for dice in product(range(1, 7), repeat=many))
    sides = range(1, 13)
    yield from (Image(ImageKind.ARRAY, (rows, columns)) for rows in sides for columns in sides)


def _proper() -> tuple[Number, ...]:
    return tuple(parts(top, bottom) for bottom in _BOTTOMS for top in range(1, bottom))


def _lowest() -> tuple[Fraction, ...]:
    """Return every fraction below 1 of these parts in lowest terms."""
    return tuple(dict.fromkeys(Fraction(top, each) for each in _BOTTOMS for top in range(1, each)))


def _fractions(sign: Sign) -> Iterator[Problem]:
    """Yield those of like parts as they are, those of unlike parts in lowest terms."""
    lowest = _lowest()
    wholes: tuple[Exact, ...] = (1, 2, 3, 4, 5)
    for one, other in product((*lowest, *wholes), lowest):
        yield _of(sign, one, other)
    for bottom in _BOTTOMS:
        tops = range(1, bottom)
        for top, top_two in product(tops, repeat=2):
            yield _of(sign, parts(top, bottom), parts(top_two, bottom))
            for whole in (1, 2, 3):
                yield _of(sign, mixed(whole, top, bottom), parts(top_two, bottom))
    alike = (*lowest, *_SEVENTHS_AND_NINTHS)
    for part, other in product(alike, repeat=2):
        if part.denominator == other.denominator:
            yield _of(sign, part, other)
            for first, second in product((1, 2, 3), (0, 1, 2, 3)):
                yield _of(sign, first + part, second + other)
    for more, part, less in product((1, 2, 3), lowest, lowest):
        if {part.denominator, less.denominator} & {2, 3, 4}:
            yield _of(sign, more + part, less)


def _decimals(sign: Sign) -> Iterator[Problem]:
    beside = [Fraction(tenths, 10) for tenths in range(5, 60) if tenths % 10 in (1, 5, 8, 9)]
    beside += [Fraction(each, 100) for each in (25, 75, 99, 125, 175, 198, 199, 250, 399)]
    tenths = [Fraction(each, 10) for each in range(1, 100)]
    hundredths = [Fraction(each, 100) for each in range(105, 1000, 35)]
    beside += [Fraction(1), Fraction(2), Fraction(3)]
    for one, other in product((*tenths, *hundredths), beside):
        if one.denominator == other.denominator == 1:
            continue
        if one >= other or (sign is PLUS and one > other - 1):
            yield _of(sign, decimal(one), decimal(other))


def _parts() -> Iterator[Problem]:
    many = (*range(2, 101), 108, 120, 144, 150, 160, 200, 240, 300, 400)
    for part, number in product((*_lowest(), *_SEVENTHS_AND_NINTHS), many):
        if number % part.denominator == 0:
            yield _of(OF, part, number)
            yield _of(TIMES, part, number)
            yield _of(TIMES, number, part)
    for hundredths in (5, 10, 20, 25, 40, 50, 60, 75, 80, 90, 125, 150):
        for number in many:
            if hundredths * number % 100 == 0:
                yield _of(TIMES, decimal(Fraction(hundredths, 100)), number)


def _percents() -> Iterator[Problem]:
    """Yield per cents of a number that come out in wholes or halves, of small ones in tenths."""
    shares = (*range(1, 7), 8, 9, 10, 11, 12, 15, 16, 18, 20, 24, 25, 30, 32, 35, 40, 45, 48, 50,
              55, 60, 65, 70, 75, 80, 85, 90, 95, 99, 100, 110, 120, 125, 150)  # fmt: skip
    of = (*range(4, 101, 2), *range(5, 100, 10), *range(104, 260, 4), *range(110, 260, 10),
          300, 360, *range(400, 1000, 100))  # fmt: skip
    for share, number in product(shares, of):
        tenths = number <= 40 and share * number % 10 == 0
        if tenths or share * number % 50 == 0 or (share == 1 and number % 10 == 0):
            yield _of(OF, percent(Fraction(share, 100)), number)
    for eighths, number in product((1, 3, 5, 7), range(8, 241, 8)):
        yield _of(OF, percent(Fraction(eighths, 8)), number)


def _claims() -> Iterator[Problem]:
    for a, b, by in product(range(3, 40), range(3, 40), (1, 2, 3)):
        if b < by + 1 or (a + b > 20 and (a % 10) not in (7, 8, 9)):
            continue
        for off in (0, 1):
            moved = Operation(PLUS, a + by, b - by + off)
            yield Claim(Equation(Operation(PLUS, a, b), moved))
    for a, b, by in product(range(6, 40), range(2, 12), (1, 2)):
        if a > b:
            for other in (b + by, b - by):
                if other > 0:
                    shifted = Operation(MINUS, a + by, other)
                    yield Claim(Equation(Operation(MINUS, a, b), shifted))


def _comparisons() -> Iterator[Problem]:
    proper = _proper()
    yield from (Compare(one, other) for one, other in product(proper, repeat=2) if one != other)
    pointed = [decimal(Fraction(each, 10)) for each in range(1, 10)]
    pointed += [decimal(Fraction(each, 100)) for each in range(5, 100, 5)]
    pointed += [decimal(Fraction(each, 1000)) for each in _THOUSANDTHS]
    yield from (Compare(one, other) for one, other in product(pointed, repeat=2) if one != other)


def _estimates() -> Iterator[Problem]:
    near = [ten + beside for ten in range(20, 100, 10) for beside in (-2, -1, 1, 2)]
    hundreds = [hundred + beside for hundred in range(200, 1000, 100) for beside in (-2, -1, 1, 3)]
    for one, other in product((*near, *hundreds), repeat=2):
        if one >= other:
            yield About(Operation(PLUS, one, other))
            yield About(Operation(MINUS, one, other))
    for one, other in product((*near, *hundreds), (*range(3, 10), *near)):
        yield About(Operation(TIMES, one, other))
    for one, other in product(range(20, 1000, 10), range(3, 10)):
        if one % 100 == 0 or one < 100:
            yield _of(TIMES, one, other)


_MADE: dict[Topic, Callable[[], Iterator[Problem]]] = {
    Topic.SUMS: _sums,
    Topic.DIFFERENCES: _differences,
    Topic.PRODUCTS: _products,
    Topic.QUOTIENTS: _quotients,
    Topic.SUM_FACTS: _sum_facts,
    Topic.PRODUCT_FACTS: _product_facts,
    Topic.SEVERAL: _several,
    Topic.MISSING: _missing,
    Topic.IMAGES: _images,
    Topic.FRACTION_SUMS: lambda: _fractions(PLUS),
    Topic.FRACTION_DIFFERENCES: lambda: _fractions(MINUS),
    Topic.DECIMAL_SUMS: lambda: _decimals(PLUS),
    Topic.DECIMAL_DIFFERENCES: lambda: _decimals(MINUS),
    Topic.PARTS: _parts,
    Topic.PERCENTS: _percents,
    Topic.CLAIMS: _claims,
    Topic.COMPARISONS: _comparisons,
    Topic.ESTIMATES: _estimates,
}
