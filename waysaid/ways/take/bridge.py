"""Bridge: come down to a friendly number, then take the rest."""

from collections.abc import Iterator

from waysaid.ways.place import MOST_PIECES, pieces, up_to
from waysaid.ways.plan import MINUS, Move, Plan, gathered, hops
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind, opened

REACH = 50
"""How far above a hundred a child would still come down to it; our choice."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the ways down through a ten or a hundred."""
    whole, part = problem.whole, problem.part
    yield from _to_ten(whole, part)
    yield from _to_hundred(whole, part)
    yield from _to_last(whole, part)
    yield from _down_to(whole, part)


def _to_ten(whole: int, part: int) -> Iterator[Plan]:
    down = whole % 10
    rest = part - down
    if not 0 < down < part or part % 10 == 0:
        return
    yield "to-ten", hops(whole, -down, -rest)
    yield "to-ten-then-see", _then_see(whole, part, down)
    if part < 100:
        cut = (Kind.SPLIT, part, MINUS, down)
        yield "open-then-ten", (cut, *hops(whole, -down, -rest))
        yield "opened-to-ten", (opened(part, down, rest), *hops(whole, -down, -rest))
    parts = tuple(-piece for piece in pieces(rest))
    if 1 < len(parts) <= MOST_PIECES:
        yield "to-ten-then-tens", hops(whole, -down, *parts)
    if len(parts) == 2:
        yield "to-ten-then-ones", hops(whole, -down, *reversed(parts))


def _then_see(whole: int, part: int, down: int) -> tuple[Move, ...]:
    """Down first, then see how much is still to take: 324 - 24, 86 - 24, 300 - 62."""
    first, last = hops(whole, -down, down - part)
    return first, (Kind.SPLIT, part, MINUS, down), last


def _to_hundred(whole: int, part: int) -> Iterator[Plan]:
    down, near = whole % 100, whole % 10
    rest = part - down
    if whole < 100 or not 0 < down < part or down > REACH or down == near:
        return
    yield "to-hundred", hops(whole, -down, -rest)
    yield "to-hundred-then-see", _then_see(whole, part, down)
    yield "open-then-hundred", ((Kind.SPLIT, part, MINUS, down), *hops(whole, -down, -rest))
    if near and part < 100:
        yield "ten-then-hundred", hops(whole, -near, near - down, -rest)


def _to_last(whole: int, part: int) -> Iterator[Plan]:
    """To the last ten (or hundred) above the answer, then the little left: 71 - 31, 40 - 3."""
    for unit, slug in ((10, "ten"), (100, "hundred")):
        left = up_to(whole - part, unit)
        lot = part - left
        if part % 10 and whole % unit and 0 < left < unit // 2 and lot > whole % unit:
            yield f"to-last-{slug}", hops(whole, -lot, -left)


def _down_to(whole: int, part: int) -> Iterator[Plan]:
    """Down from the whole to the other number, and the hops added up: 12 - 2, 10 - 3, 2 + 3."""
    for unit, farthest in ((10, 20), (100, 100)):
        down = whole % unit
        rest = whole - part - down
        if down and rest > 0 and whole > unit and down + rest <= farthest:
            slug = "ten" if unit == 10 else "hundred"
            yield f"down-to-by-{slug}", (*hops(whole, -down, -rest), *gathered(down, rest))
