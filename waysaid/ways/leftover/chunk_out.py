"""Chunk out: friendly multiples are taken out until less than a group is left."""

from collections.abc import Iterator

from waysaid.ways.groups import both_endings, group_cuts, taken_off
from waysaid.ways.plan import TIMES, Move, Plan, gathered
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the lots, each taken from what is left by then."""
    part = problem.part
    for slug, lots in group_cuts(part, problem.groups):
        moves: list[Move] = []
        left = problem.whole
        for lot in lots:
            moves += [(Kind.GROUP, lot, TIMES, part), taken_off(left, lot * part)]
            left -= lot * part
        yield from both_endings(f"{slug}-taken", (*moves, *gathered(*lots)), problem)
