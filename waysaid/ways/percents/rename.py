"""Rename: a percent as a part of one, as so many hundredths, or the problem turned round."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Number, Operation, Sign, decimal, exact, percent, places_of
from waysaid.ways.factor import can_do, knows
from waysaid.ways.fractions.amount import did, said_as
from waysaid.ways.percents.benchmark import plans as built
from waysaid.ways.percents.shape import PercentOf, shown, units_of
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.step import Kind, Step

LARGEST_BOTTOM = 20
"""The smallest parts of one that a percent is known as: 5% is a twentieth; our choice."""
FRIENDLY = (5, 10, 20, 25, 50, 75, 200)
"""The numbers that are taken as a percent when the problem is turned round; our choice."""
LARGEST = 100
KNOWN = ((1, 2), (1, 4), (3, 4), (1, 5), (1, 10))
"""The parts of one that a percent is at once, without saying so; our choice."""
LANDMARKS = (1, 10, 25, 50)
"""The percents that are not counted for each hundred: they are known of any number; our choice."""
KNOWN_BOTTOMS = (2, 3, 4, 5, 8, 10)
"""The parts of one that are taken of a number in one go; our choice."""
MOST_PLACES = 2
"""The most places after the point that one part of a number may have; our choice."""


def as_part_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield the percent as a part of one, said or not: 25% of 36 as 36 / 4."""
    part = Fraction(problem.rate) / 100
    top, bottom = part.numerator, part.denominator
    share = exact(Fraction(problem.number) / bottom)
    if bottom > LARGEST_BOTTOM or part >= 1 or (places_of(share) or 0) > MOST_PLACES:
        return
    steps: tuple[Step, ...] = (_made(Kind.GROUP, problem.number, OVER, bottom, share),)
    if top > 1:
        if not can_do(top, units_of(share)):
            return
        total = problem.share(problem.rate)
        steps = (*steps, _made(Kind.SCALE, share, TIMES, top, total))
    said = said_as(percent(part), part)
    if (top, bottom) in KNOWN:
        yield f"percent-as-{top}-over-{bottom}", steps
    yield f"as-{top}-over-{bottom}-said", (said, *steps)
    total = problem.share(problem.rate)
    whole = did(Kind.RECALL, part, TIMES, shown(problem.number), shown(total))
    if isinstance(total, int) and bottom in KNOWN_BOTTOMS:
        if top == 1 and bottom in (2, 4):
            yield f"percent-as-{top}-over-{bottom}-of", (whole,)
        yield f"as-{top}-over-{bottom}-of-said", (said, whole)


def _made(kind: Kind, left: Exact, sign: Sign, right: int, result: Exact) -> Step:
    return did(kind, shown(left), sign, right, shown(result))


def turned_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield the numbers turned round: 16% of 25 is 25% of 16, which is a quarter of it."""
    rate, number = problem.rate, problem.number
    if number == LARGEST:
        yield from _of_hundred(problem)
        return
    if not isinstance(number, int) or not isinstance(rate, int) or number not in FRIENDLY:
        return
    if rate == number:
        return
    new = PercentOf(number, rate, problem.sign, problem.first)
    old_pair = problem.pair(_percent(rate), number)
    new_pair = problem.pair(_percent(number), rate)
    old, turned = Operation(problem.sign, *old_pair), Operation(problem.sign, *new_pair)
    told = Step(Kind.SCALE, said_as(old, turned).equation)
    total = problem.share(rate)
    end = did(Kind.RECALL, new_pair[0], problem.sign, new_pair[1], shown(total))
    yield "turned-round", (told, end)
    for slug, steps in built(new):
        yield f"turned-round-{slug}", (told, *steps)
        break


def _percent(rate: Exact) -> Number:
    return percent(exact(Fraction(rate) / 100))


def _of_hundred(problem: PercentOf) -> Iterator[Plan]:
    pair = problem.pair(_percent(problem.rate), problem.number)
    total = shown(problem.share(problem.rate))
    yield "so-many-in-a-hundred", (did(Kind.RECALL, pair[0], problem.sign, pair[1], total),)


def per_hundred_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield so many for each hundred: 17% of 300 as 3 x 17; the number itself for all of it."""
    number, rate = problem.number, problem.rate
    if not isinstance(number, int) or number % LARGEST or number == LARGEST:
        return
    hundreds = number // LARGEST
    if isinstance(rate, int) and rate not in LANDMARKS and can_do(hundreds, rate):
        yield "for-each-hundred", (did(Kind.SCALE, hundreds, TIMES, rate),)


def hundredths_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield the percent with a point: 15% is 0.15, 0.15 x 80; or 15 x 80, then hundredths."""
    rate, number, total = problem.rate, problem.number, problem.share(problem.rate)
    point = decimal(exact(Fraction(rate) / 100))
    if isinstance(point, int) or not can_do(units_of(rate), units_of(number)):
        return
    said = said_as(percent(exact(Fraction(rate) / 100)), point)
    made = did(Kind.SCALE, point, TIMES, shown(number), shown(total))
    if knows(units_of(rate), units_of(number)):
        yield "percent-with-a-point", (made,)
    yield "with-a-point-said", (said, made)


def wholes_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield a percent over a hundred as a number: 200% of 45 is 2 x 45, 150% is 1 1/2."""
    factor = Fraction(problem.rate) / 100
    number, total = problem.number, problem.share(problem.rate)
    if (
        factor <= 1
        or factor.denominator not in (1, 2, 4)
        or not can_do(factor.numerator, units_of(number))
    ):
        return
    times = exact(factor)
    whole = did(Kind.SCALE, times, TIMES, shown(number), shown(total))
    yield "as-a-number", (whole,)
    yield "as-a-number-said", (said_as(percent(times), times), whole)
