"""What a sum or a difference of two whole numbers asks, in tenths, place by place."""

from functools import lru_cache

from waysaid.ways.costs import SUM_FACTS, TAKE_FACTS, TENTHS, Charge

Cost = tuple[int, int, int, int, int]
"""Tenths for the step itself, its facts, what it crosses, its size, and a piece below zero."""

_STEP = TENTHS[Charge.STEP]
_READ_OFF = TENTHS[Charge.READ_OFF]
_CROSS = TENTHS[Charge.CROSS]
_DIGIT = TENTHS[Charge.DIGIT]
_NEGATIVE = TENTHS[Charge.NEGATIVE]


@lru_cache(maxsize=1 << 16)
def whole_cost(minus: bool, left: int, right: int) -> Cost:
    """Return the cost of one sum or difference of two whole numbers."""
    if right < 0 or left < 0:
        return _below_zero(minus, left, right)
    result = abs(left - right) if minus else left + right
    size = _DIGIT * (digits(left) + digits(right) + digits(result))
    if minus and right > left:
        return _STEP, _taken(right, left)[0], 0, size, _NEGATIVE
    facts, crossing = _taken(left, right) if minus else _joined(left, right)
    shared = facts or crossing or minus
    return _STEP if shared else _READ_OFF, facts, crossing, size, 0


def _below_zero(minus: bool, left: int, right: int) -> Cost:
    """Return the cost where a number is below zero already: -15 + 1 as 15 - 1."""
    apart = (minus != (right < 0)) != (left < 0)
    large, small = max(abs(left), abs(right)), min(abs(left), abs(right))
    step, facts, crossing, size, _ = whole_cost(apart, large, small)
    return step, facts, crossing, size, _NEGATIVE


def digits(number: int) -> int:
    """Return how many digits are not 0."""
    said = str(number)
    return len(said) - said.count("0")


def _joined(left: int, right: int) -> tuple[int, int]:
    """Return tenths for the facts, place by place, and for the tens crossed, of a sum."""
    single = left < 10 and right < 10
    facts = crossing = carry = 0
    while right or (carry and left):
        left, one = divmod(left, 10)
        right, other = divmod(right, 10)
        facts += SUM_FACTS[one][other]
        total = one + other + carry
        carry = int(total > 9)
        if carry and not single and (total > 10 or right):
            crossing += _CROSS
    return facts, crossing


def _taken(left: int, right: int) -> tuple[int, int]:
    """Return tenths for the facts, place by place, and for the tens crossed, of a difference."""
    single = left < 19 and right < 10
    facts = crossing = owed = 0
    while right or owed:
        left, one = divmod(left, 10)
        right, other = divmod(right, 10)
        one -= owed
        if one < other:
            facts += TAKE_FACTS[one + 10][other]
            if not single and (one > 0 or right):
                crossing += _CROSS
            owed = 1
        else:
            facts += TAKE_FACTS[one][other]
            owed = 0
    return facts, crossing
