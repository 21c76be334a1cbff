"""Near fact: from a product close by, some groups more or fewer."""

from collections.abc import Iterator

from waysaid.ways.factor import TABLES, bare, can_do, knows, near
from waysaid.ways.plan import MINUS, TIMES, Move, Plan, hops
from waysaid.ways.shape import Product, Turn
from waysaid.ways.step import Kind


def plans(problem: Product) -> Iterator[Plan]:
    """Yield the ways from friendly numbers of groups, from the next fact, and from a square."""
    if 1 in (bare(problem.left), bare(problem.right)):
        return
    for turn in problem.turns():
        for friendly, slug in near(turn.factor) if turn.other > 2 else ():
            yield from _from(turn, friendly, slug)
        yield from _next_fact(turn)
    yield from _square_between(problem.left, problem.right)


def _from(turn: Turn, friendly: int, slug: str) -> Iterator[Plan]:
    """Go to the product of the friendly number, then put the groups too many or few right."""
    off = turn.factor - friendly
    if not can_do(friendly, turn.other):
        return
    start = _group(turn, friendly)
    used, change = friendly * turn.other, off * turn.other
    name = f"{turn.tag}-{slug}"
    many = abs(off)
    if can_do(many, turn.other):
        yield name, (start, *_mended(used, change))
    if off < -1 and can_do(many, turn.other):
        yield f"{name}-groups-said", (start, _group(turn, many), *_mended(used, change))
    if many == 2:
        yield f"{name}-one-by-one", (start, *_mended(used, change // 2, change // 2))


def _mended(used: int, *changes: int) -> tuple[Move, ...]:
    return hops(used, *changes, kind=Kind.MEND)


def _group(turn: Turn, groups: int) -> Move:
    left, right = turn.placed(groups)
    return (Kind.GROUP, left, TIMES, right)


def _next_fact(turn: Turn) -> Iterator[Plan]:
    """From the fact one below or above, where it is in the tables; from a square of any kind."""
    for off, slug in ((-1, "one-fewer"), (1, "one-more")):
        groups = turn.factor + off
        table = max(groups, turn.factor, turn.other) <= TABLES
        square = groups == turn.other
        if groups > 1 and (table or square) and knows(groups, turn.other):
            change = -off * turn.other
            mend = _mended(groups * turn.other, change)
            yield f"{turn.tag}-{slug}", (_group(turn, groups), *mend)


def _square_between(left: int, right: int) -> Iterator[Plan]:
    """From the square of the number between: 7 x 9 as 8 x 8, less 1; 18 x 22 as 400, less 4."""
    between, off = (left + right) // 2, abs(left - right) // 2
    tidy = 3 < between <= TABLES if off == 1 else False
    if (left + right) % 2 or not 0 < off <= 2 or not (tidy or between % 10 == 0):
        return
    if knows(between, between):
        square = (Kind.GROUP, between, TIMES, between)
        yield "square-between", (square, (Kind.MEND, between**2, MINUS, off**2))
