"""So many per cent of a fraction: 0.5% of 19/3 as 1/200 of it, or one hundredth first."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from waysaid.number import Blank, Number, Operation, Problem, Sign, exact, parts
from waysaid.ways.fractions.amount import amount, did, is_fraction, said_as
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.parted import is_percent
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.shape import to_do
from waysaid.ways.step import Kind
from waysaid.ways.way import Family

HUNDRED = 100


@dataclass(frozen=True, slots=True)
class PercentOfPart:
    """So many per cent of a fraction, both above 0; `first` tells whether the percent is first."""

    percent: Number
    number: Number
    first: bool


def shapes_of(problem: Problem) -> tuple[PercentOfPart, ...]:
    """Return the shape of 19/3 x 0.5% or 25% of 3/4; none for any other problem."""
    asked = to_do(problem)
    if asked is None or asked.sign not in (Sign.TIMES, Sign.OF):
        return ()
    left, right = asked.left, asked.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return ()
    if min(exact(left), exact(right)) <= 0:
        return ()
    if is_percent(left) and is_fraction(right):
        return (PercentOfPart(left, right, True),)
    return (PercentOfPart(right, left, False),) if is_percent(right) and is_fraction(left) else ()


def as_part_plans(problem: PercentOfPart) -> Iterator[Plan]:
    """Yield the percent as a part of one, then part times part: 1/200 x 19/3 = 19/600."""
    part = Fraction(exact(problem.percent))
    told = amount(problem.number)
    tops, bottoms = part.numerator * told.tops, part.denominator * told.bottom
    pair = (part, problem.number) if problem.first else (problem.number, part)
    said = said_as(problem.percent, part)
    shared, least = parts(tops, bottoms), exact(Fraction(tops, bottoms))
    lowest = () if shared == least else (said_as(shared, least),)
    yield "part-of-part", (said, did(Kind.SCALE, pair[0], TIMES, pair[1], shared), *lowest)


def one_first_plans(problem: PercentOfPart) -> Iterator[Plan]:
    """Yield one per cent first, then so many of it or a part: 19/3 / 100, then half of that."""
    rate = Fraction(exact(problem.percent)) * HUNDRED
    one = exact(Fraction(exact(problem.number)) / HUNDRED)
    first = did(Kind.SCALE, problem.number, OVER, HUNDRED, one)
    if rate.denominator == 1 and rate > 1:
        yield "one-percent-first", (first, did(Kind.SCALE, one, TIMES, rate.numerator))
    elif rate.numerator == 1 and rate < 1:
        yield "one-percent-first", (first, did(Kind.SCALE, one, OVER, rate.denominator))


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, PercentOfPart, as_part_plans),
    Maker(Family.BENCHMARK, PercentOfPart, one_first_plans),
)
