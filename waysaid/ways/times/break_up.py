"""Break up: one factor or both cut into parts, the products of the parts put together."""

from collections.abc import Iterator

from waysaid.ways.factor import TWENTY_FIVE, bare, can_do, can_share, cuts
from waysaid.ways.place import pieces
from waysaid.ways.plan import OVER, PLUS, TIMES, Move, Moves, Plan, hops, summed
from waysaid.ways.shape import Product, Turn
from waysaid.ways.step import Kind, opened

MOST_PARTS = 8
"""The most products of parts: a number of four digits times one of two."""


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the ways to cut either factor, and both by place; the double of a digit needs none."""
    if 1 in (bare(problem.left), bare(problem.right)):
        return
    for turn in problem.turns():
        if turn.other == 2 and turn.factor < 10:
            continue
        for slug, parts in cuts(turn.factor):
            if all(can_do(part, turn.other) for part in parts):
                yield from _cut(turn, parts, slug)
        yield from _half_as_much(turn)
    yield from _both(problem.left, problem.right)


def _cut(turn: Turn, parts: tuple[int, ...], slug: str) -> Iterator[Plan]:
    """Cut one factor: largest part first, smallest first, and with the cut said.

    The rest beside a twenty-five never comes first: only after the 25 is it clear.
    """
    orders = [(parts, "")] if slug == TWENTY_FIVE else [(parts, ""), (parts[::-1], "-turned")]
    for order, name in orders:
        groups = _groups(turn, order)
        for how, sums in summed(Kind.JOIN, *(part * turn.other for part in order)):
            yield f"{turn.tag}-{slug}{name}{how}", (*groups, *sums)
    (_, sums), *_ = summed(Kind.JOIN, *(part * turn.other for part in parts))
    said = opened(turn.factor, *parts)
    yield f"{turn.tag}-{slug}-opened", (said, *_groups(turn, parts), *sums)
    if len(parts) > 2:
        yield f"{turn.tag}-{slug}-as-you-go", _as_you_go(turn, parts)


def _groups(turn: Turn, parts: tuple[int, ...]) -> tuple[Move, ...]:
    pairs = (turn.placed(part) for part in parts)
    return tuple((Kind.GROUP, left, TIMES, right) for left, right in pairs)


def _as_you_go(turn: Turn, parts: tuple[int, ...]) -> Moves:
    moves: list[Move] = []
    total = 0
    for part, group in zip(parts, _groups(turn, parts), strict=True):
        moves.append(group)
        if total:
            moves.append((Kind.JOIN, total, PLUS, part * turn.other))
        total += part * turn.other
    return tuple(moves)


def _half_as_much(turn: Turn) -> Iterator[Plan]:
    """Fifteen as ten and half of that again: 14 x 15 as 140, and 70."""
    tens, half = 10 * turn.other, 5 * turn.other
    if turn.factor == 15 and can_share(tens, 2):
        left, right = turn.placed(10)
        ten = (Kind.GROUP, left, TIMES, right)
        last = hops(tens, half, kind=Kind.JOIN)
        yield f"{turn.tag}-half-as-much", (ten, (Kind.SCALE, tens, OVER, 2), *last)


def _both(left: int, right: int) -> Iterator[Plan]:
    """Cut both by place: every piece of one times every piece of the other."""
    one, other = pieces(left), pieces(right)
    if min(len(one), len(other)) < 2 or len(one) * len(other) > MOST_PARTS:
        return
    pairs = [(first, second) for first in one for second in other]
    groups = tuple((Kind.GROUP, first, TIMES, second) for first, second in pairs)
    for how, sums in summed(Kind.JOIN, *(first * second for first, second in pairs)):
        yield f"both-by-place{how}", (*groups, *sums)
