"""How far each number is from a landmark: one half, or the next whole."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Form, Number, Sign, decimal, exact, has_form, parts
from waysaid.ways.compare.shape import Two, is_fraction, top_and_bottom
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, Step, worked

_HALF = Fraction(1, 2)


def plans(two: Two) -> Iterator[Plan]:
    """Yield the distances of both to the same landmark, where neither is on the far side."""
    low, high = sorted(two.values)
    if isinstance(low, int) and isinstance(high, int):
        return
    whole = -(-high // 1)
    if any(has_form(one, Form.PERCENT) for one in two.both):
        return
    yield from _gaps("to-the-whole", two, exact(whole), below=True)
    if low < _HALF < high:
        yield "either-side-of-half", tuple(_half_of(one) for one in two.both)
    elif high < 1 and all(_has_half(one) for one in two.both):
        yield from _gaps("to-half", two, _HALF, below=high <= _HALF)


def _gaps(slug: str, two: Two, mark: Exact, *, below: bool) -> Iterator[Plan]:
    steps = tuple(_gap(one, mark, below=below) for one in two.both if exact(one) != mark)
    if steps:
        yield slug, steps


def _gap(number: Number, mark: Exact, *, below: bool) -> Step:
    shown = _as_written(mark, number)
    large, small = (shown, number) if below else (number, shown)
    return worked(Kind.TAKE, Sign.MINUS, large, small)


def _half_of(number: Number) -> Step:
    """Return half of all the parts of a fraction, 7 / 2 = 3 1/2; a decimal's own distance."""
    if is_fraction(number):
        return worked(Kind.GROUP, Sign.OVER, top_and_bottom(number)[1], 2)
    return _gap(number, _HALF, below=exact(number) < _HALF)


def _has_half(number: Number) -> bool:
    """Tell whether one half is so many of the parts that a number is written in."""
    return not is_fraction(number) or top_and_bottom(number)[1] % 2 == 0


def _as_written(mark: Exact, number: Number) -> Number:
    if has_form(number, Form.DECIMAL):
        return decimal(mark)
    if is_fraction(number) and isinstance(mark, Fraction):
        bottom = top_and_bottom(number)[1]
        return parts(bottom // 2, bottom) if bottom % 2 == 0 else mark
    return mark
