"""Benchmark: through one half, or through one whole that both are near."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Number, chain, exact
from waysaid.ways.fractions.amount import Amount, did, one_go, said_as
from waysaid.ways.fractions.shape import FractionSum, FractionTake
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind, Step

HALF = Fraction(1, 2)
NEAR = Fraction(1, 3)
"""How far from a whole a number may be to be taken as one; our choice."""


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield two halves and what is over them, and two wholes less what is missing."""
    left, right = problem.left, problem.right
    if max(left.value, right.value) >= 1:
        return
    if min(left.value, right.value) >= HALF and max(left.value, right.value) > HALF:
        yield from _halves(left, right)
    if max(left.gap, right.gap) <= NEAR:
        yield from _ones(left, right)


def _halves(left: Amount, right: Amount) -> Iterator[Plan]:
    """Yield a half from each: 5/8 = 1/2 + 1/8, 1/2 + 1/2 = 1, 1/8 + 1/4 = 3/8, 1 + 3/8."""
    over = [exact(number.value - HALF) for number in (left, right)]
    rest = [one for one in over if one]
    if len(rest) == 2 and not one_go(*rest):
        return
    opened = dict.fromkeys(
        said_as(number.number, chain(HALF, (PLUS, one)))
        for number, one in zip((left, right), over, strict=True)
        if one
    )
    one = did(Kind.JOIN, HALF, PLUS, HALF)
    total = exact(sum(rest, Fraction(0)))
    added = (did(Kind.JOIN, rest[0], PLUS, rest[1]),) if len(rest) == 2 else ()
    last = did(Kind.JOIN, 1, PLUS, total)
    yield "halves", (one, *added, last)
    yield "halves-said", (*opened, one, *added, last)


def _ones(left: Amount, right: Amount) -> Iterator[Plan]:
    """Yield one from each, less what is missing: 1 + 1 = 2, 1/8 + 1/4 = 3/8, 2 - 3/8."""
    if not one_go(left.gap, right.gap):
        return
    missing = exact(left.gap + right.gap)
    both = did(Kind.JOIN, 1, PLUS, 1)
    off = did(Kind.JOIN, left.gap, PLUS, right.gap)
    yield "ones-less", (both, off, did(Kind.TAKE, 2, MINUS, missing))
    once = did(Kind.TAKE, 2, MINUS, left.gap)
    again = did(Kind.TAKE, exact(2 - left.gap), MINUS, right.gap)
    yield "ones-less-in-turn", (both, once, again)


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the distances on either side of a landmark: 1/2 - 3/8 = 1/8, 3/4 - 1/2 = 1/4."""
    whole, part = problem.whole, problem.part
    for slug, mark in (("half", HALF), ("one", 1)):
        if part.value < mark < whole.value and whole.value - mark < 1:
            yield from _either_side(slug, (whole, part), mark)
    if not whole.top and part.value < 1 and whole.value > 1:
        yield from _one_broken(whole.whole, part)


def _either_side(slug: str, pair: tuple[Amount, Amount], mark: Exact) -> Iterator[Plan]:
    whole, part = pair
    below, above = exact(mark - part.value), exact(whole.value - mark)
    if not (one_go(mark, part.value) and one_go(whole.value, mark) and one_go(below, above)):
        return
    steps = (
        did(Kind.TAKE, mark, MINUS, part.number),
        did(Kind.TAKE, whole.number, MINUS, mark),
        did(Kind.JOIN, below, PLUS, above),
    )
    yield f"either-side-of-{slug}", steps
    if mark == 1 and whole.top and whole.whole:
        yield "one-broken", (steps[0], steps[2])


def _one_broken(whole: int, part: Amount) -> Iterator[Plan]:
    """Break one of the wholes: 3 = 2 + 1, 1 - 2/5 = 3/5, 2 + 3/5 = 2 3/5."""
    rest = exact(1 - part.value)
    steps = _one_off(part.number, whole - 1, rest)
    yield "one-broken", steps
    yield "one-broken-said", (said_as(whole, chain(whole - 1, (PLUS, 1))), *steps)


def _one_off(part: Number, wholes: int, rest: Exact) -> tuple[Step, ...]:
    off = did(Kind.TAKE, 1, MINUS, part)
    return (off, did(Kind.JOIN, wholes, PLUS, rest))
