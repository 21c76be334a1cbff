"""Add up: find the difference by going up from the smaller number, then add the hops."""

from collections.abc import Iterator

from waysaid.ways.place import pieces, up_to
from waysaid.ways.plan import MINUS, Moves, Plan, gathered, hops
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind

MOST_HOPS = 4
"""The most hops a child would keep to add up afterwards; our choice."""
FAR_UP = 30
"""From here on no child goes up from a single digit to find a difference; our choice."""
OVERSHOOT = 3
"""How far past the whole a child would go by tens and come back; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the ways up, unless it would be a long way up from a single digit."""
    if problem.part >= 10 or problem.whole < FAR_UP:
        yield from ways_up(problem.part, problem.left_over)


def ways_up(part: int, gap: int) -> Iterator[Plan]:
    """Yield the ways up in one hop, by place-value pieces, and through tens and hundreds."""
    yield "one-hop", hops(part, gap)
    parts = pieces(gap)
    if 1 < len(parts) <= MOST_HOPS:
        yield "tens-first", _up(part, *parts)
        yield "ones-first", _up(part, *reversed(parts))
        if len(parts) > 2:
            yield "hundreds-then-rest", _up(part, parts[0], gap - parts[0])
    yield from _through(part, gap)
    over = up_to(gap, 10)
    if 0 < over <= OVERSHOOT and gap > 10:
        past = gap + over
        back = ((Kind.SPLIT, past, MINUS, over),)
        yield "past-and-back", (*hops(part, past, -over), *back)


def _up(start: int, *sizes: int) -> Moves:
    """Return the hops and their sum."""
    return (*hops(start, *sizes), *gathered(*sizes))


def _through(part: int, gap: int) -> Iterator[Plan]:
    """Go through the next ten, the next hundred, or both, then the rest whole or in pieces."""
    ten, hundred = up_to(part, 10), up_to(part, 100)
    stops: list[tuple[str, tuple[int, ...]]] = []
    if 0 < ten < gap:
        stops.append(("ten", (ten,)))
    if ten < hundred < gap:
        stops.append(("hundred", (hundred,)))
        if ten:
            stops.append(("ten-and-hundred", (ten, hundred - ten)))
    for slug, sizes in stops:
        rest = gap - sum(sizes)
        yield f"through-{slug}", _up(part, *sizes, rest)
        parts = pieces(rest)
        if 1 < len(parts) <= MOST_HOPS - len(sizes):
            yield f"through-{slug}-then-tens", _up(part, *sizes, *parts)
        if len(parts) > 2:
            cut = parts[0], rest - parts[0]
            yield f"through-{slug}-then-hundreds", _up(part, *sizes, *cut)
