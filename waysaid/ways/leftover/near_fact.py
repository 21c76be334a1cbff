"""Near fact: a friendly number of groups takes a little too much: 58 / 6 from 60 / 6."""

from collections.abc import Iterator

from waysaid.ways.factor import can_do
from waysaid.ways.groups import both_endings, taken_off
from waysaid.ways.plan import MINUS, OVER, Plan
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield one group fewer than a ten, a hundred or five, and what the last group lacks."""
    part, friendly = problem.part, problem.groups + 1
    if (friendly % 10 and friendly not in (5, 25)) or not can_do(part, friendly):
        return
    more = part * friendly
    short = more - problem.whole
    start = (Kind.GROUP, more, OVER, part)
    fewer = (Kind.MEND, friendly, MINUS, 1)
    moves = (start, taken_off(more, problem.whole), fewer, taken_off(part, short))
    yield from both_endings(f"one-fewer-than-{friendly}", moves, problem)
