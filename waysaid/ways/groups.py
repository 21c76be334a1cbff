"""How the groups of a division, and so the number shared, are cut; how a division ends."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Operation
from waysaid.ways.factor import bare, can_do
from waysaid.ways.place import chunks, pieces
from waysaid.ways.plan import MINUS, OVER, PLUS, Move, Moves, Plan
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind, Step, worked

MOST_TENS = 5
"""The most single tens of groups a child would take out; our choice."""


def group_cuts(part: int, groups: int) -> Iterator[tuple[str, tuple[int, ...]]]:
    """Yield the cuts of the groups, each with a slug: every lot is a product done in one go.

    By place, in two at a place, ten first, ten by ten, five first, to a round number shared; a
    lot may come again. None where a power of ten is shared out or by.
    """
    if 1 in (bare(part), bare(groups)):
        return
    seen: set[tuple[int, ...]] = set()
    for slug, lots in _cuts(part, groups):
        if lots not in seen and min(lots) > 0 and all(can_do(part, lot) for lot in lots):
            seen.add(lots)
            yield slug, lots


def _cuts(part: int, groups: int) -> Iterator[tuple[str, tuple[int, ...]]]:
    found = pieces(groups)
    if len(found) > 1:
        yield "by-place", found
    yield from chunks(groups)
    tens, ones = divmod(groups, 10)
    if 1 < tens < 10:
        yield "ten-first", (10, groups - 10)
    if 1 < tens <= MOST_TENS:
        yield "tens-one-by-one", (10,) * tens + ((ones,) if ones else ())
    if 5 < groups < 10:
        yield "five-first", (5, groups - 5)
    if 10 < groups < 20:
        yield "five-by-five", (5, 5, groups - 10)
    round_groups = _round_groups(part, groups)
    if part * groups % 10 and round_groups:
        yield "round-first", (round_groups, groups - round_groups)


def _round_groups(part: int, groups: int) -> int:
    """Return the most groups, fewer than all, that make a multiple of ten: 15 of the 16 in 96."""
    return next((some for some in range(groups - 1, 1, -1) if part * some % 10 == 0), 0)


def taken_off(left: int, product: int) -> Move:
    """Return the move that takes a product from what is left: 16 - 15."""
    return (Kind.TAKE, left, MINUS, product)


def both_endings(slug: str, moves: Moves, problem: Leftover) -> Iterator[Plan]:
    """Yield a way as it is, with so many left over, and with the exact value: 5 1/3.

    That is said at once, or what is left is shared and put to the groups: 1 / 3 = 1/3.
    """
    yield f"{slug}-left-over", moves
    yield slug, (*moves, (Kind.JOIN, problem.whole, OVER, problem.part))
    share = Fraction(problem.left, problem.part)
    rest = Step(Kind.GROUP, Equation(Operation(OVER, problem.left, problem.part), share))
    yield f"{slug}-left-shared", (*moves, rest, worked(Kind.JOIN, PLUS, problem.groups, share))
