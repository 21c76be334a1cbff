"""Scale both: both numbers halved, doubled or otherwise scaled alike; the quotient stays."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do, can_share
from waysaid.ways.plan import OVER, TIMES, Plan, scaled
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind, Step

DOWN = (2, 3, 5, 10, 100)
"""By what a child would make both smaller; our choice."""
UP = (2, 4)
"""By what a child would make both larger, to divide by a rounder number; our choice."""
MOST_TIMES = 3
"""How often a child would scale in a row; our choice."""

_Pair = tuple[int, int]


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the ways down to a smaller divisor and up to a round one; none where it is round."""
    start = (problem.whole, problem.part)
    if bare(problem.part) == 1:
        return
    yield from _down(start, (), "")
    for by in UP:
        after = (start[0] * by, start[1] * by)
        fifteens = by == 2 and start[1] % 10 == 5 and can_share(*after)
        if bare(after[1]) == 1 or fifteens:
            yield from _scaled(start, after, f"up-by-{by}")
    once = (start[0] * 2, start[1] * 2)
    twice = (start[0] * 4, start[1] * 4)
    if bare(twice[1]) == 1 and bare(once[1]) > 1 and can_do(2, once[0]):
        said = (scaled(OVER, start, once), scaled(OVER, once, twice))
        yield "up-by-2-2", (*said, (Kind.RECALL, twice[0], OVER, twice[1]))


def _down(pair: _Pair, said: tuple[Step, ...], slug: str) -> Iterator[Plan]:
    """Go down from a pair in every sensible order, halving again where it was halved."""
    whole, part = pair
    for by in DOWN:
        if whole % by or part % by or part == by or (by == 5 and part % 10 == 0):
            continue
        if (said and not slug.endswith(_after(by))) or not (
            can_do(by, whole // by) and can_do(by, part // by)
        ):
            continue
        after = (whole // by, part // by)
        name = f"{slug}-by-{by}" if slug else f"down-by-{by}"
        steps = (*said, scaled(OVER, pair, after))
        if can_share(*after):
            yield name, (*steps, (Kind.RECALL, after[0], OVER, after[1]))
            if not said:
                yield from _in_steps(pair, after, by)
        if len(steps) < MOST_TIMES:
            yield from _down(after, steps, name)


def _after(by: int) -> tuple[str, ...]:
    """Return the ends of slugs after which a child would scale by a number."""
    return {2: ("by-2", "by-10", "by-3"), 3: ("by-3", "by-10", "by-2")}.get(by, ())


def _in_steps(before: _Pair, after: _Pair, by: int) -> Iterator[Plan]:
    """Say each number scaled by itself: 246 / 2 = 123, 6 / 2 = 3, 123 / 3."""
    moves = tuple((Kind.SCALE, number, OVER, by) for number in before)
    yield f"down-by-{by}-in-steps", (*moves, (Kind.RECALL, after[0], OVER, after[1]))


def _scaled(before: _Pair, after: _Pair, slug: str) -> Iterator[Plan]:
    """Go up in one: said of both at once, of each number by itself, or of the whole only."""
    by = after[1] // before[1]
    last = (Kind.RECALL, after[0], OVER, after[1])
    if not can_do(by, before[0]):
        return
    yield slug, (scaled(OVER, before, after), last)
    moves = tuple((Kind.SCALE, number, TIMES, by) for number in before)
    yield f"{slug}-in-steps", (*moves, last)
    if bare(after[1]) == 1:
        yield f"{slug}-whole-only", (moves[0], last)
