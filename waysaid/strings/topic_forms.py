"""The problems of each topic in other forms than most of them have, as standards name them.

They are candidates in the grades in which those in the usual form are few. Which numbers they have
is our choice, by common practice, no source.
"""

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from itertools import product

from waysaid.number import (
    BLANK,
    MOST_DICE,
    Compare,
    Equation,
    Image,
    ImageKind,
    Number,
    Operation,
    Problem,
    Sign,
    decimal,
    parts,
)
from waysaid.strings.topic import Topic
from waysaid.strings.topic_numbers import tables

_PLUS, _MINUS, _TIMES, _OVER = Sign.PLUS, Sign.MINUS, Sign.TIMES, Sign.OVER
_BESIDE = (-20, -10, -5, -2, -1, 0, 1, 2, 5)
_THIRD_GRADE_PARTS = (2, 3, 4, 6, 8)
"""The parts that `ccss` has in grade 3 (3.NF, footnote; from memory)."""
_MOST_WHOLES = 3


def other_forms_of(topic: Topic) -> Iterator[Problem]:
    """Yield the problems of a topic in the other forms that standards name; none for most topics.

    `ccss` asks in grade 2 for sums of up to five equal groups (2.OA.C.4, from memory, of rows); in
    grade 3 for the unknown of three numbers (3.OA.A.4: 8 x _ = 48), for quotients as
    unknown factors (3.OA.B.6), for what is the same by the order of the steps (3.OA.B.5: 3 x 5 x 2,
    15 x 2 = 3 x _), for all products of ones (3.OA.C.7), for tens times ones (3.NBT.A.3), and for
    fractions of like parts or tops and whole numbers beside them (3.NF.A.3); in grade 4 for long
    sums (4.NBT.B.4); in grade 6 for unknowns of decimals (6.EE.B.7, from memory).
    """
    for made in _FORMS.get(topic, ()):
        yield from made()


def _ones_and_tens() -> Iterator[tuple[int, int]]:
    """Yield every two factors of the tables, and ones with tens in both orders."""
    yield from tables()
    for ones, ten in product(range(2, 10), range(10, 100, 10)):
        yield ones, ten
        yield ten, ones


def _missing_factors() -> Iterator[Problem]:
    for a, b in _ones_and_tens():
        yield Equation(Operation(_TIMES, a, BLANK), a * b)
        yield Equation(Operation(_TIMES, BLANK, a), a * b)


def _missing_shares() -> Iterator[Problem]:
    for a, b in tables():
        yield Equation(Operation(_OVER, a * b, BLANK), a)
        yield Equation(Operation(_OVER, BLANK, a), b)


def _three_factors() -> Iterator[Problem]:
    """Yield three factors with a product to a hundred, or two that make ones, and a ten."""
    for a, b, c in _threes():
        yield Operation(_TIMES, Operation(_TIMES, a, b), c)
    for a, b, ten in product((2, 3, 4), (2, 3, 4), range(10, 100, 10)):
        if a * b < 10:
            for one, other, last in ((a, b, ten), (a, ten, b), (ten, a, b)):
                yield Operation(_TIMES, Operation(_TIMES, one, other), last)


def _threes() -> Iterator[tuple[int, int, int]]:
    """Yield every three factors from 2 up whose product is at most a hundred."""
    for a, b, c in product(range(2, 26), repeat=3):
        if a * b * c <= 100:
            yield a, b, c


def _with_one() -> Iterator[Problem]:
    """Yield what is shared out among as many as there are, or among one."""
    for many in range(2, 13):
        yield Operation(_OVER, many, many)
        yield Operation(_OVER, many, 1)
        yield Equation(Operation(_TIMES, many, BLANK), many)
        yield Equation(Operation(_TIMES, BLANK, many), many)


def _shared_twice() -> Iterator[Problem]:
    for a, b, c in _threes():
        yield Operation(_OVER, Operation(_OVER, a * b * c, a), b)


def _traded_factors() -> Iterator[Problem]:
    """Yield products of which one number is so many times as small on the other side."""
    for (a, b), times in product(tables(), (2, 3, 4)):
        if a * b * times <= 100 and a != b:
            for left in (Operation(_TIMES, a * times, b), Operation(_TIMES, b, a * times)):
                yield Equation(left, Operation(_TIMES, a, BLANK))
                yield Equation(left, Operation(_TIMES, BLANK, a))


def _long_sums() -> Iterator[Problem]:
    """Yield sums of a number on or beside thousands with hundreds and a half, or another such."""
    thousands = [1000 * many + beside for many in range(1, 10) for beside in _BESIDE]
    others = (*range(450, 5000, 500), *range(275, 4000, 600), *range(640, 5000, 700))
    for number in thousands:
        smaller = (other for other in thousands if other < number)
        yield from (Operation(_PLUS, number, other) for other in (*others, *smaller))


def _missing_decimals() -> Iterator[Problem]:
    """Yield what is missing to a whole, and to a whole and a half, in tenths."""
    for halves in (*range(2, 13), 16, 20):
        whole = _tenths(5 * halves)
        for tenths in range(1, 5 * halves):
            part, rest = _tenths(tenths), _tenths(5 * halves - tenths)
            yield Equation(Operation(_PLUS, part, BLANK), whole)
            yield Equation(Operation(_PLUS, BLANK, part), whole)
            yield Equation(Operation(_MINUS, whole, BLANK), rest)
            yield Equation(Operation(_MINUS, BLANK, part), rest)


def _tenths(many: int) -> Number:
    return decimal(Fraction(many, 10))


def _beyond_one() -> Iterator[Problem]:
    """Yield fractions to three wholes with one bottom or one top, and a whole beside a fraction."""
    every = [
        (top, bottom)
        for bottom in _THIRD_GRADE_PARTS
        for top in range(1, _MOST_WHOLES * bottom + 1)
    ]
    for (top, bottom), (top_two, bottom_two) in product(every, repeat=2):
        if (top == top_two) != (bottom == bottom_two):
            yield Compare(parts(top, bottom), parts(top_two, bottom_two))
    for (top, bottom), whole in product(every, range(1, _MOST_WHOLES + 1)):
        yield Compare(parts(top, bottom), whole)
        yield Compare(whole, parts(top, bottom))


def _beside_an_empty_frame() -> Iterator[Problem]:
    for kind, dots in product((ImageKind.FRAME, ImageKind.PAIRS), range(1, 11)):
        yield Image(kind, (20, dots))


def _five_dice() -> Iterator[Problem]:
    """Yield five equal groups of dots, and so many equal ones beside some of another size."""
    for one, other in product(range(2, 7), repeat=2):
        for many in range(1, MOST_DICE) if one != other else (MOST_DICE,):
            yield Image(ImageKind.DICE, (one,) * many + (other,) * (MOST_DICE - many))


_FORMS: Mapping[Topic, tuple[Callable[[], Iterator[Problem]], ...]] = {
    Topic.SUMS: (_long_sums,),
    Topic.PRODUCTS: (_missing_factors, _three_factors, _traded_factors),
    Topic.QUOTIENTS: (_missing_shares, _missing_factors, _shared_twice, _with_one),
    Topic.PRODUCT_FACTS: (_missing_factors, _missing_shares),
    Topic.MISSING: (_missing_decimals,),
    Topic.IMAGES: (_beside_an_empty_frame, _five_dice),
    Topic.COMPARISONS: (_beyond_one,),
}
