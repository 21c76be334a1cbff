"""A fraction times a fraction, mixed numbers too."""

from collections.abc import Iterator
from fractions import Fraction
from math import lcm

from waysaid.number import Exact, Number, Operation, Sign, exact, parts
from waysaid.ways.factor import can_do
from waysaid.ways.fractions.amount import Amount, amount, did, one_go, said_as
from waysaid.ways.fractions.shape import PartTimes
from waysaid.ways.fractions.units import Steps, endings, together
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import OVER, PLUS, TIMES, Moves, Plan
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family

LARGEST_UNIT = 144
"""The smallest parts a child would cut the other number into first; our choice."""


def tops_and_bottoms(problem: PartTimes) -> Iterator[Plan]:
    """Yield top times top and bottom times bottom, said or not, mixed numbers in parts first."""
    left, right = problem.left, problem.right
    tops, bottoms = left.tops * right.tops, left.bottom * right.bottom
    if not (can_do(left.tops, right.tops) and can_do(left.bottom, right.bottom)):
        return
    new = [parts(one.tops, one.bottom) for one in (left, right)]
    cuts = _cuts(left, right)
    made = did(Kind.SCALE, new[0], problem.sign, new[1], parts(tops, bottoms))
    counted: Moves = (
        (Kind.RECALL, left.tops, TIMES, right.tops),
        (Kind.RECALL, left.bottom, TIMES, right.bottom),
    )
    for how, ending in endings(tops, bottoms):
        yield f"tops-and-bottoms{how}", (*cuts, made, *ending)
        yield f"tops-and-bottoms-counted{how}", (*cuts, *counted, made, *ending)


def _cuts(left: Amount, right: Amount) -> Steps:
    """Return the steps that write mixed numbers all in parts."""
    return tuple(
        said_as(one.number, parts(one.tops, one.bottom))
        for one in (left, right)
        if one.whole and one.number != parts(one.tops, one.bottom)
    )


def share_first(problem: PartTimes) -> Iterator[Plan]:
    """Yield one part of the other number, then so many: 3/4 / 3 = 1/4, 1/4 x 2 = 1/2."""
    left, right = problem.left, problem.right
    for part, other, slug in ((left, right, "first"), (right, left, "second")):
        if part.whole or part.tops > 12:
            continue
        if other.tops % part.bottom == 0:
            share = exact(Fraction(other.value) / part.bottom)
            yield f"{slug}-share-first", (_over(other.number, part.bottom), *_so_many(share, part))
        elif other.bottom * part.bottom <= LARGEST_UNIT:
            yield f"{slug}-cut-then-share", _cut_then_share(part, other)


def _over(number: Number, by: int) -> Step:
    return did(Kind.SCALE, number, OVER, by)


def _so_many(share: Number, part: Amount) -> Steps:
    return () if part.tops == 1 else (did(Kind.SCALE, share, TIMES, part.tops),)


def _cut_then_share(part: Amount, other: Amount) -> Steps:
    """Cut the other number smaller, so that it can be shared: 3/4 = 6/8, 6/8 / 2 = 3/8."""
    small = parts(other.tops * part.bottom, other.bottom * part.bottom)
    share = parts(other.tops, other.bottom * part.bottom)
    cut = did(Kind.SCALE, small, OVER, part.bottom, share)
    last: Steps = ()
    if part.tops > 1:
        last = (did(Kind.SCALE, share, TIMES, part.tops),)
    elif share != exact(share):
        last = (said_as(share, exact(share)),)
    return (said_as(other.number, small), cut, *last)


def moved_across(problem: PartTimes) -> Iterator[Plan]:
    """Yield one number smaller and the other larger by as much: 2/3 x 3/4 = 2 x 1/4."""
    left, right = problem.left, problem.right
    if left.whole or right.whole:
        return
    for part, other, first in ((left, right, True), (right, left, False)):
        if other.tops % part.bottom:
            continue
        new = (part.tops, exact(Fraction(other.value) / part.bottom))
        yield f"{'first' if first else 'second'}-across", _told(problem, new, first)


def _told(problem: PartTimes, new: tuple[Number, Number], first: bool) -> Steps:
    pair = new if first else new[::-1]
    old = Operation(problem.sign, problem.left.number, problem.right.number)
    told = said_as(old, Operation(TIMES, *pair))
    if 1 in pair:
        value = exact(Fraction(exact(pair[0])) * exact(pair[1]))
        return (did(Kind.SCALE, problem.left.number, problem.sign, problem.right.number, value),)
    return (Step(Kind.SCALE, told.equation), did(Kind.RECALL, pair[0], TIMES, pair[1]))


def pieces(problem: PartTimes) -> Iterator[Plan]:
    """Yield a mixed number in wholes and parts, each times the other: 1/2 x 2 and 1/2 x 1/2."""
    left, right = problem.left, problem.right
    for part, other, first in ((left, right, True), (right, left, False)):
        if not part.whole or not part.top:
            continue
        both = [_placed(one, other.number, problem.sign, first) for one in (part.whole, part.part)]
        big = exact(part.whole * Fraction(other.value))
        small = exact(exact(part.part) * Fraction(other.value))
        slug = "first" if first else "second"
        said = both if part.whole > 1 else both[1:]
        yield f"{slug}-wholes-and-parts", (*said, *_together(big, small))


def _together(big: Exact, small: Exact) -> Steps:
    """Return the steps that put two numbers together, wholes and parts apart where they must be."""
    if one_go(big, small):
        return (did(Kind.JOIN, big, PLUS, small),)
    one, other = amount(big), amount(small)
    unit = lcm(one.bottom, other.bottom)
    if not one.whole or not other.whole:
        return together(Kind.JOIN, big, PLUS, small, unit)
    wholes = one.whole + other.whole
    parts_together = together(Kind.JOIN, one.part, PLUS, other.part, unit)
    rest = exact(Fraction(exact(one.part)) + exact(other.part))
    first = did(Kind.JOIN, one.whole, PLUS, other.whole)
    return (first, *parts_together, did(Kind.JOIN, wholes, PLUS, rest))


def _placed(factor: Number, other: Number, sign: Sign, first: bool) -> Step:
    pair = (factor, other) if first else (other, factor)
    return did(Kind.GROUP, pair[0], sign, pair[1])


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, PartTimes, tops_and_bottoms),
    Maker(Family.DOUBLE_HALVE, PartTimes, moved_across),
    Maker(Family.FACTOR_STEPS, PartTimes, share_first),
    Maker(Family.BREAK_UP, PartTimes, pieces),
)
