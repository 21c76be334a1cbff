"""Rename: like parts counted as things, unlike parts cut into one size first."""

from collections.abc import Iterator
from math import lcm

from waysaid.number import Number, Sign, exact, mixed, parts
from waysaid.ways.fractions.amount import Amount, amount, did, said_as
from waysaid.ways.fractions.shape import FractionPlain, FractionSum, FractionTake
from waysaid.ways.fractions.units import cut_into, endings, tops_in
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind, Step

LARGEST_UNIT = 144
"""The smallest parts that both are cut into where larger ones would do: twelve twelfths."""
PLAIN_ENDS = ("", "-lowest")
"""How parts of the product of the bottoms are said in the end: as they come, or in lowest terms."""


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield the sum in parts of one size, the wholes cut up too, or left whole."""
    yield from _in_parts(problem, PLUS)
    if problem.left.whole and problem.right.whole and problem.left.top and problem.right.top:
        yield from _mixed_sum(problem)


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the same taken away; a whole is cut up where the parts do not suffice."""
    yield from _in_parts(problem, MINUS)
    if problem.whole.value > 1 and problem.part.top and problem.whole.whole:
        yield from _mixed_take(problem)


def plain_plans(problem: FractionPlain) -> Iterator[Plan]:
    """Yield what goes below zero, in parts of one size: 1/4 - 3/4 = -2/4."""
    if problem.sign is not MINUS or not 0 < exact(problem.left) < exact(problem.right):
        return
    left, right = amount(problem.left), amount(problem.right)
    unit = lcm(left.bottom, right.bottom)
    tops, more = tops_in(left, unit), tops_in(right, unit)
    result = parts(tops - more, unit)
    step = did(Kind.TAKE, parts(tops, unit), MINUS, parts(more, unit), result)
    value = exact(result)
    last = () if value == result else (said_as(result, value),)
    yield "below-zero", (*cut_into(left, unit), *cut_into(right, unit), step, *last)


def _units(problem: FractionSum | FractionTake) -> dict[str, int]:
    """Return the sizes both are cut into: the largest that fits both, and bottom times bottom."""
    bottoms = (problem.left.bottom, problem.right.bottom)
    found = {"like" if bottoms[0] == bottoms[1] else "common-unit": problem.unit}
    product = bottoms[0] * bottoms[1]
    if 1 not in bottoms and problem.unit < product <= LARGEST_UNIT and bottoms[0] != bottoms[1]:
        found["product-unit"] = product
    return found


def _in_parts(problem: FractionSum | FractionTake, sign: Sign) -> Iterator[Plan]:
    left, right = problem.left, problem.right
    for slug, unit in _units(problem).items():
        tops, more = tops_in(left, unit), tops_in(right, unit)
        total = tops + more if sign is PLUS else tops - more
        cuts = tuple(dict.fromkeys((*cut_into(left, unit), *cut_into(right, unit))))
        new = (parts(tops, unit), parts(more, unit))
        kind = Kind.JOIN if sign is PLUS else Kind.TAKE
        step = did(kind, new[0], sign, new[1], parts(total, unit))
        for how, ending in endings(total, unit):
            if slug != "product-unit" or how in PLAIN_ENDS:
                yield f"{slug}{how}", (*cuts, step, *ending)
        if total % unit == 0 and total > 0:
            yield f"{slug}-to-wholes", (*cuts, did(kind, new[0], sign, new[1]))
        if not cuts and total <= unit:
            counted = did(Kind.JOIN if sign is PLUS else Kind.TAKE, tops, sign, more)
            for how, ending in endings(total, unit):
                yield f"{slug}-counted{how}", (counted, step, *ending)


def _with_unit(number: Amount, unit: int, borrowed: int = 0) -> Number:
    """Return wholes and parts of a size, some wholes cut into parts: 4 1/4 as 3 5/4."""
    top = (number.top + borrowed * number.bottom) * (unit // number.bottom)
    whole = number.whole - borrowed
    if not top:
        return whole
    return mixed(whole, top, unit) if whole else parts(top, unit)


def _renamed(number: Amount, unit: int, borrowed: int = 0) -> tuple[Step, ...]:
    new = _with_unit(number, unit, borrowed)
    return () if new == number.number else (said_as(number.number, new),)


def _mixed_sum(problem: FractionSum) -> Iterator[Plan]:
    """Keep the wholes whole: 2 2/4 + 1 3/4 = 3 5/4, 3 5/4 = 4 1/4."""
    left, right, unit = problem.left, problem.right, problem.unit
    tops = left.top * (unit // left.bottom) + right.top * (unit // right.bottom)
    result = mixed(left.whole + right.whole, tops, unit)
    new = (_with_unit(left, unit), _with_unit(right, unit))
    moves = (
        *_renamed(left, unit),
        *_renamed(right, unit),
        did(Kind.JOIN, new[0], PLUS, new[1], result),
    )
    yield "mixed", (*moves, *_lowest(left.whole + right.whole, tops, unit))


def _mixed_take(problem: FractionTake) -> Iterator[Plan]:
    """Cut a whole up where needed: 4 1/4 = 3 5/4, 3 5/4 - 1 3/4 = 2 2/4, 2 2/4 = 2 1/2."""
    whole, part, unit = problem.whole, problem.part, problem.unit
    have, need = whole.top * (unit // whole.bottom), part.top * (unit // part.bottom)
    borrowed = int(have < need)
    first = _with_unit(whole, unit, borrowed)
    tops, wholes = have + borrowed * unit - need, whole.whole - borrowed - part.whole
    if wholes < 0 or tops < 0:
        return
    result = _as_mixed(wholes, tops, unit)
    moves = (
        *_renamed(whole, unit, borrowed),
        *_renamed(part, unit),
        did(Kind.TAKE, first, MINUS, _with_unit(part, unit), result),
    )
    yield "mixed", (*moves, *_lowest(wholes, tops, unit))


def _as_mixed(wholes: int, tops: int, unit: int) -> Number:
    if not tops:
        return wholes
    return mixed(wholes, tops, unit) if wholes else parts(tops, unit)


def _lowest(wholes: int, tops: int, unit: int) -> tuple[Step, ...]:
    """Return the step that says wholes and parts in lowest terms; none where they are."""
    plain = _as_mixed(wholes, tops, unit)
    value = did(Kind.JOIN, wholes, PLUS, parts(tops, unit)).equation.right if tops else wholes
    return () if plain == value else (said_as(plain, value),)
