"""Adjust: times a friendly number instead, then scaled back: times 5 as times 10, then half."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_share
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.shape import Product, Turn
from waysaid.ways.step import Kind

INSTEAD = {5: (10, 2), 50: (100, 2), 500: (1000, 2), 25: (100, 4), 250: (1000, 4)}
"""What stands for a factor, and by what it is scaled back."""


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the ways where either factor is five, fifty, 25 or their like."""
    if 1 in (bare(problem.left), bare(problem.right)):
        return
    for turn in problem.turns():
        if turn.factor in INSTEAD:
            yield from _scaled_back(turn, *INSTEAD[turn.factor])


def _scaled_back(turn: Turn, instead: int, back: int) -> Iterator[Plan]:
    left, right = turn.placed(instead)
    used = instead * turn.other
    start = (Kind.SCALE, left, TIMES, right)
    if can_share(used, back):
        yield f"{turn.tag}-as-{instead}", (start, (Kind.SCALE, used, OVER, back))
    if back == 4 and can_share(used, 2) and can_share(used // 2, 2):
        halves = ((Kind.SCALE, used, OVER, 2), (Kind.SCALE, used // 2, OVER, 2))
        yield f"{turn.tag}-as-{instead}-halved-twice", (start, *halves)
