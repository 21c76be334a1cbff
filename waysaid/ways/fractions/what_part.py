"""What part one number is of another: _ of 80 = 20."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import exact, parts
from waysaid.ways.factor import can_share
from waysaid.ways.fractions.amount import did, said_as
from waysaid.ways.fractions.shape import WhatPart
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.step import Kind
from waysaid.ways.way import Family


def renamed(problem: WhatPart) -> Iterator[Plan]:
    """Yield so many of so many parts, in lowest terms: 20/80 = 1/4."""
    plain = parts(problem.part, problem.number)
    if plain == exact(plain):
        yield "parts", (did(Kind.GROUP, problem.part, OVER, problem.number),)
    else:
        yield "parts", (said_as(plain, exact(plain)),)


def times_into(problem: WhatPart) -> Iterator[Plan]:
    """Yield how often one goes into the other, then the part: 80 / 20 = 4, 1/4 x 80 = 20."""
    value = Fraction(problem.part, problem.number)
    last = did(Kind.RECALL, value, TIMES, problem.number)
    if value.numerator == 1 and can_share(problem.number, problem.part):
        yield "goes-into", (did(Kind.GROUP, problem.number, OVER, problem.part), last)
    elif value.numerator > 1 and can_share(problem.number, value.denominator):
        one = did(Kind.GROUP, problem.number, OVER, value.denominator)
        share = problem.number // value.denominator
        many = did(Kind.GROUP, problem.part, OVER, share)
        yield "one-part-first", (one, many, last)
    yield "known-product", (last,)


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, WhatPart, renamed),
    Maker(Family.THINK_TIMES, WhatPart, times_into),
)
