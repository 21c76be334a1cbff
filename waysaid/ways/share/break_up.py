"""Break up: the number shared cut into parts, each shared, the shares put together."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do, can_share
from waysaid.ways.groups import group_cuts
from waysaid.ways.place import pieces
from waysaid.ways.plan import OVER, PLUS, Plan, summed
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind, opened


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield the cuts by place where each piece can be shared, and those into friendly lots."""
    part = problem.part
    seen: set[tuple[int, ...]] = set()
    for slug, lots in _cuts(problem):
        shared = tuple(lot * part for lot in lots)
        if shared in seen:
            continue
        seen.add(shared)
        shares = tuple((Kind.GROUP, lot, OVER, part) for lot in shared)
        for how, sums in summed(Kind.JOIN, *lots):
            yield f"{slug}{how}", (*shares, *sums)
        (_, sums), *_ = summed(Kind.JOIN, *lots)
        yield f"{slug}-opened", (opened(problem.whole, *shared), *shares, *sums)
    yield from _halves(problem)


def _cuts(problem: Quotient) -> Iterator[tuple[str, tuple[int, ...]]]:
    whole, part = problem.whole, problem.part
    found = pieces(whole)
    easy = bare(part) > 1 and bare(problem.groups) > 1
    if len(found) > 1 and easy and all(can_share(piece, part) for piece in found):
        yield "pieces", tuple(piece // part for piece in found)
    for slug, lots in group_cuts(part, problem.groups):
        if len(set(lots)) == len(lots):
            yield slug, lots


def _halves(problem: Quotient) -> Iterator[Plan]:
    """Share half, and the other half gives as much: 96 / 6 as 48 / 6 = 8, 8 + 8 = 16."""
    half, part, share = problem.whole // 2, problem.part, problem.groups // 2
    if problem.groups % 2 or share < 3 or 1 in (bare(part), bare(share)):
        return
    if can_do(2, half) and can_share(half, part):
        moves = ((Kind.GROUP, half, OVER, part), (Kind.JOIN, share, PLUS, share))
        yield "halves", moves
        yield "halves-opened", (opened(problem.whole, half, half), *moves)
