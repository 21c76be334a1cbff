"""What it asks to write one number another way, in tenths: 3/4 = 6/8, 6/4 = 1 2/4, 1/4 = 25%."""

from waysaid.number import Blank, Expression, Number, Operation
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.group_costs import share_costs, times_costs
from waysaid.ways.parted import Parted, is_decimal, is_percent, parted
from waysaid.ways.sum_costs import Cost, whole_cost

_STEP = TENTHS[Charge.STEP]
_READ_OFF = TENTHS[Charge.READ_OFF]
_TEN = TENTHS[Charge.TIMES_TEN]
_LENGTHS = TENTHS[Charge.LENGTHS]
_KNOWN = TENTHS[Charge.KNOWN_PART]
_OTHER = TENTHS[Charge.OTHER_PART]
_BY_TEN = frozenset({1, 10, 100, 1000})
_LANDMARKS = frozenset({2, 4, 5})
"""Halves, quarters and fifths, which are known with a point and as percents."""


def renaming_cost(left: Expression, right: Expression) -> Cost:
    """Return the cost of saying that two numbers are one."""
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return _STEP, 0, 0, 0, 0
    one, other = parted(left), parted(right)
    size = one.size + other.size
    if _pointed(left) and _pointed(right):
        moved = is_percent(left) != is_percent(right)
        return (_STEP, _TEN, 0, size, 0) if moved else (_READ_OFF, _LENGTHS, 0, size, 0)
    if _pointed(left) or _pointed(right):
        return _STEP, _said_in_tens(left, right), 0, size, 0
    return _STEP, _wholes(one, other) + _parts(one, other), 0, size, 0


def cut_costs(top: int, bottom: int, by: int) -> int:
    """Return the tenths for cutting every part into so many: 3/4 by 2 is 6/8."""
    return times_costs(top, by)[0] + times_costs(bottom, by)[0] if by > 1 else 0


def _pointed(number: Number) -> bool:
    return is_decimal(number) or is_percent(number)


def _said_in_tens(left: Number, right: Number) -> int:
    """Return the tenths for a fraction said with a point or per cent, by the size of its parts."""
    shown = parted(right if _pointed(left) else left)
    value = parted(left).value
    bottom = shown.bottom if shown.bottom in _BY_TEN else value.denominator
    if bottom in _BY_TEN:
        return _TEN
    if bottom in _LANDMARKS:
        return _KNOWN + times_costs(value.numerator % bottom, 100 // bottom)[0]
    return _OTHER + share_costs(value.numerator * 1000 // bottom * bottom, bottom)[0]


def _wholes(one: Parted, other: Parted) -> int:
    """Return the tenths for parts made wholes, or wholes cut into parts: 6/4 = 1 2/4."""
    if one.whole == other.whole:
        return 0
    if one.whole < other.whole:
        cut = (other.whole - one.whole) * one.bottom
        found, left = share_costs(cut, one.bottom)[0], whole_cost(True, max(one.top, cut), cut)
        return found + left[1] + left[2]
    cut = (one.whole - other.whole) * other.bottom
    found = times_costs(one.whole - other.whole, other.bottom)[0]
    if not one.top or one.bottom != other.bottom:
        return found
    joined = whole_cost(False, cut, one.top)
    return found + joined[1] + joined[2]


def _parts(one: Parted, other: Parted) -> int:
    """Return the tenths for the factor that tops and bottoms are scaled by, up or down."""
    if one.bottom == other.bottom or not one.top or not other.top:
        return 0
    small, large = sorted((one, other), key=lambda number: number.bottom)
    by, over = divmod(large.bottom, small.bottom)
    if over:
        return _OTHER
    top = small.top if small.whole >= large.whole else small.tops
    if small is one:
        return cut_costs(top, small.bottom, by)
    return share_costs(top * by, by)[0] + share_costs(large.bottom, by)[0]
