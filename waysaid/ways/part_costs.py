"""What a step with fractions or percents asks, in tenths, beside the whole numbers within it.

Tops and bottoms are worked as whole numbers are; the charges of their own are in `costs.py`.
"""

from fractions import Fraction
from functools import lru_cache
from math import lcm

from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    has_form,
)
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.group_costs import share_costs, times_costs
from waysaid.ways.parted import Parted, hundredths, is_percent, parted
from waysaid.ways.percent_costs import percent_costs
from waysaid.ways.renaming_costs import cut_costs, renaming_cost
from waysaid.ways.sum_costs import Cost, whole_cost

_STEP = TENTHS[Charge.STEP]
_READ_OFF = TENTHS[Charge.READ_OFF]
_CROSS = TENTHS[Charge.CROSS]
_NEGATIVE = TENTHS[Charge.NEGATIVE]
_UNLIKE = TENTHS[Charge.UNLIKE]
_TURNED = TENTHS[Charge.PART_OVER]
_ADDED = frozenset({Sign.PLUS, Sign.MINUS})

_Costs = tuple[int, int]
"""Tenths for facts and for what is crossed."""


@lru_cache(maxsize=1 << 14)
def part_cost(equation: Equation) -> Cost:
    """Return the cost of a step in which some number is not a plain whole number."""
    left, right = equation.left, equation.right
    if not isinstance(left, Operation):
        left, right = right, left
    if not isinstance(left, Operation):
        return renaming_cost(left, right)
    if isinstance(right, Operation):
        return _both_sides(left, right)
    if isinstance(left.left, Operation) or isinstance(left.right, Operation):
        return _longer(left)
    return _pair(left.sign, left.left, left.right, right)


def _pair(sign: Sign, left: Expression, right: Expression, result: Expression | None) -> Cost:
    """Return the cost of two numbers worked on; `result` None where it is as it comes."""
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return _STEP, 0, 0, 0, 0
    shown = None if isinstance(result, Operation | Blank) else result
    one, other = parted(left), parted(right)
    if sign in _ADDED:
        if is_percent(left) and is_percent(right):
            return whole_cost(sign is Sign.MINUS, hundredths(left), hundredths(right))
        facts, crossing = _joined(sign is Sign.MINUS, one, other, shown)
        below = sign is Sign.MINUS and one.value < other.value
        step = _STEP if facts or crossing or sign is Sign.MINUS else _READ_OFF
        return step, facts, crossing, _size(one, other, shown), _NEGATIVE if below else 0
    if is_percent(left) or is_percent(right):
        facts, crossing = percent_costs(left, right)
    elif sign is Sign.OVER:
        facts, crossing = _shared(one, other, shown)
    else:
        facts, crossing = _multiplied(one, other, shown)
    return _STEP, facts, crossing, _size(one, other, shown), 0


def _size(one: Parted, other: Parted, result: Number | None) -> int:
    """Return the tenths for the digits written, and for each number with a top and bottom."""
    size = one.size + other.size
    return size if result is None else size + parted(result).size


def _joined(minus: bool, one: Parted, other: Parted, result: Number | None) -> _Costs:
    """Return the costs of a sum or difference: cut alike, wholes and parts apart, said again."""
    unit = lcm(one.bottom, other.bottom)
    facts = crossing = 0
    if one.top and other.top and one.bottom != other.bottom:
        facts += _UNLIKE
        for number in (one, other):
            facts += cut_costs(number.top, number.bottom, unit // number.bottom)
    tops = [number.top * (unit // number.bottom) for number in (one, other)]
    whole = whole_cost(minus, one.whole, other.whole) if one.whole and other.whole else None
    top = whole_cost(minus, tops[0], tops[1]) if all(tops) else None
    for cost in (whole, top):
        facts += cost[1] if cost else 0
        crossing += cost[2] if cost else 0
    if minus:
        opened = tops[0] < tops[1] and one.whole
        crossing += _CROSS if opened else 0
        facts += whole_cost(False, unit, tops[0])[1] if opened else 0
        return facts + _said(abs(tops[0] - tops[1]), unit, result), crossing
    if (one.whole or other.whole) and sum(tops) >= unit:
        crossing += _CROSS
    return facts + _said(sum(tops), unit, result), crossing


def _said(tops: int, unit: int, result: Number | None) -> int:
    """Return the tenths for saying so many parts as the result does: 6/4 as 1 2/4, or as 1 1/2."""
    if result is None or not tops or tops == unit:
        return 0
    shown = parted(result)
    whole, rest = divmod(tops, unit)
    facts = 0
    if whole and shown.whole:
        facts += share_costs(whole * unit, unit)[0] + whole_cost(True, tops, whole * unit)[1]
        tops = rest
    if shown.bottom != unit and tops:
        by = max(unit // shown.bottom, 1)
        facts += share_costs(tops, by)[0] + share_costs(unit, by)[0]
    return facts


def _multiplied(one: Parted, other: Parted, result: Number | None) -> _Costs:
    """Return the costs of a product: a part of a whole number by sharing first, else top by top."""
    if one.bottom == 1:
        one, other = other, one
    if other.bottom == 1 and other.whole % one.bottom == 0:
        share = other.whole // one.bottom
        facts, crossing = share_costs(other.whole, one.bottom)
        more, crossed = times_costs(one.tops, share) if one.tops > 1 else (0, 0)
        return _improper(one) + facts + more, crossing + crossed
    facts, crossing = times_costs(one.tops, other.tops)
    bottoms, crossed = times_costs(one.bottom, other.bottom)
    said = _said(one.tops * other.tops, one.bottom * other.bottom, result)
    return _improper(one) + _improper(other) + facts + bottoms + said, crossing + crossed


def _shared(one: Parted, other: Parted, result: Number | None) -> _Costs:
    """Return the costs of a division: like parts shared, or the part turned round."""
    facts = _improper(one) + _improper(other)
    if one.bottom == other.bottom and other.tops and one.tops % other.tops == 0:
        found, crossing = share_costs(one.tops, other.tops)
        return facts + found, crossing
    if other.bottom == 1 and other.tops and one.tops % other.tops == 0:
        found, crossing = share_costs(one.tops, other.tops)
        return facts + found, crossing
    tops, crossing = times_costs(one.tops, other.bottom)
    bottoms, crossed = times_costs(one.bottom, other.tops)
    said = _said(one.tops * other.bottom, max(one.bottom * other.tops, 1), result)
    turned = _TURNED if other.bottom > 1 else 0
    return facts + turned + tops + bottoms + said, crossing + crossed


def _improper(number: Parted) -> int:
    """Return the tenths for cutting the wholes up too: 2 3/4 as 11 quarters."""
    if not number.whole or not number.top:
        return 0
    cut = number.whole * number.bottom
    return times_costs(number.whole, number.bottom)[0] + whole_cost(False, cut, number.top)[1]


def _both_sides(left: Operation, right: Operation) -> Cost:
    """Return the cost of two numbers changed in one breath; a turn alone costs its step."""
    size = sum(_leaf_size(leaf) for side in (left, right) for leaf in (side.left, side.right))
    return 2 * _STEP, 0, 0, size, 0


def _leaf_size(leaf: Expression) -> int:
    return 0 if isinstance(leaf, Operation | Blank) else parted(leaf).size


def _longer(expression: Operation) -> Cost:
    """Add up the costs of several numbers, one after another; it is said as one step."""
    facts = crossing = size = negative = 0
    for sign, so_far, number in _runs(expression):
        cost = _pair(sign, so_far, number, None)
        facts += cost[1]
        crossing += cost[2]
        size += cost[3]
        negative += cost[4]
    return _STEP, facts, crossing, size, negative


def _runs(expression: Operation) -> list[tuple[Sign, Number, Number]]:
    """Return each sign with what there is so far and the number that comes next."""
    found: list[tuple[Sign, Number, Number]] = []
    side: Expression = expression
    later: list[tuple[Sign, Expression]] = []
    while isinstance(side, Operation):
        later.append((side.sign, side.right))
        side = side.left
    so_far: Exact | Written | Blank = side
    for sign, number in reversed(later):
        if isinstance(so_far, Blank) or isinstance(number, Operation | Blank):
            break
        found.append((sign, so_far, number))
        so_far = _next(sign, so_far, number)
    return found


def _next(sign: Sign, so_far: Number, number: Number) -> Number:
    one, other = parted(so_far).value, parted(number).value
    match sign:
        case Sign.PLUS:
            value = one + other
        case Sign.MINUS:
            value = one - other
        case Sign.OVER:
            value = one / other if other else Fraction(0)
        case _:
            value = one * other
    kept = has_form(so_far, Form.PERCENT)
    if kept and sign in _ADDED and isinstance(so_far, Written):
        return Written(value, Form.PERCENT, so_far.size)
    return value.numerator if value.denominator == 1 else value
