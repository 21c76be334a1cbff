"""Split: both numbers split by place, like pieces put together, then the results."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_PIECES, columns, places, up_to
from waysaid.ways.plan import PLUS, Move, Moves, Plan, hops, joined
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind, opened

FIVE = 5


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the splits by place, and by fives for two single digits."""
    left, right = problem.left, problem.right
    if max(left, right) < 10:
        yield from _fives(left, right)
        return
    width = columns(left, right)
    pairs = tuple(zip(places(left, width), places(right, width), strict=True))
    filled = sum(1 for first, second in pairs if first or second)
    if filled <= MOST_PIECES and any(first and second for first, second in pairs):
        yield from _by_place(pairs)
        yield from _ones_bridged(pairs)
    if width > 2:
        yield from _in_two(left, right, 10, "tens-together")
        yield from _in_two(left, right, 100, "hundreds-and-rest")
    if width > MOST_PIECES:
        yield from _in_two(left, right, 1000, "thousands-and-rest")


_Pairs = tuple[tuple[int, int], ...]


def _by_place(pairs: _Pairs) -> Iterator[Plan]:
    """Join largest places first or ones first; add the results at the end or as they come."""
    down = tuple(reversed(pairs))
    for slug, order in (("tens-first", down), ("ones-first", pairs)):
        joins = _joins(order)
        sums = [first + second for first, second in down if first + second]
        if len(sums) > 1:
            yield slug, (*joins, *hops(sums[0], *sums[1:], kind=Kind.JOIN))
        if len(sums) > 2:
            yield f"{slug}-at-once", (*joins, joined(Kind.JOIN, *sums))
    if len(pairs) == 2:
        yield from _with_nothing(pairs)
    else:
        yield "as-you-go", _as_you_go(down)


def _joins(order: _Pairs) -> Moves:
    return tuple((Kind.JOIN, first, PLUS, second) for first, second in order if first and second)


def _with_nothing(pairs: _Pairs) -> Iterator[Plan]:
    """Say the join with nothing too: 34 + 20 as 30 + 20, 4 + 0, 50 + 4 (vic2)."""
    (ones, more), (tens, others) = pairs
    if (ones == 0) != (more == 0):
        both = ((Kind.JOIN, tens, PLUS, others), (Kind.JOIN, ones, PLUS, more))
        yield "ones-with-nothing", (*both, (Kind.JOIN, tens + others, PLUS, ones + more))


def _as_you_go(down: _Pairs) -> Moves:
    moves: list[Move] = []
    total = 0
    for first, second in down:
        if first and second:
            moves.append((Kind.JOIN, first, PLUS, second))
        if total and first + second:
            moves.append((Kind.JOIN, total, PLUS, first + second))
        total += first + second
    return tuple(moves)


def _ones_bridged(pairs: _Pairs) -> Iterator[Plan]:
    """Join the ones through ten: 56 + 37 as 50 + 30, 6 + 4, 10 + 3, 80 + 13 (vic2)."""
    (ones, more), (tens, others), *rest = pairs
    if rest or not (tens and others) or ones + more <= 10:
        return
    for start, other, tag in Sum(ones, more).starts():
        gap = up_to(start, 10)
        bridged = hops(start, gap, other - gap, kind=Kind.JOIN)
        last = (Kind.JOIN, tens + others, PLUS, ones + more)
        yield f"ones-bridged-from-{tag}", ((Kind.JOIN, tens, PLUS, others), *bridged, last)


def _in_two(left: int, right: int, unit: int, slug: str) -> Iterator[Plan]:
    """Cut both numbers in two at a place: 450 + 270, 6 + 5; or 400 + 200, 56 + 75."""
    small, more = left % unit, right % unit
    large, others = left - small, right - more
    if large and others and small and more:
        lot = (Kind.JOIN, large, PLUS, others)
        rest = (Kind.JOIN, small, PLUS, more)
        last = (Kind.JOIN, large + others, PLUS, small + more)
        yield slug, (lot, rest, last)
        yield f"{slug}-small-first", (rest, lot, last)


def _fives(left: int, right: int) -> Iterator[Plan]:
    """Split fives off: 8 + 5 as 5 + 5, 10 + 3; 8 + 7 as 5 + 5, 3 + 2, 10 + 5 (nz-stage)."""
    if min(left, right) < FIVE or left == right == FIVE:
        return
    over, more = left - FIVE, right - FIVE
    fives = (Kind.JOIN, FIVE, PLUS, FIVE)
    last = (Kind.JOIN, 2 * FIVE, PLUS, over + more)
    yield "fives", (fives, *_joins(((over, more),)), last)
    if over and more:
        yield "fives-opened", (opened(left, FIVE, over), opened(right, FIVE, more), fives, last)
