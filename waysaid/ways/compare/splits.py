"""The largest places first: 0.65 = 0.6 + 0.05 beside 0.7, 305 = 300 + 5 beside 350 = 300 + 50."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Form, Number, Operation, Sign, decimal, exact, has_form, parts
from waysaid.ways.compare.shape import Two, is_fraction, top_and_bottom
from waysaid.ways.plan import Plan
from waysaid.ways.step import Step, renamed

_THOUSAND = Fraction(1000)


def plans(two: Two) -> Iterator[Plan]:
    """Yield both opened at their largest place, one that has nothing else left as it is."""
    if all(isinstance(one, int) or has_form(one, Form.DECIMAL) for one in two.both):
        unit = _largest_place(two)
        found = [_opened(one, unit) for one in two.both]
    elif all(is_fraction(one) for one in two.both):
        found = [_wholes_first(one) for one in two.both]
    else:
        return
    steps = tuple(step for step in found if step is not None)
    if steps:
        yield "by-place", steps


def _largest_place(two: Two) -> int:
    """Return the power of ten, in thousandths, of the larger number's first digit."""
    thousandths = int(max(two.values) * 1000)
    return int("1" + "0" * (len(str(thousandths)) - 1))


def _opened(number: Number, unit: int) -> Step | None:
    thousandths = exact(number) * 1000
    rest = thousandths % unit
    first = thousandths - rest
    if not rest or not first:
        return None
    pieces = (decimal(exact(first) / _THOUSAND), decimal(exact(rest) / _THOUSAND))
    return renamed(number, Operation(Sign.PLUS, *pieces))


def _wholes_first(number: Number) -> Step | None:
    """Open an improper fraction or a mixed number into wholes and parts."""
    top, bottom = top_and_bottom(number)
    whole, rest = divmod(top, bottom)
    if not whole or not rest:
        return None
    return renamed(number, Operation(Sign.PLUS, whole, parts(rest, bottom)))
