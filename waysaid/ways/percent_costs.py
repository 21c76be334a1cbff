"""What so many per cent of a number ask, in tenths: landmarks first, any other as a product."""

from fractions import Fraction

from waysaid.number import Expression, Number, Operation, Sign
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.group_costs import share_costs, times_costs
from waysaid.ways.parted import is_percent, parted
from waysaid.ways.step import Step

_TEN = TENTHS[Charge.TIMES_TEN]
_ONE = TENTHS[Charge.TIMES_ONE]
_LANDMARK = TENTHS[Charge.PERCENT_LANDMARK]
_QUARTER = TENTHS[Charge.PERCENT_QUARTER]
_OTHER = TENTHS[Charge.PERCENT_OTHER]
_SHARED = {50: (2, _LANDMARK), 25: (4, _QUARTER), 20: (5, _QUARTER)}
"""Per cent that are one part of so many, and what it costs to know that."""
_NAMED = {
    4: _QUARTER,
    5: _QUARTER,
    10: TENTHS[Charge.PERCENT_TENTH],
    100: TENTHS[Charge.PERCENT_HUNDREDTH],
}
"""What it costs to know which percent it is that a number is divided for."""
_BUILT = TENTHS[Charge.PERCENT_BUILT]
_WHOLE = 100
_MOST_PLACES = 9


def percent_costs(left: Number, right: Number) -> tuple[int, int]:
    """Return the tenths for the facts and for what is carried of `15% of 80`, either way round."""
    rate, number = (left, right) if is_percent(left) else (right, left)
    many = parted(rate).value * 100
    base = plain_digits(parted(number).value)
    if many % _WHOLE == 0:
        facts, crossing = times_costs(int(many) // _WHOLE, base)
        return facts + _ONE, crossing
    if many in (1, 10):
        return _TEN + _LANDMARK, 0
    if many in _SHARED:
        by, known = _SHARED[int(many)]
        facts, crossing = share_costs(_shareable(base, by), by)
        return facts + known, crossing
    if many == 5:
        facts, crossing = share_costs(_shareable(base, 2), 2)
        return facts + _TEN + _QUARTER, crossing
    if many == 75:
        facts, crossing = share_costs(_shareable(base, 4), 4)
        more, crossed = times_costs(3, _shareable(base, 4) // 4)
        return facts + more + _QUARTER, crossing + crossed
    facts, crossing = times_costs(plain_digits(many), base)
    return facts + (_QUARTER if many % 10 == 0 else _OTHER) + _TEN, crossing


def plain_digits(value: Fraction) -> int:
    """Return a number without its sign and its point: 14 for 1.4."""
    value = abs(value)
    for _ in range(_MOST_PLACES):
        if value.denominator == 1:
            break
        value *= 10
    return int(value)


def _shareable(number: int, by: int) -> int:
    """Return the number with zeros put on until it shares out: 50 for 5 / 2."""
    while number % by:
        number *= 10
    return number


def block_costs(steps: tuple[Step, ...]) -> int:
    """Return the tenths for knowing what the percents are that the steps work with, each once.

    A number divided by ten is ten per cent of it. A product alone, told without its points, is of
    a percent said with a point: so many hundredths.
    """
    by: set[Expression] = set()
    for step in steps:
        whole = step.equation.left
        if isinstance(whole, Operation) and whole.sign is Sign.OVER:
            by.add(whole.right)
        elif isinstance(whole, Operation) and len(steps) == 1 and isinstance(whole.left, int):
            by.add(_WHOLE)
    built = _BUILT if {4, 10} <= by else 0
    return built + sum(cost for divisor, cost in _NAMED.items() if divisor in by)
