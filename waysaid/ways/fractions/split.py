"""Split: wholes with wholes, parts with parts, then both together."""

from collections.abc import Iterator

from waysaid.number import exact
from waysaid.ways.fractions.amount import Amount, did, one_go
from waysaid.ways.fractions.shape import FractionSum, FractionTake
from waysaid.ways.fractions.units import together
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield wholes first, and parts first."""
    left, right = problem.left, problem.right
    if not _both_mixed(left, right):
        yield from _one_whole(problem)
        return
    wholes = did(Kind.JOIN, left.whole, PLUS, right.whole)
    small = together(Kind.JOIN, left.part, PLUS, right.part, problem.unit)
    total, rest = left.whole + right.whole, exact(exact(left.part) + exact(right.part))
    last = did(Kind.JOIN, total, PLUS, rest)
    yield "wholes-first", (wholes, *small, last)
    yield "parts-first", (*small, wholes, last)


def _one_whole(problem: FractionSum) -> Iterator[Plan]:
    """Yield a whole number and a mixed one: 3 + 2 = 5, 5 + 1/2."""
    left, right = problem.left, problem.right
    part = left.part or right.part
    if min(left.whole, right.whole) and bool(left.top) != bool(right.top):
        wholes = did(Kind.JOIN, left.whole, PLUS, right.whole)
        yield "wholes-first", (wholes, did(Kind.JOIN, left.whole + right.whole, PLUS, part))


def _both_mixed(left: Amount, right: Amount) -> bool:
    return bool(left.whole and right.whole and left.top and right.top)


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield wholes from wholes and parts from parts, with a piece below zero where it must be."""
    whole, part = problem.whole, problem.part
    if not _both_mixed(whole, part):
        if whole.top and part.whole and not part.top and whole.whole > part.whole:
            left = whole.whole - part.whole
            off = did(Kind.TAKE, whole.whole, MINUS, part.whole)
            yield "wholes-first", (off, did(Kind.JOIN, left, PLUS, whole.part))
        return
    wholes = did(Kind.TAKE, whole.whole, MINUS, part.whole)
    have, need = exact(whole.part), exact(part.part)
    left = whole.whole - part.whole
    if have >= need:
        small = together(Kind.TAKE, whole.part, MINUS, part.part, problem.unit)
        if have > need and left:
            last = did(Kind.JOIN, left, PLUS, exact(have - need))
            yield "wholes-first", (wholes, *small, last)
            yield "parts-first", (*small, wholes, last)
        elif left:
            yield "wholes-first", (wholes,)
        else:
            yield "parts-alone", small
    elif one_go(have, need):
        owed = exact(need - have)
        below = did(Kind.TAKE, whole.part, MINUS, part.part)
        yield "wholes-first-below-zero", (wholes, below, did(Kind.JOIN, left, MINUS, owed))
    else:
        small = together(Kind.TAKE, part.part, MINUS, whole.part, problem.unit)
        last = did(Kind.JOIN, left, MINUS, exact(need - have))
        yield "wholes-first-then-what-is-short", (wholes, *small, last)


def then_jump_sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield the wholes together, then the parts of each in turn."""
    left, right = problem.left, problem.right
    if not _both_mixed(left, right) or not one_go(left.value, right.value):
        return
    wholes = left.whole + right.whole
    first = did(Kind.JOIN, left.whole, PLUS, right.whole)
    for one, other, tag in problem.starts():
        on = did(Kind.JUMP, wholes, PLUS, one.part)
        middle = exact(wholes + exact(one.part))
        yield f"{tag}-parts-next", (first, on, did(Kind.JUMP, middle, PLUS, other.part))


def then_jump_take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the wholes, then the parts there are added and those taken, in either order."""
    whole, part = problem.whole, problem.part
    if not _both_mixed(whole, part) or not one_go(whole.value, part.value):
        return
    left, have, need = whole.whole - part.whole, exact(whole.part), exact(part.part)
    first = did(Kind.TAKE, whole.whole, MINUS, part.whole)
    if left:
        on = did(Kind.JUMP, left, PLUS, whole.part)
        middle = exact(left + have)
        yield "add-then-take", (first, on, did(Kind.JUMP, middle, MINUS, part.part))
    if left > need:
        off = did(Kind.JUMP, left, MINUS, part.part)
        middle = exact(left - need)
        yield "take-then-add", (first, off, did(Kind.JUMP, middle, PLUS, whole.part))
