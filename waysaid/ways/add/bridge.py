"""Bridge: fill one number up to a friendly one, then add what is left of the other."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_PIECES, pieces, up_to
from waysaid.ways.plan import MINUS, Plan, hops
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind, opened

REACH = 50
"""How far below a hundred a child would still fill up to it; our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the ways that fill either number up."""
    for start, other, tag in problem.fills():
        yield from _to_five(start, other, tag)
        yield from _to_ten(start, other, tag)
        yield from _to_last(start, other, tag)
    for start, other, tag in problem.fills_hundreds():
        yield from _to_ten(start, other, tag)
    for start, other, tag in problem.starts():
        yield from _to_hundred(start, other, tag)


def _to_five(start: int, other: int, tag: str) -> Iterator[Plan]:
    """Through five, for small numbers: 4 + 3 as 4 + 1, 5 + 2."""
    if start < 5 < start + other <= 10:
        yield f"to-five-from-{tag}", hops(start, 5 - start, start + other - 5)


def _to_ten(start: int, other: int, tag: str) -> Iterator[Plan]:
    gap = up_to(start, 10)
    if not 0 < gap < other:
        return
    rest = other - gap
    yield f"to-ten-from-{tag}", hops(start, gap, rest)
    if other < 100:
        cut = (Kind.SPLIT, other, MINUS, gap)
        yield f"open-then-ten-from-{tag}", (cut, *hops(start, gap, rest))
        yield f"opened-to-ten-from-{tag}", (opened(other, gap, rest), *hops(start, gap, rest))
    parts = pieces(rest)
    if 1 < len(parts) <= MOST_PIECES:
        yield f"to-ten-then-tens-from-{tag}", hops(start, gap, *parts)
    if len(parts) == 2:
        yield f"to-ten-then-ones-from-{tag}", hops(start, gap, *reversed(parts))


def _to_hundred(start: int, other: int, tag: str) -> Iterator[Plan]:
    gap, near = up_to(start, 100), up_to(start, 10)
    if not 0 < gap < other or gap > REACH or gap == near:
        return
    rest = other - gap
    yield f"to-hundred-from-{tag}", hops(start, gap, rest)
    yield (
        f"open-then-hundred-from-{tag}",
        (
            (Kind.SPLIT, other, MINUS, gap),
            *hops(start, gap, rest),
        ),
    )
    if near and other < 100:
        yield f"ten-then-hundred-from-{tag}", hops(start, near, gap - near, rest)


def _to_last(start: int, other: int, tag: str) -> Iterator[Plan]:
    """To the last ten (or hundred) before the total, then the little that is left: 37 + 23, + 2."""
    for unit, slug in ((10, "ten"), (100, "hundred")):
        left = (start + other) % unit
        lot = other - left
        if left and start % unit and lot > up_to(start, unit) and left < unit // 2:
            yield f"to-last-{slug}-from-{tag}", hops(start, lot, left)
