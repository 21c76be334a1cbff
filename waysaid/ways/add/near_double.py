"""Near double: from a double close by, a little more or less."""

from collections.abc import Iterator

from waysaid.ways.place import round_unit
from waysaid.ways.plan import MINUS, PLUS, Move, Moves, Plan, hops
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind

FARTHEST = 3
"""How far apart the numbers may be in their own unit (26 and 27; 60 and 70); our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield doubles of the smaller, the larger, the middle, and a round number near both."""
    small, large = sorted((problem.left, problem.right))
    if small == large:
        yield from _round(problem.left, problem.right)
        return
    gap = large - small
    unit = min(round_unit(small), round_unit(large))
    if gap <= _reach(small // unit) * unit and gap < small:
        yield "from-smaller", (_double(small), (Kind.MEND, 2 * small, PLUS, gap))
        yield "from-larger", (_double(large), (Kind.MEND, 2 * large, MINUS, gap))
    if gap == 2 * unit or (gap == 4 and (small + 2) % 5 == 0 and small > 4):
        yield "from-middle", (_double(small + gap // 2),)
    yield from _round(problem.left, problem.right)


def _reach(number: int) -> int:
    return FARTHEST if number >= 10 else FARTHEST - 1


def _double(number: int) -> Move:
    return (Kind.RECALL, number, PLUS, number)


def _round(left: int, right: int) -> Iterator[Plan]:
    """Double a round number within reach of both: 26 + 27 from 25 + 25, 421 + 387 from 400."""
    for unit, reach in ((5, 2), (10, 4), (25, 4), (50, 13), (100, 30)):
        middle = (left + right + unit) // (2 * unit) * unit
        off, other = left - middle, right - middle
        if middle >= 20 and off and other and max(abs(off), abs(other)) <= reach:
            double = _double(middle)
            slug = f"from-round-{unit}"
            yield slug, (double, *_mended(2 * middle, off, other))
            net = off + other
            if off * other > 0:
                together = (Kind.JOIN, abs(off), PLUS, abs(other))
                yield f"{slug}-together", (double, together, *_mended(2 * middle, net))
            elif net:
                sizes = sorted((abs(off), abs(other)))
                together = (Kind.TAKE, sizes[1], MINUS, sizes[0])
                yield f"{slug}-together", (double, together, *_mended(2 * middle, net))


def _mended(start: int, *changes: int) -> Moves:
    return hops(start, *changes, kind=Kind.MEND)
