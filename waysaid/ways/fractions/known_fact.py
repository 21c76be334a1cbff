"""Known fact: what is known of halves, quarters and parts of one, and what needs no working."""

from collections.abc import Iterator

from waysaid.number import Exact, exact
from waysaid.ways.factor import knows
from waysaid.ways.fractions.amount import did
from waysaid.ways.fractions.shape import (
    FractionAsked,
    FractionPlain,
    FractionSum,
    FractionTake,
    PartOf,
    PartOver,
    PartTimes,
)
from waysaid.ways.plan import MINUS, OVER, PLUS, Plan
from waysaid.ways.step import Kind

HALVES = (1, 2, 4)
"""The parts that a child knows the sums of: halves and quarters; our choice."""
MOST_LIKE = 12
"""The smallest parts, like ones, that a child puts together in one go; our choice."""
MOST_KNOWN = 2
"""Up to where sums of halves and quarters are known; our choice."""


def plain_plans(problem: FractionPlain) -> Iterator[Plan]:
    """Yield what needs no working."""
    if exact(problem.left) >= exact(problem.right) or problem.sign is not MINUS:
        yield "known", (did(Kind.RECALL, problem.left, problem.sign, problem.right),)


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield wholes and parts read off, halves and quarters, and like parts to one."""
    left, right = problem.left, problem.right
    if _read_off(problem) or _halves(problem) or _like(problem):
        yield "known", (did(Kind.RECALL, left.number, PLUS, right.number),)


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the same taken away."""
    whole, part = problem.whole, problem.part
    parts_off = part.number in (whole.part, whole.whole) and whole.whole
    if parts_off or _halves(problem) or _like(problem):
        yield "known", (did(Kind.RECALL, whole.number, MINUS, part.number),)


def _read_off(problem: FractionSum) -> bool:
    """Tell whether it is a whole number and parts of one: 3 + 1/2."""
    left, right = problem.left, problem.right
    return (not left.top and right.value < 1) or (not right.top and left.value < 1)


def _halves(problem: FractionSum | FractionTake) -> bool:
    bottoms = (problem.left.bottom, problem.right.bottom)
    values = (problem.left.value, problem.right.value)
    return set(bottoms) <= set(HALVES) and max(values) <= 1 and sum(values) <= MOST_KNOWN


def _like(problem: FractionSum | FractionTake) -> bool:
    """Tell whether it is like parts of one whole: 2/7 + 3/7, 1 - 3/8."""
    left, right = problem.left, problem.right
    if max(left.bottom, right.bottom) > MOST_LIKE:
        return False
    if isinstance(problem, FractionTake):
        same = left.bottom == right.bottom or left.value == 1
        return left.value <= 1 and same
    return left.bottom == right.bottom and left.value + right.value <= 1


def asked_plans(problem: FractionAsked) -> Iterator[Plan]:
    """Yield the fact itself with the missing number in it, where that is known: 1/4 + 3/4 = 1."""
    one, other, total = exact(problem.left), exact(problem.right), exact(problem.total)
    if min(one, other) <= 0 or problem.sign not in (PLUS, MINUS):
        return
    sizes = (one, other, total)
    if max(sizes) <= 1 and len({_bottom(size) for size in sizes} - {1}) == 1:
        step = did(Kind.RECALL, problem.left, problem.sign, problem.right, problem.total)
        yield "known", (step,)


def _bottom(value: Exact) -> int:
    return 1 if isinstance(value, int) else value.denominator


def part_plans(problem: PartOf) -> Iterator[Plan]:
    """Yield one part of a number where the division is known: 1/2 of 36, 1/3 of 12."""
    if (
        problem.top == 1
        and problem.even
        and knows(problem.bottom, problem.number // problem.bottom)
    ):
        pair = problem.pair(problem.part.number, problem.number)
        yield "known", (did(Kind.RECALL, pair[0], problem.sign, pair[1]),)


def times_plans(problem: PartTimes) -> Iterator[Plan]:
    """Yield one part of one part, where the tables have it: 1/2 of 1/3."""
    left, right = problem.left, problem.right
    if (left.tops, right.tops) == (1, 1) and knows(left.bottom, right.bottom):
        yield "known", (did(Kind.RECALL, left.number, problem.sign, right.number),)


def over_plans(problem: PartOver) -> Iterator[Plan]:
    """Yield how many of one part make a whole, and like parts shared in them: 3/4 / 1/4."""
    whole, part = problem.whole, problem.part
    fits = whole.bottom == part.bottom and whole.tops % part.tops == 0
    like = fits and part.top and not whole.whole and knows(part.tops, whole.tops // part.tops)
    if like or (part.tops == 1 and whole.value == 1):
        yield "known", (did(Kind.RECALL, whole.number, OVER, part.number),)
