"""Chunk out: friendly multiples are taken out of the number, then the groups are counted."""

from collections.abc import Iterator

from waysaid.ways.groups import group_cuts
from waysaid.ways.plan import MINUS, TIMES, Move, Plan, gathered
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the lots with what they take away said, and with it left unsaid."""
    part = problem.part
    for slug, lots in group_cuts(part, problem.groups):
        count = gathered(*lots)
        taken: list[Move] = []
        left = problem.whole
        for lot in lots:
            taken.append((Kind.GROUP, lot, TIMES, part))
            if lot * part < left:
                taken.append((Kind.TAKE, left, MINUS, lot * part))
            left -= lot * part
        yield f"{slug}-taken", (*taken, *count)
        groups = tuple((Kind.GROUP, lot, TIMES, part) for lot in lots)
        yield slug, (*groups, *count)
