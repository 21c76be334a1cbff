"""A part of a whole number: the share of one part worked as a division, then so many of them."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from waysaid.number import Number, Sign, exact
from waysaid.ways.factor import can_do, can_share
from waysaid.ways.fractions.amount import did
from waysaid.ways.fractions.shape import PartOf
from waysaid.ways.fractions.units import Steps
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import MINUS, OVER, PLUS, TIMES, Move, Moves, Plan, gathered
from waysaid.ways.shape import Product, Quotient
from waysaid.ways.share import break_up, chunk_out, factor_steps, near_fact, think_times
from waysaid.ways.step import Kind
from waysaid.ways.times.break_up import plans as times_broken
from waysaid.ways.way import Family

TENS = 10
FIVE = 5
ONE_BY_ONE = ("tens-one-by-one", "five-by-five", "up-tens-one-by-one")
"""Cuts of a division that are too long where more is to be done after it; our choice."""


def times(number: int, by: int) -> Moves:
    """Return the moves of a product: none for one, in one go, or the larger number broken up."""
    if by == 1:
        return ()
    if can_do(number, by):
        return ((Kind.SCALE, number, TIMES, by),)
    for _, moves in times_broken(Product(number, by)):
        return moves
    return ((Kind.SCALE, number, TIMES, by),)


def takings(problem: PartOf, share: int) -> Iterator[tuple[str, Moves]]:
    """Yield how the parts are made from one of them, each with a slug: none for one part."""
    yield "", times(share, problem.top)
    if problem.top == 2:
        yield "-added", ((Kind.JOIN, share, PLUS, share),)


Quotients = Callable[[Quotient], Iterator[Plan]]


def through(plans: Quotients) -> Callable[[PartOf], Iterator[Plan]]:
    """Return the plans that find one part as a division is worked, then take so many."""

    def made(problem: PartOf) -> Iterator[Plan]:
        share = problem.number // problem.bottom
        if not problem.even or share < 2 or problem.bottom < 2:
            return
        last = times(share, problem.top)
        for slug, moves in plans(Quotient(problem.number, problem.bottom)):
            if not slug.startswith(ONE_BY_ONE):
                yield slug, (*moves, *last)

    return made


def share_first(problem: PartOf) -> Iterator[Plan]:
    """Yield one part first, then so many: 57 / 3 = 19, 19 x 2 = 38."""
    number, bottom = problem.number, problem.bottom
    if problem.top == 1:
        return
    if problem.even and can_share(number, bottom):
        share = number // bottom
        for how, moves in takings(problem, share):
            yield f"share-first{how}", ((Kind.SCALE, number, OVER, bottom), *moves)
        unit = did(Kind.GROUP, *_part(problem))
        yield "one-part-said", (unit, *times(share, problem.top))
    elif not problem.even and number < TENS * bottom:
        cut = did(Kind.SCALE, number, OVER, bottom)
        share_of = exact(Fraction(number, bottom))
        yield "share-first", (cut, did(Kind.SCALE, share_of, TIMES, problem.top))


def _part(problem: PartOf) -> tuple[Number, Sign, Number]:
    one = exact(Fraction(1, problem.bottom))
    pair = problem.pair(one, problem.number)
    return pair[0], problem.sign, pair[1]


def times_first(problem: PartOf) -> Iterator[Plan]:
    """Yield so many of the number first, then one part of that: 57 x 2 = 114, 114 / 3 = 38."""
    many, bottom = problem.number * problem.top, problem.bottom
    if problem.top == 1 or not can_do(problem.number, problem.top):
        return
    if (many % bottom and many < TENS * bottom) or can_share(many, bottom):
        made: Move = (Kind.SCALE, problem.number, TIMES, problem.top)
        yield "times-first", (made, did(Kind.SCALE, many, OVER, bottom))


def _lots(share: int) -> Iterator[tuple[str, tuple[int, ...]]]:
    """Yield the groups taken out, each with a slug: ten, five and the rest; ten and the rest."""
    tens, ones = share - share % TENS, share % TENS
    if tens and ones > FIVE:
        yield "tens-five-and-rest", (tens, FIVE, ones - FIVE)
        if tens > TENS:
            yield "tens-and-rest", (tens, ones)
    elif tens and ones:
        yield "tens-and-rest", (tens, ones)
    if share > TENS and tens > TENS:
        yield "ten-and-rest", (TENS, share - TENS)


def chunked(problem: PartOf) -> Iterator[Plan]:
    """Yield friendly groups taken out together, and a rest that is shared out."""
    number, bottom = problem.number, problem.bottom
    share = number // bottom
    if not problem.even or bottom < 2:
        return
    for slug, lots in _lots(share):
        if not all(can_do(bottom, lot) for lot in lots):
            continue
        *first, last = lots
        taken, rest = bottom * sum(first), bottom * last
        groups: tuple[Move, ...] = tuple([(Kind.GROUP, bottom, TIMES, lot) for lot in first])
        off: Move = (Kind.TAKE, number, MINUS, taken)
        ends: dict[str, Move] = {"shared": (Kind.GROUP, rest, OVER, bottom)}
        if len(first) > 1:
            ends["known"] = (Kind.GROUP, bottom, TIMES, last)
        for name, end in ends.items():
            for how, moves in takings(problem, share):
                steps = (*groups, off, end, *gathered(*lots), *moves)
                yield f"{slug}-{name}{how}", steps


def left_plans(problem: PartOf) -> Iterator[Plan]:
    """Yield what can be shared evenly first, then the rest: 7 as 6 and 1."""
    number, bottom = problem.number, problem.bottom
    rest = number % bottom
    if not rest or number < bottom:
        return
    even = number - rest
    share = even // bottom
    if can_share(even, bottom) and can_do(max(share, 1), problem.top):
        yield "even-and-rest", _of_both(problem, even, rest)
    small = did(Kind.GROUP, rest, OVER, bottom)
    one = exact(Fraction(rest, bottom))
    joined = did(Kind.JOIN, share, PLUS, one)
    last: Steps = ()
    if problem.top > 1:
        last = (did(Kind.SCALE, exact(share + one), TIMES, problem.top),)
    for slug, moves in _shared(even, bottom):
        yield f"even-shared-and-rest{slug}", (*moves, small, joined, *last)


def _of_both(problem: PartOf, even: int, rest: int) -> Steps:
    one = did(Kind.GROUP, *_placed(problem, even))
    other = did(Kind.GROUP, *_placed(problem, rest))
    big, small = exact(problem.part.value * even), exact(problem.part.value * rest)
    return one, other, did(Kind.JOIN, big, PLUS, small)


def _placed(problem: PartOf, number: int) -> tuple[Number, Sign, Number]:
    pair = problem.pair(problem.part.number, number)
    return pair[0], problem.sign, pair[1]


def _shared(even: int, bottom: int) -> Iterator[tuple[str, Moves]]:
    """Yield the division of what can be shared evenly, in one go or by its pieces."""
    if can_share(even, bottom):
        yield "", ((Kind.GROUP, even, OVER, bottom),)
        return
    for slug, moves in break_up.plans(Quotient(even, bottom)):
        yield f"-{slug}", moves
        return
    for slug, moves in factor_steps.plans(Quotient(even, bottom)):
        yield f"-{slug}", moves
        return


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.FACTOR_STEPS, PartOf, share_first),
    Maker(Family.FACTOR_STEPS, PartOf, times_first),
    Maker(Family.FACTOR_STEPS, PartOf, through(factor_steps.plans)),
    Maker(Family.CHUNK_OUT, PartOf, chunked),
    Maker(Family.CHUNK_OUT, PartOf, through(chunk_out.plans)),
    Maker(Family.THINK_TIMES, PartOf, through(think_times.plans)),
    Maker(Family.BREAK_UP, PartOf, through(break_up.plans)),
    Maker(Family.BREAK_UP, PartOf, left_plans),
    Maker(Family.NEAR_FACT, PartOf, through(near_fact.plans)),
)
