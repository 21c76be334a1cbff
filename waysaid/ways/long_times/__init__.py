"""Ways to multiply two long numbers, 1234 x 56, in steps of one digit times a long number.

A child notes such steps down; each is still done in one go.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.number import Problem, Sign
from waysaid.ways.factor import TABLES, bare, factored
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.place import pieces, up_to
from waysaid.ways.plan import TIMES, Move, Plan, hops, scaled
from waysaid.ways.shape import Product, Turn, to_do
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family

MOST_DIGITS = 4
"""How long a number may be for a digit times it to be one step, noted down; our choice."""
FARTHEST = 4
"""How far below a ten a number may be for the ten to be taken instead; our choice."""
MOST_PIECES = 3
"""Into how many pieces a long number is cut; our choice."""


@dataclass(frozen=True, slots=True)
class Long:
    """A product of a number of three or four digits by one of two to four, zeros left out."""

    whole: Product


def shapes_of(problem: Problem) -> tuple[Long, ...]:
    """Return the shape of a long product; none for any other problem."""
    asked = to_do(problem)
    if asked is None or asked.sign is not Sign.TIMES:
        return ()
    left, right = asked.left, asked.right
    if type(left) is not int or type(right) is not int or min(left, right) < 1:
        return ()
    return (Long(Product(left, right)),) if is_long(left, right) else ()


def is_long(left: int, right: int) -> bool:
    """Tell whether a product is too long for steps of a size to do without a note."""
    small, large = sorted((bare(left), bare(right)))
    return small > TABLES and 100 < large < 10**MOST_DIGITS


def in_one_step(one: int, other: int) -> bool:
    """Tell whether a digit, zeros left out, is multiplied by a number of up to four digits."""
    small, large = sorted((bare(one), bare(other)))
    return small < 10 and large < 10**MOST_DIGITS


def _group(turn: Turn, groups: int) -> Move:
    left, right = turn.placed(groups)
    return (Kind.GROUP, left, TIMES, right)


def break_up_plans(problem: Long) -> Iterator[Plan]:
    """Yield either number cut by place, the other kept whole: 1234 x 50 and 1234 x 6."""
    for turn in problem.whole.turns():
        parts = pieces(turn.factor)
        if not 1 < len(parts) <= MOST_PIECES:
            continue
        for order, slug in ((parts, "by-place"), (parts[::-1], "by-place-turned")):
            groups = [_group(turn, part) for part in order]
            sums = hops(*(part * turn.other for part in order), kind=Kind.JOIN)
            yield f"{turn.tag}-{slug}", (*groups, *sums)


def near_plans(problem: Long) -> Iterator[Plan]:
    """Yield the ten above instead, less the groups too many: 1234 x 60, less 1234 x 4."""
    for turn in problem.whole.turns():
        gap = up_to(turn.factor, 10)
        friendly = turn.factor + gap
        if not 0 < gap <= FARTHEST or not in_one_step(friendly, turn.other):
            continue
        used, many = friendly * turn.other, gap * turn.other
        less = hops(used, -many, kind=Kind.MEND)
        extra = (_group(turn, gap),) if gap > 1 else ()
        yield f"{turn.tag}-up-to-{friendly}", (_group(turn, friendly), *extra, *less)


def factor_plans(problem: Long) -> Iterator[Plan]:
    """Yield the factors of either number one after another: 1234 x 7, then times 8."""
    for turn in problem.whole.turns():
        for steps in factored(turn.factor):
            first, *rest = steps
            running = turn.other
            moves: list[Move] = []
            for by in steps:
                if not in_one_step(running, by):
                    break
                moves.append((Kind.SCALE, running, TIMES, by))
                running *= by
            if rest and len(moves) == len(steps):
                left, right = turn.placed(first)
                told = ((Kind.SCALE, left, TIMES, right), *moves[1:])
                yield f"{turn.tag}-by-{'-'.join(map(str, steps))}", told


def double_plans(problem: Long) -> Iterator[Plan]:
    """Yield one number halved and the other doubled to the last: 1234 x 56 as 9872 x 7."""
    for turn in problem.whole.turns():
        less, more = turn.factor, turn.other
        said: list[Step] = []
        while less % 2 == 0 and less > 9 and bare(2 * more) < 10**MOST_DIGITS:
            after = turn.placed(less // 2)[0 if turn.first else 1], 2 * more
            new = after if turn.first else after[::-1]
            old = (less, more) if turn.first else (more, less)
            said.append(scaled(TIMES, old, new))
            less, more = less // 2, 2 * more
        if said and less < 10:
            last = (less, more) if turn.first else (more, less)
            yield f"{turn.tag}-again-{len(said)}", (*said, (Kind.RECALL, last[0], TIMES, last[1]))


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.BREAK_UP, Long, break_up_plans),
    Maker(Family.NEAR_FACT, Long, near_plans),
    Maker(Family.FACTOR_STEPS, Long, factor_plans),
    Maker(Family.DOUBLE_HALVE, Long, double_plans),
)
IN_PARTS = tuple(maker for maker in MAKERS if maker.family is Family.BREAK_UP)
"""The ways in which the whole numbers of two decimals are multiplied; our choice."""

__all__ = ["IN_PARTS", "MAKERS", "is_long", "shapes_of"]
