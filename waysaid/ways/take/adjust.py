"""Adjust: take (or take from) a friendly number near by, then put the difference right."""

from collections.abc import Iterator

from waysaid.ways.add.adjust import BOTH
from waysaid.ways.place import friendly_above, near_friendly
from waysaid.ways.plan import MINUS, Moves, Plan, hops
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind

NEAR_TEN, NEAR_HUNDRED = 3, 10
"""How far the answer may be above a friendly one for a child to aim at it; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the ways that take too much, start from a friendly number, or do both."""
    whole, part = problem.whole, problem.part
    for friendly, over in friendly_above(part):
        if friendly < whole:
            yield f"part-to-{friendly}", _mended(whole, friendly, over)
    yield from _from_friendly(whole, part)
    yield from _both(whole, part)
    yield from _friendly_answer(whole, part)


def _mended(whole: int, part: int, *mends: int) -> Moves:
    return ((Kind.JUMP, whole, MINUS, part), *hops(whole - part, *mends, kind=Kind.MEND))


def _from_friendly(whole: int, part: int) -> Iterator[Plan]:
    """Start from a friendly whole instead: 63 - 28 as 60 - 28, and 3 more."""
    for unit, most in ((10, 3), (100, 10)):
        change = near_friendly(whole, unit)
        if 0 < abs(change) < part < whole + change and abs(change) <= most and part % unit:
            yield f"whole-to-{whole + change}", _mended(whole + change, part, -change)


def _both(whole: int, part: int) -> Iterator[Plan]:
    """Use a friendly number for each, at least one above: 82 - 39 as 80 - 40, and 3 more."""
    for unit, most, slug in BOTH:
        first, second = near_friendly(whole, unit), near_friendly(part, unit)
        if not first or not second or max(first, second) < 0 or first == second:
            continue
        if whole + first > part + second and abs(first - second) <= most:
            used = (whole + first, part + second)
            yield f"both-to-{slug}", _mended(*used, second - first)
            yield f"both-to-{slug}-one-by-one", _mended(*used, -first, second)


def _friendly_answer(whole: int, part: int) -> Iterator[Plan]:
    """Take a little more so that the answer is friendly: 584 - 176 as 584 - 184, and 8."""
    for unit, near in ((10, NEAR_TEN), (100, NEAR_HUNDRED)):
        over = (whole - part) % unit
        if 0 < over <= near and whole - part > over and whole % unit:
            yield f"to-answer-{whole - part - over}", _mended(whole, part + over, over)
