"""Double and halve, break the number up, find the whole, and percents put together."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Number, Operation, exact, percent, places_of
from waysaid.ways.factor import can_do
from waysaid.ways.fractions.amount import did, said_as
from waysaid.ways.percents.shape import PercentOf, PercentSum, PercentWhole, shown, units_of
from waysaid.ways.place import friendly_above, pieces
from waysaid.ways.plan import MINUS, OVER, PLUS, TIMES, Plan
from waysaid.ways.step import Kind, Step, worked

EASY = (10, 20, 25, 30, 40, 50, 60, 75, 80, 90)
"""The percents that are taken of each piece of a number; our choice."""
ALL = 100


def double_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield the percent doubled and the number halved: 15% of 80 as 30% of 40."""
    rate, number = problem.rate, problem.number
    if not isinstance(rate, int) or not isinstance(number, int):
        return
    if rate % 10 != 5 or number % 2 or rate in (25, 75) or rate > 50:
        return
    half, twice = number // 2, 2 * rate
    if not can_do(twice // 10, half):
        return
    old, new = problem.pair(_percent(rate), number), problem.pair(_percent(twice), half)
    told = said_as(Operation(problem.sign, *old), Operation(problem.sign, *new))
    last = did(Kind.RECALL, new[0], problem.sign, new[1], shown(problem.share(rate)))
    yield "double-percent", (Step(Kind.SCALE, told.equation), last)


def _percent(rate: Exact) -> Number:
    return percent(exact(Fraction(rate) / 100))


def _of(problem: PercentOf, number: int) -> tuple[Step, Exact]:
    pair = problem.pair(_percent(problem.rate), number)
    share = exact(Fraction(number) * problem.rate / 100)
    return did(Kind.GROUP, pair[0], problem.sign, pair[1], shown(share)), share


def broken_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield the percent of each piece of the number: 20% of 40 and 20% of 5."""
    number = problem.number
    if not isinstance(number, int) or problem.rate not in EASY:
        return
    found = pieces(number)
    if len(found) != 2:
        return
    (one, big), (other, small) = (_of(problem, piece) for piece in found)
    if not isinstance(big, int) or (places_of(small) or 0) > 1:
        return
    last = did(Kind.JOIN, shown(big), PLUS, shown(small), shown(problem.share(problem.rate)))
    yield "by-place", (one, other, last)


def near_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield the percent of a friendly number near by, less that of what is too much."""
    number = problem.number
    if not isinstance(number, int):
        return
    for friendly, gap in friendly_above(number):
        if problem.rate not in EASY and not _in_hundreds(problem, friendly):
            continue
        one, big = _of(problem, friendly)
        if not isinstance(big, int):
            continue
        other, small = _of(problem, gap)
        total = shown(problem.share(problem.rate))
        mend = did(Kind.MEND, shown(big), MINUS, shown(small), total)
        yield f"up-to-{friendly}", (one, other, mend)


def _in_hundreds(problem: PercentOf, friendly: int) -> bool:
    """Tell whether so many per cent are told for each hundred of a number: 37% of 1000."""
    hundreds, over = divmod(friendly, ALL)
    return not over and isinstance(problem.rate, int) and can_do(problem.rate, hundreds)


def whole_plans(problem: PercentWhole) -> Iterator[Plan]:
    """Yield one block of the number, then as many as make it: 9 / 3 = 3 is 5%, 3 x 20 = 60."""
    part, rate = problem.part, Fraction(problem.rate)
    fraction = rate / 100
    seen = []
    for block in (
        Fraction(10),
        Fraction(5),
        Fraction(1),
        rate,
        Fraction(100, fraction.denominator),
    ):
        many = rate / block
        if many.denominator > 1 or block in seen or (100 / block).denominator > 1:
            continue
        seen.append(block)
        one, times = exact(Fraction(part) / many), exact(100 / block)
        whole = exact(Fraction(one) * times)
        first = () if many == 1 else (_over(part, int(many), one),)
        last = () if times == 1 else (did(Kind.SCALE, shown(one), TIMES, times, shown(whole)),)
        if first or last:
            yield f"percent-by-{block}", (*first, *last)


def _over(number: Exact, by: int, result: Exact) -> Step:
    return did(Kind.SCALE, shown(number), OVER, by, shown(result))


def sum_plans(problem: PercentSum) -> Iterator[Plan]:
    """Yield percents put together, or taken, as so many hundredths."""
    total = worked(Kind.JOIN, problem.sign, problem.left, problem.right).equation.right
    if isinstance(total, int | Fraction):
        kind = Kind.JOIN if problem.sign is PLUS else Kind.TAKE
        yield "hundredths", (did(kind, problem.left, problem.sign, problem.right, percent(total)),)


def sumunits_of_plans(problem: PercentSum) -> Iterator[Plan]:
    """Yield the numbers without their sign first: 15 + 20 = 35, so 35%."""
    left, right = (exact(Fraction(one.value) * 100) for one in (problem.left, problem.right))
    kind = Kind.JOIN if problem.sign is PLUS else Kind.TAKE
    for _, steps in sum_plans(problem):
        yield "counted", (did(kind, shown(left), problem.sign, shown(right)), *steps)


def all_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield all of the number: 100% of 80 is 80."""
    if problem.rate == ALL:
        pair = problem.pair(_percent(problem.rate), shown(problem.number))
        result = shown(problem.number)
        yield "all", (did(Kind.RECALL, pair[0], problem.sign, pair[1], result),)


def fallback_plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield one hundredth, then as many: for percents that no blocks build, as 7.3%."""
    if problem.rate == int(problem.rate) or can_do(
        units_of(problem.rate), units_of(problem.number)
    ):
        return
    one, total = problem.share(1), problem.share(problem.rate)
    first = did(Kind.SCALE, shown(problem.number), OVER, 100, shown(one))
    last = did(Kind.SCALE, shown(one), TIMES, shown(problem.rate), shown(total))
    yield "percent-one-first", (first, last)
