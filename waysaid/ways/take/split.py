"""Split: both numbers split by place, like taken from like, then the results together.

A piece may come out below nothing: 63 - 28 as 60 - 20 = 40, 3 - 8 = -5, 40 - 5 = 35.
"""

from collections.abc import Iterator

from waysaid.ways.place import MOST_PIECES, columns, places
from waysaid.ways.plan import MINUS, Moves, Plan, hops
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind, opened

LEAST_SHORT = 20
"""The smallest whole for which a child would let a piece fall below nothing; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the splits by place, in two, and with a ten opened."""
    whole, part = problem.whole, problem.part
    if whole < 10 or (whole < LEAST_SHORT and whole % 10 < part % 10):
        return
    width = columns(whole)
    pairs = tuple(zip(places(whole, width), places(part, width), strict=True))
    if sum(1 for first, second in pairs if first or second) <= MOST_PIECES:
        yield from _by_place(pairs)
    if width > 2:
        yield from _in_two(whole, part, 10, "tens-together")
        yield from _in_two(whole, part, 100, "hundreds-and-rest")
        if width > MOST_PIECES:
            yield from _in_two(whole, part, 1000, "thousands-and-rest")
    else:
        yield from _ten_opened(whole, part)


def _by_place(pairs: tuple[tuple[int, int], ...]) -> Iterator[Plan]:
    """Take largest places first or ones first; the results are put together from the largest."""
    down = tuple(reversed(pairs))
    if not _takes(pairs):
        return
    left = [first - second for first, second in down if first != second]
    gather = _gathered(left)
    for slug, order in (("tens-first", down), ("ones-first", pairs)):
        yield slug, (*_takes(order), *gather)
    if len(pairs) > 2:
        yield "as-you-go", _as_you_go(down)


def _takes(order: tuple[tuple[int, int], ...]) -> Moves:
    return tuple(
        (Kind.TAKE, first, MINUS, second)
        for first, second in order
        if first != second and first and second
    )


def _gathered(left: list[int]) -> Moves:
    """Put what is left together, and take what was short."""
    moves = hops(left[0], *left[1:], kind=Kind.JOIN)
    return tuple((Kind.TAKE, *move[1:]) if move[2] is MINUS else move for move in moves)


def _as_you_go(down: tuple[tuple[int, int], ...]) -> Moves:
    moves: Moves = ()
    total = 0
    for first, second in down:
        moves += _takes(((first, second),))
        if total:
            moves += _gathered([total, first - second])
        total += first - second
    return moves


def _in_two(whole: int, part: int, unit: int, slug: str) -> Iterator[Plan]:
    """Cut both in two at a place: 603 - 384 as 600 - 380, 3 - 4, 220 - 1 (nz-ao)."""
    small, less = whole % unit, part % unit
    large, others = whole - small, part - less
    if large > others > 0 and small and less and small != less:
        first, second = (Kind.TAKE, large, MINUS, others), (Kind.TAKE, small, MINUS, less)
        last = _gathered([large - others, small - less])
        yield slug, (first, second, *last)
        yield f"{slug}-small-first", (second, first, *last)


def _ten_opened(whole: int, part: int) -> Iterator[Plan]:
    """Open a ten first, then tens from tens and ones from ones: 42 = 30 + 12 and on."""
    ones, less = whole % 10, part % 10
    tens, others = whole - ones - 10, part - less
    if ones < less and others and tens > others:
        from_tens = (Kind.TAKE, tens, MINUS, others)
        from_ones = (Kind.TAKE, ones + 10, MINUS, less)
        last = hops(tens - others, ones + 10 - less, kind=Kind.JOIN)
        yield "ten-opened", (opened(whole, tens, ones + 10), from_tens, from_ones, *last)
