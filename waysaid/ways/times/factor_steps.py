"""Factor steps: one factor in the factors it is made of, one after another."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do, factored
from waysaid.ways.plan import PLUS, TIMES, Move, Moves, Plan
from waysaid.ways.shape import Product, Turn
from waysaid.ways.step import Kind

FRIENDLY = (10, 100)
"""What two factors taken from both numbers are to make; our choice."""


def plans(problem: Product) -> Iterator[Plan]:
    """Yield either factor in steps, doubles also as sums, and a ten made from both.

    A double needs no steps.
    """
    if 1 in (bare(problem.left), bare(problem.right)):
        return
    for turn in problem.turns():
        for steps in factored(turn.factor) if turn.other > 2 else ():
            yield from _in_steps(turn, steps)
    yield from _ten_from_both(problem.left, problem.right)


def _in_steps(turn: Turn, steps: tuple[int, ...]) -> Iterator[Plan]:
    """Multiply by each in turn; where one is 2, also by adding a number to itself."""
    running = turn.other
    moves: list[Move] = []
    added: list[Move] = []
    for by in steps:
        if not can_do(running, by):
            return
        left, right = turn.placed(by) if running == turn.other else (running, by)
        moves.append((Kind.SCALE, left, TIMES, right))
        added.append((Kind.JOIN, running, PLUS, running) if by == 2 else moves[-1])
        running *= by
    slug = f"{turn.tag}-by-{'-'.join(map(str, steps))}"
    yield slug, tuple(moves)
    if 2 in steps:
        yield f"{slug}-added", tuple(added)
    if steps[0] == 2 and 2 in steps[1:]:
        yield f"{slug}-then-added", (moves[0], *added[1:])


def _ten_from_both(left: int, right: int) -> Iterator[Plan]:
    """Take a factor from each that make ten or a hundred: 15 x 16 as 5 x 2, 3 x 8, 10 x 24.

    A number that ends in zero has its ten already.
    """
    if left % 10 == 0 or right % 10 == 0:
        return
    for first in range(2, 51):
        for friendly in FRIENDLY:
            second, over = divmod(friendly, first)
            if over or second < 2 or left % first or right % second:
                continue
            rest = left // first, right // second
            if 1 in rest or not can_do(*rest) or 1 in (bare(first), bare(second)):
                continue
            yield f"{first}-and-{second}", _made(first, second, rest)


def _made(first: int, second: int, rest: tuple[int, int]) -> Moves:
    friendly, others = first * second, rest[0] * rest[1]
    return (
        (Kind.GROUP, first, TIMES, second),
        (Kind.GROUP, rest[0], TIMES, rest[1]),
        (Kind.SCALE, friendly, TIMES, others),
    )
