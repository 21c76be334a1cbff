"""Jump: one number stays whole, the other goes on in place-value pieces."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_PIECES, chunks, pieces, up_to
from waysaid.ways.plan import Plan, hops
from waysaid.ways.shape import Sum

MOST_TENS = 5
"""The most single tens a child would go on by; our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the ways that start from either number."""
    for start, other, tag in problem.goes_on():
        parts = pieces(other)
        if len(parts) == 1 and start >= 10 and start % 10:
            yield f"at-once-from-{tag}", hops(start, other)
        if len(parts) > 1:
            if len(parts) <= MOST_PIECES:
                yield from _whole(start, parts, tag)
                yield from _with_bridge(start, parts, tag)
            yield from _tens_apart(start, other, tag)
            for slug, cut in chunks(other):
                yield f"{slug}-from-{tag}", hops(start, *cut)


def _whole(start: int, parts: tuple[int, ...], tag: str) -> Iterator[Plan]:
    """Go on largest piece first, or smallest first unless a ten comes of it: that is a bridge."""
    yield f"tens-first-from-{tag}", hops(start, *parts)
    if (start + parts[-1]) % 10 or start % 10 == 0:
        yield f"ones-first-from-{tag}", hops(start, *reversed(parts))


def _tens_apart(start: int, other: int, tag: str) -> Iterator[Plan]:
    """Go on by single tens: 46 + 35 as + 10, + 10, + 10, + 5."""
    tens, ones = other // 10, other % 10
    if ones and 1 < tens <= MOST_TENS:
        yield f"tens-one-by-one-from-{tag}", hops(start, *([10] * tens), ones)


def _with_bridge(start: int, parts: tuple[int, ...], tag: str) -> Iterator[Plan]:
    """Take the ones through the next ten: 28 + 24 as + 20, + 2, + 2."""
    gap, ones = up_to(start, 10), parts[-1]
    if 0 < gap < ones < 10:
        yield f"tens-then-bridge-from-{tag}", hops(start, *parts[:-1], gap, ones - gap)
