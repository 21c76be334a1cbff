"""Counting: on or back by one part at a time."""

from collections.abc import Iterator
from fractions import Fraction
from math import lcm

from waysaid.number import Sign, exact
from waysaid.ways.fractions.amount import Amount, amount, bottom_of, did, in_wholes
from waysaid.ways.fractions.shape import FractionSum, FractionTake, PartOf, PartOver
from waysaid.ways.fractions.units import Steps, tops_in
from waysaid.ways.plan import MINUS, PLUS, TIMES, Plan
from waysaid.ways.step import Kind

MOST_PARTS = 4
"""The most parts counted on or back one by one; our choice."""
MOST_GROUPS = 6
"""The most equal parts added one after another; our choice."""
MOST_SKIPS = 10


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield either number counted on by parts of its own size."""
    for start, other, tag in problem.starts():
        if other.whole == 0 and 0 < other.top <= MOST_PARTS and _fits(start, other):
            yield f"{tag}-by-parts", _counts(start, PLUS, _one(other), other.top)


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the parts counted back one by one, and counted up from the smaller."""
    whole, part = problem.whole, problem.part
    if part.whole == 0 and 0 < part.top <= MOST_PARTS and _fits(whole, part):
        yield "back-by-parts", _counts(whole, MINUS, _one(part), part.top)


def _fits(start: Amount, other: Amount) -> bool:
    return other.bottom % start.bottom == 0 and other.bottom // start.bottom <= 2


def _one(number: Amount) -> Amount:
    return amount(Fraction(1, number.bottom))


def _counts(start: Amount, sign: Sign, size: Amount, times: int) -> Steps:
    """Return so many counts of a size, said in parts of that size: 3/4, 1, 1 1/4."""
    unit = lcm(start.bottom, size.bottom)
    tops, each = tops_in(start, unit), tops_in(size, unit)
    change = each if sign is PLUS else -each
    steps, number = [], start.number
    for _ in range(times):
        tops += change
        after = in_wholes(tops, unit)
        steps.append(did(Kind.COUNT, number, sign, size.number, after))
        number = after
    return tuple(steps)


def part_plans(problem: PartOf) -> Iterator[Plan]:
    """Yield so many equal parts added one after another: 4 x 2/3 as 2/3, 1 1/3, 2, 2 2/3."""
    times, part = problem.number, problem.part
    if problem.sign is TIMES and 2 <= times <= MOST_GROUPS:
        yield "parts-in-turn", _counts(part, PLUS, part, times - 1)


def over_plans(problem: PartOver) -> Iterator[Plan]:
    """Yield the count up to the number in parts, and down to nothing: 1/2, 1, 1 1/2, 2."""
    groups = exact(Fraction(problem.whole.value) / problem.part.value)
    part = problem.part
    if isinstance(groups, int) and 2 <= groups <= MOST_SKIPS and bottom_of(part.value) > 1:
        yield (
            "up",
            (
                *_counts(part, PLUS, part, groups - 1),
                did(Kind.RECALL, groups, TIMES, part.number),
            ),
        )
