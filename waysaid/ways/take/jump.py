"""Jump: the whole stays whole, the other number goes off in place-value pieces."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_PIECES, chunks, pieces
from waysaid.ways.plan import Plan, hops
from waysaid.ways.shape import Difference

TEENS_END = 20
"""Below it a one-digit number taken off is a fact, known or worked out; our choice."""
MOST_TENS = 5
"""The most single tens a child would go back by; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the ways to take the part off piece by piece."""
    whole, part = problem.whole, problem.part
    parts = tuple(-piece for piece in pieces(part))
    if len(parts) < 2:
        if part and (whole % 10 if part >= 10 else whole >= TEENS_END):
            yield "at-once", hops(whole, -part)
        return
    if len(parts) <= MOST_PIECES:
        yield from _in_pieces(whole, parts)
    tens, ones = part // 10, part % 10
    if ones and 1 < tens <= MOST_TENS:
        yield "tens-one-by-one", hops(whole, *([-10] * tens), -ones)
    down = whole % 10
    if 0 < down < ones and len(parts) <= MOST_PIECES:
        yield "tens-then-bridge", hops(whole, *parts[:-1], -down, down - ones)
    for slug, (lot, rest) in chunks(part):
        yield slug, hops(whole, -lot, -rest)


def _in_pieces(whole: int, parts: tuple[int, ...]) -> Iterator[Plan]:
    """Largest piece first; smallest first unless a ten comes of it: that is a bridge."""
    yield "tens-first", hops(whole, *parts)
    if (whole + parts[-1]) % 10 or whole % 10 == 0:
        yield "ones-first", hops(whole, *reversed(parts))
