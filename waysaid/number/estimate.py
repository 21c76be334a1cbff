"""The easier problems that an estimate goes through: `398 x 21` by way of `400 x 20`.

A number may be rounded to its nearest at any place; what stays must be easy to work with: at most
one number keeps two digits that are not zero, the rest keep one. Fractions go to the nearest half
and decimals to the nearest whole first. A division goes to the numbers near by that share out.
The rules are our choice: sources agree on rounding and on friendly numbers near by, not on limits.
"""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number.expression import Blank, Expression, NoValue, Operation, Sign, value_of
from waysaid.number.written import Exact, Form, Written, decimal, exact, has_form

_MOST_WITH_TWO = 1
_ALL_WITH_TWO = 9
"""The same where no other estimate is near: 482 - 429 as 480 - 430."""
_MOST_DIGITS_KEPT = 2
_FAR = Fraction(1, 4)
"""By what part of a number an estimate may be off; else by 1, as 0 is for 1/5 + 1/8. Our choice."""
_TEN_PERCENT = Fraction(1, 10)
_NEARBY = Fraction(1, 4)
"""By what part of itself a percent below ten may change; our choice."""


def estimates(expression: Expression) -> tuple[Expression, ...]:
    """Return the easier problems, as written; the problem itself only where no other is found.

    Raises `NoValue` for an expression without a value.
    """
    value_of(expression)
    if not isinstance(expression, Operation):
        return tuple(_roundings(expression)) or (expression,)
    exactly = Fraction(value_of(expression))
    found = [each for each in _eased(expression, _MOST_WITH_TWO) if each != expression]
    closer = [each for each in _eased(expression, _ALL_WITH_TWO) if each != expression]
    choices = (
        [each for each in choice if abs(value_of(each) - exactly) <= far]
        for far in (abs(exactly) * _FAR, 1)
        for choice in (found, closer)
    )
    found = next((near for near in choices if near), [])
    if expression.sign is Sign.OF:
        found = [each for each in found if isinstance(value_of(each), int)] or found
    return tuple(dict.fromkeys(found)) or (expression,)


def _eased(expression: Operation, most: int) -> Iterator[Expression]:
    if expression.sign is Sign.OVER:
        yield from _shared(expression)
        return
    lefts = _easy(expression.left, expression.sign)
    rights = _easy(expression.right, expression.sign)
    for left in lefts:
        for right in rights:
            eased = Operation(expression.sign, left, right)
            if _with_two(eased) <= most:
                yield eased


def _easy(part: Expression, sign: Sign) -> list[Expression]:
    """Return what a number may become; nothing of a product becomes 0, which would leave nothing.

    Where nothing is left a factor stays as it is: 0.2 x 11.
    """
    found = list(_side(part))
    if sign in (Sign.TIMES, Sign.OF) and value_of(part):
        return [each for each in found if value_of(each)] or [part]
    return found


def _side(part: Expression) -> Iterator[Expression]:
    if isinstance(part, Operation):
        yield from _eased(part, _ALL_WITH_TWO)
    else:
        yield from _roundings(part)


def _roundings(part: Exact | Written | Blank) -> Iterator[Expression]:
    """Yield a number, and its roundings, that keep at most two digits that are not zero."""
    if isinstance(part, Blank):
        raise NoValue("a blank has no value")
    if has_form(part, Form.PERCENT):
        yield _near_percent(part)
        return
    value = exact(part)
    if isinstance(value, Fraction):
        pointed = has_form(part, Form.DECIMAL)
        near = _nearest(value, Fraction(1) if pointed and value > 1 else Fraction(1, 2))
        yield decimal(near) if pointed else near
        return
    seen = {rounded for rounded in _whole(value) if _kept(rounded) <= _MOST_DIGITS_KEPT}
    yield from sorted(seen)


def _whole(value: int) -> Iterator[int]:
    yield value
    unit = 10
    while unit <= abs(value):
        yield (value + unit // 2) // unit * unit
        unit *= 10


def _nearest(value: Fraction, step: Fraction) -> Exact:
    return exact((value / step + Fraction(1, 2)).__floor__() * step)


def _near_percent(part: Written) -> Written:
    """Return the nearest ten per cent, or 25 or 75 where that is nearer; 2, 3 or 7 % stay."""
    friendly = [Fraction(n, 100) for n in (1, 5, 25, 75, *range(10, 401, 10))]
    near = min(friendly, key=lambda one: (abs(one - part.value), one))
    if part.value < _TEN_PERCENT and abs(near - part.value) > part.value * _NEARBY:
        return part
    return Written(exact(near), Form.PERCENT, 0)


def _shared(expression: Operation) -> Iterator[Expression]:
    """Yield the divisions near by that share out: `1234 / 6` by way of 1200 / 6."""
    whole = value_of(expression.left)
    for part in dict.fromkeys(_side(expression.right)):
        by = value_of(part)
        if by <= 0:
            continue
        quotient = Fraction(whole) / by
        unit = Fraction(1)
        while unit * 10 <= quotient:
            unit *= 10
        for size in (unit, unit / 10):
            near = exact(_nearest(quotient, size) * by)
            if near > 0 and exact(size) == int(size) and _kept_in(near) <= _MOST_DIGITS_KEPT + 1:
                yield Operation(Sign.OVER, near, part)


def _kept(value: int) -> int:
    """Count the digits up to the last that is not zero: 2 of 230, 1 of 400."""
    return len(str(abs(value)).rstrip("0")) or 1


def _kept_in(value: Exact) -> int:
    return _kept(value) if isinstance(value, int) else _MOST_DIGITS_KEPT


def _with_two(expression: Expression) -> int:
    """Count the numbers that keep more than one digit."""
    if isinstance(expression, Operation):
        return _with_two(expression.left) + _with_two(expression.right)
    if isinstance(expression, Blank):
        return 0
    return isinstance(expression, int) and _kept(expression) > 1
