"""Adjust: use the whole near by, then put the difference right."""

from collections.abc import Iterator

from waysaid.number import exact
from waysaid.ways.fractions.amount import did, one_go
from waysaid.ways.fractions.benchmark_sum import NEAR
from waysaid.ways.fractions.shape import FractionSum, FractionTake
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield the next whole added, and what is too much taken off again."""
    for other, start, tag in problem.starts():
        gap = other.gap
        if not 0 < gap <= NEAR or not one_go(start.value, gap):
            continue
        near = exact(other.value + gap)
        total = exact(start.value + near)
        added = did(Kind.JOIN, start.number, PLUS, near)
        yield f"{tag}-up-to-whole", (added, did(Kind.MEND, total, MINUS, gap))


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the next whole taken and the rest put back; a whole taken from, and less to take."""
    whole, part = problem.whole, problem.part
    gap = part.gap
    if 0 < gap <= NEAR and one_go(whole.value, gap) and whole.value >= part.value + gap:
        near = exact(part.value + gap)
        off = did(Kind.TAKE, whole.number, MINUS, near)
        left = exact(whole.value - near)
        yield "part-up-to-whole", (off, did(Kind.MEND, left, PLUS, gap))
    gap = whole.gap
    if 0 < gap <= NEAR and part.top:
        near = exact(whole.value + gap)
        left = exact(near - part.value)
        if one_go(left, gap):
            off = did(Kind.TAKE, near, MINUS, part.number)
            yield "whole-up-to-whole", (off, did(Kind.MEND, left, MINUS, gap))
