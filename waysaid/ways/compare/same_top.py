"""As many parts of each: with the same top, the smaller parts make the smaller number."""

from collections.abc import Iterator
from math import lcm

from waysaid.number import parts
from waysaid.ways.compare.shape import Two, is_fraction, top_and_bottom
from waysaid.ways.plan import Plan
from waysaid.ways.step import renamed

_MOST_PARTS = 30
"""The largest top a child would scale to; our choice."""


def plans(two: Two) -> Iterator[Plan]:
    """Yield both fractions with the same top: 2/3 = 6/9 beside 6/10."""
    if not all(is_fraction(one) for one in two.both):
        return
    (top, bottom), (other, other_bottom) = (top_and_bottom(one) for one in two.both)
    if not top or not other or max(two.values) >= 1:
        return
    goal = lcm(top, other)
    if goal > _MOST_PARTS:
        return
    new = (parts(goal, bottom * (goal // top)), parts(goal, other_bottom * (goal // other)))
    steps = tuple(renamed(old, one) for old, one in zip(two.both, new, strict=True) if old != one)
    if steps:
        yield "same-top", steps
