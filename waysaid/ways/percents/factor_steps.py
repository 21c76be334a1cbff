"""One per cent first, then so many; or times so many, then over a hundred; halves of halves."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, exact
from waysaid.ways.factor import can_do
from waysaid.ways.fractions.amount import did
from waysaid.ways.percents.shape import PercentOf, shown, units_of
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.step import Kind, Step

HUNDRED = 100


def one_first_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield one per cent, then so many times that."""
    rate, number = problem.rate, problem.number
    if not _one_of(rate) and can_do(units_of(rate), units_of(number)):
        one = problem.share(1)
        yield "percent-one-first", (_over(number, HUNDRED), _times(one, rate, problem.share(rate)))


def plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield so many times the number, then a hundredth of that; tens likewise."""
    rate, number = problem.rate, problem.number
    if _one_of(rate) or not can_do(units_of(rate), units_of(number)):
        return
    many = exact(Fraction(number) * rate)
    yield "percent-times-first", (_times(number, rate, many), _over(many, HUNDRED))
    if rate % 10 == 0 and rate < HUNDRED:
        tens = exact(Fraction(rate) / 10)
        many = exact(Fraction(number) * tens)
        yield "percent-tens-times-first", (_times(number, tens, many), _over(many, 10))


def _one_of(rate: Exact) -> bool:
    """Tell whether a percent is a block that nobody multiplies for."""
    return rate in (1, 10, 50, HUNDRED)


def _over(number: Exact, by: int) -> Step:
    return did(Kind.SCALE, shown(number), OVER, by, shown(exact(Fraction(number) / by)))


def _times(number: Exact, by: Exact, total: Exact) -> Step:
    return did(Kind.SCALE, shown(number), TIMES, shown(by), shown(total))


def halves_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield 25% and 12.5% as half of half, and half of that."""
    halves = {Fraction(25): 2, Fraction(25, 2): 3}.get(Fraction(problem.rate))
    if halves is None:
        return
    steps, number = [], problem.number
    for _ in range(halves):
        half = exact(Fraction(number) / 2)
        steps.append(_over(number, 2))
        number = half
    yield "percent-halves", tuple(steps)
