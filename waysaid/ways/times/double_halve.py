"""Double and halve: one factor up, the other down by as much; the product stays."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do
from waysaid.ways.plan import OVER, TIMES, Move, Plan, scaled
from waysaid.ways.shape import Product, Turn
from waysaid.ways.step import Kind, Step

BY = (2, 3, 4, 5)
"""By what a child would move a factor across; beyond doubles our choice."""
MOST_DOUBLES = 3
"""How often a child would double and halve; our choice."""


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the ways that make either factor smaller, by doubles again and again or by another.

    A double needs none.
    """
    if 1 in (bare(problem.left), bare(problem.right)):
        return
    for turn in problem.turns():
        if turn.other == 2:
            continue
        for by in BY:
            yield from _once(turn, by)
        yield from _again(turn)


def _once(turn: Turn, by: int) -> Iterator[Plan]:
    """Move a factor across once: said of both at once, of each in turn, or of the smaller only.

    The last where ten or a hundred comes of it: half of 48, then times 10.
    """
    less, over = divmod(turn.factor, by)
    more = turn.other * by
    if over or less < 2 or not _easier(less, more, turn, by) or not can_do(by, less):
        return
    new = _placed(turn, less, more)
    last = (Kind.RECALL, new[0], TIMES, new[1])
    slug = f"{turn.tag}-by-{by}"
    yield slug, (_said(turn.placed(turn.factor), new), last)
    down: Move = (Kind.SCALE, turn.factor, OVER, by)
    up: Move = (Kind.SCALE, turn.other, TIMES, by)
    yield f"{slug}-in-steps", (*((down, up) if turn.first else (up, down)), last)
    if bare(more) == 1:
        yield f"{slug}-halved-only", (down, last)


def _easier(less: int, more: int, turn: Turn, by: int) -> bool:
    """Tell whether the new product is done in one go, and past doubling is about a round number."""
    nearly_round = more % 10 in (0, 9) if by == 3 else more % 10 == 0
    done = can_do(less, more) and can_do(turn.other, by)
    return done and (by == 2 or nearly_round or bare(more) < bare(turn.other))


def _again(turn: Turn) -> Iterator[Plan]:
    """Double and halve two or three times, each time said: 24 x 25, 12 x 50, 6 x 100."""
    less, more = turn.factor, turn.other
    said: list[Step] = []
    while less % 2 == 0 and less > 3 and len(said) < MOST_DOUBLES:
        before = _placed(turn, less, more)
        if not can_do(more, 2) or not can_do(less // 2, 2):
            return
        less, more = less // 2, more * 2
        after = _placed(turn, less, more)
        said.append(_said(before, after))
        if len(said) > 1 and can_do(less, more):
            last = (Kind.RECALL, after[0], TIMES, after[1])
            yield f"{turn.tag}-again-{len(said)}", (*said, last)


def _placed(turn: Turn, less: int, more: int) -> tuple[int, int]:
    return (less, more) if turn.first else (more, less)


def _said(before: tuple[int, int], after: tuple[int, int]) -> Step:
    return scaled(TIMES, before, after)
