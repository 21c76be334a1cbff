"""A number divided by a fraction, or a fraction shared out."""

from collections.abc import Iterator
from fractions import Fraction
from math import lcm

from waysaid.number import Equation, Exact, Number, Operation, exact, parts
from waysaid.ways.factor import can_do, can_share
from waysaid.ways.fractions.amount import did, said_as
from waysaid.ways.fractions.shape import PartOver
from waysaid.ways.fractions.units import Steps, cut_into
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import OVER, PLUS, TIMES, Moves, Plan
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family

LARGEST_UNIT = 144
"""The smallest parts both numbers are cut into; our choice."""
MOST_TIMES = 24
"""The most times as large both are made; our choice."""


def in_one(problem: PartOver) -> Iterator[Plan]:
    """Yield how many of one part are in one, then in all: 2 x 1/2 = 1, 3 x 2 = 6."""
    whole, part = problem.whole, problem.part
    if part.tops != 1 or part.bottom < 2 or whole.top or whole.whole < 2:
        return
    if can_do(whole.whole, part.bottom):
        last: Moves = ((Kind.SCALE, whole.whole, TIMES, part.bottom),)
        yield "parts-in-one", (did(Kind.GROUP, 1, OVER, part.number), *last)
        yield "parts-make-one", (did(Kind.GROUP, part.bottom, TIMES, part.number), *last)
        yield "parts-at-once", last


def top_and_bottom(problem: PartOver) -> Iterator[Plan]:
    """Yield times the bottom, shared by the top, in either order: 4 / 2/3 as 4 x 3 = 12, / 2."""
    whole, part = problem.whole, problem.part
    if whole.top or part.tops < 2 or not part.top:
        return
    many = whole.whole * part.bottom
    if can_do(whole.whole, part.bottom):
        up = did(Kind.SCALE, whole.whole, TIMES, part.bottom)
        yield "times-first", (up, did(Kind.SCALE, many, OVER, part.tops))
    if whole.whole % part.tops == 0 and can_share(whole.whole, part.tops):
        down = did(Kind.SCALE, whole.whole, OVER, part.tops)
        back = did(Kind.SCALE, whole.whole // part.tops, TIMES, part.bottom)
        yield "share-first", (down, back)


def cut_both(problem: PartOver) -> Iterator[Plan]:
    """Yield both cut into parts of one size and counted: 3 = 6/2, 6/2 / 1/2 = 6."""
    whole, part = problem.whole, problem.part
    unit = lcm(whole.bottom, part.bottom)
    if unit > LARGEST_UNIT or not part.top:
        return
    tops, more = whole.tops * (unit // whole.bottom), part.tops * (unit // part.bottom)
    cuts = (*cut_into(whole, unit), *cut_into(part, unit))
    count = did(Kind.GROUP, tops, OVER, more)
    made = did(Kind.GROUP, parts(tops, unit), OVER, parts(more, unit))
    yield "same-parts", (*cuts, made)
    if tops <= LARGEST_UNIT:
        yield "same-parts-counted", (*cuts, count)


def scaled(problem: PartOver) -> Iterator[Plan]:
    """Yield both made so many times as large, so that a whole number is divided by."""
    whole, part = problem.whole, problem.part
    if not part.top:
        return
    for by in dict.fromkeys((part.bottom, lcm(whole.bottom, part.bottom))):
        if by > MOST_TIMES:
            continue
        new = (exact(whole.value * by), exact(part.value * by))
        if isinstance(new[0], int) or (by == part.bottom and new[1] != 1):
            yield from _scaled(problem, new, by)


def _scaled(problem: PartOver, new: tuple[Exact, Exact], by: int) -> Iterator[Plan]:
    old = (problem.whole.number, problem.part.number)
    both = tuple(did(Kind.SCALE, one, TIMES, by) for one in old)
    last: Steps = () if new[1] == 1 else (did(Kind.RECALL, new[0], OVER, new[1]),)
    told = said_as(Operation(OVER, *old), Operation(OVER, *new))
    yield f"up-by-{by}", (Step(Kind.SCALE, told.equation), did(Kind.RECALL, new[0], OVER, new[1]))
    if last:
        yield f"up-by-{by}-in-steps", (*both, *last)


def turned_over(problem: PartOver) -> Iterator[Plan]:
    """Yield the part turned over and multiplied by, as is taught: 3 / 2/5 = 3 x 5/2."""
    whole, part = problem.whole, problem.part
    if part.tops < 2 or not part.top:
        return
    turned = parts(part.bottom, part.tops)
    cuts = cut_into(part, part.bottom) if part.whole else ()
    old = Operation(OVER, whole.number, parts(part.tops, part.bottom) if cuts else part.number)
    told = Step(Kind.SCALE, Equation(old, Operation(TIMES, whole.number, turned)))
    yield "turned-over", (*cuts, told, did(Kind.RECALL, whole.number, TIMES, turned))


def fits(problem: PartOver) -> Iterator[Plan]:
    """Yield the product that fits: 6 x 1/2 = 3."""
    groups = exact(Fraction(problem.whole.value) / problem.part.value)
    if isinstance(groups, int) and problem.part.top and can_do(groups, problem.part.tops):
        number = problem.whole.number
        yield "known-product", (did(Kind.RECALL, groups, TIMES, problem.part.number, number),)


def shared(problem: PartOver) -> Iterator[Plan]:
    """Yield a fraction shared out: its parts counted, or cut smaller first."""
    whole, part = problem.whole, problem.part
    if part.top or not whole.top:
        return
    by = part.whole
    share = exact(Fraction(whole.value) / by)
    if whole.tops % by == 0 and can_share(whole.tops, by):
        cuts = cut_into(whole, whole.bottom) if whole.whole else ()
        number = parts(whole.tops, whole.bottom)
        made = did(Kind.GROUP, number, OVER, by)
        yield "parts-shared", (*cuts, made)
        yield "parts-shared-counted", (*cuts, did(Kind.RECALL, whole.tops, OVER, by), made)
    elif can_do(whole.bottom, by):
        small = parts(whole.tops * by, whole.bottom * by)
        result = parts(whole.tops, whole.bottom * by)
        made = did(Kind.GROUP, small, OVER, by, result)
        yield "cut-then-shared", (said_as(whole.number, small), made, *_lowest(result))
    told = said_as(
        Operation(OVER, whole.number, by), Operation(TIMES, Fraction(1, by), whole.number)
    )
    last = did(Kind.RECALL, Fraction(1, by), TIMES, whole.number, share)
    yield "as-one-part", (told, last)


def _lowest(number: Number) -> Steps:
    return () if number == exact(number) else (said_as(number, exact(number)),)


def pieces(problem: PartOver) -> Iterator[Plan]:
    """Yield a mixed number shared, wholes and parts apart: 4 1/2 / 2 as 4 / 2 and 1/2 / 2."""
    whole, part = problem.whole, problem.part
    if part.top or not (whole.whole and whole.top):
        return
    by = part.whole
    rest = whole.whole % by
    for kept in dict.fromkeys((whole.whole, whole.whole - rest)):
        other = exact(Fraction(whole.value) - kept)
        if kept and kept % by == 0:
            both = (did(Kind.GROUP, kept, OVER, by), did(Kind.GROUP, other, OVER, by))
            last = did(Kind.JOIN, kept // by, PLUS, exact(Fraction(other) / by))
            yield f"{kept}-first", (*both, last)


def halved(problem: PartOver) -> Iterator[Plan]:
    """Yield sharing by 4 or 8 as halving again and again."""
    by = problem.part.whole
    if problem.part.top or by not in (4, 8) or not problem.whole.top:
        return
    steps: list[Step] = []
    number: Number = problem.whole.number
    while by > 1:
        steps.append(did(Kind.SCALE, number, OVER, 2))
        number, by = exact(Fraction(exact(number)) / 2), by // 2
    yield "halves", tuple(steps)


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.THINK_TIMES, PartOver, fits),
    Maker(Family.RENAME, PartOver, shared),
    Maker(Family.CHUNK_OUT, PartOver, in_one),
    Maker(Family.FACTOR_STEPS, PartOver, top_and_bottom),
    Maker(Family.FACTOR_STEPS, PartOver, halved),
    Maker(Family.RENAME, PartOver, cut_both),
    Maker(Family.RENAME, PartOver, turned_over),
    Maker(Family.SCALE_BOTH, PartOver, scaled),
    Maker(Family.BREAK_UP, PartOver, pieces),
)
