"""Sums and differences of fractions: across, over one bottom, with wholes or parts forgotten."""

from collections.abc import Iterator
from fractions import Fraction
from math import lcm

from waysaid.number import Number, Sign, exact, mixed, parts
from waysaid.slips.cases import Parts
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import ended, one_step, says

_SUMS = (Sign.PLUS, Sign.MINUS)


def _tops(case: Parts) -> int:
    """Return the tops added, or the smaller taken from the larger."""
    tops = case.left.top, case.right.top
    return sum(tops) if case.sign is Sign.PLUS else abs(tops[0] - tops[1])


def _wholes(case: Parts) -> int:
    return Pair(case.left.whole, case.sign, case.right.whole).answer


def _both_parts(case: Parts) -> bool:
    """Tell whether it is a sum or difference in which both numbers have parts."""
    return case.sign in _SUMS and min(case.left.bottom, case.right.bottom) > 1


def _said(case: Parts, wholes: int, top: int, bottom: int) -> Iterator[Made]:
    """Yield wholes and parts as the answer, the parts as they would be written."""
    if wholes < 0 or bottom < 1:
        return
    wrong: Number = mixed(wholes, top, bottom) if wholes and top else parts(top, bottom)
    if not top:
        wrong = wholes
    yield one_step(case.two.left, case.sign, case.two.right, wrong)


def add_across(case: Parts) -> Iterator[Made]:
    """Add tops and add bottoms: 1/3 + 1/4 gives 2/7."""
    if _both_parts(case) and case.sign is Sign.PLUS:
        bottom = case.left.bottom + case.right.bottom
        yield from _said(case, _wholes(case), _tops(case), bottom)


def subtract_across(case: Parts) -> Iterator[Made]:
    """Take tops from tops and bottoms from bottoms: 3/5 - 1/2 gives 2/3."""
    if _both_parts(case) and case.sign is Sign.MINUS:
        bottom = abs(case.left.bottom - case.right.bottom)
        yield from _said(case, _wholes(case), _tops(case), bottom)


def tops_over_larger(case: Parts) -> Iterator[Made]:
    """Put the tops together over the larger bottom: 3/5 + 3/10 gives 6/10."""
    if _both_parts(case) and case.left.bottom != case.right.bottom:
        bottom = max(case.left.bottom, case.right.bottom)
        yield from _said(case, _wholes(case), _tops(case), bottom)


def tops_unchanged(case: Parts) -> Iterator[Made]:
    """Make the bottoms alike and leave the tops: 1/3 + 1/4 gives 2/12."""
    left, right = case.left.bottom, case.right.bottom
    if _both_parts(case) and left != right:
        for bottom in dict.fromkeys((lcm(left, right), left * right)):
            if bottom > max(left, right):
                yield from _said(case, _wholes(case), _tops(case), bottom)


def tops_only(case: Parts) -> Iterator[Made]:
    """Add the tops alone: 4/5 + 11/12 gives 15."""
    if _both_parts(case) and case.sign is Sign.PLUS:
        yield one_step(case.left.top, Sign.PLUS, case.right.top, _tops(case))


def bottoms_only(case: Parts) -> Iterator[Made]:
    """Add the bottoms alone: 4/5 + 11/12 gives 17."""
    if _both_parts(case) and case.sign is Sign.PLUS:
        total = case.left.bottom + case.right.bottom
        yield one_step(case.left.bottom, Sign.PLUS, case.right.bottom, total)


def wholes_forgotten(case: Parts) -> Iterator[Made]:
    """Work the parts and forget the wholes: 1 1/2 + 2 1/4 gives 3/4."""
    left, right = (Fraction(each.top, each.bottom) for each in (case.left, case.right))
    if case.sign in _SUMS and (case.left.whole or case.right.whole) and left and right:
        over = left + right if case.sign is Sign.PLUS else left - right
        if over > 0:
            yield one_step(exact(left), case.sign, exact(right), exact(over))


def parts_forgotten(case: Parts) -> Iterator[Made]:
    """Work the wholes and forget the parts: 1 1/2 + 2 1/4 gives 3."""
    if case.sign in _SUMS and case.left.whole and case.right.whole:
        yield one_step(case.left.whole, case.sign, case.right.whole, _wholes(case))


def whole_lost(case: Parts) -> Iterator[Made]:
    """Drop the whole that the parts make: 3/4 + 3/4 gives 2/4."""
    if _both_parts(case) and case.sign is Sign.PLUS:
        bottom = lcm(case.left.bottom, case.right.bottom)
        tops = [each.top * bottom // each.bottom for each in (case.left, case.right)]
        if sum(tops) > bottom and max(tops) < bottom:
            rest = sum(tops) - bottom
            step = says(
                parts(tops[0], bottom), Sign.PLUS, parts(tops[1], bottom), parts(rest, bottom)
            )
            wholes = _wholes(case)
            wrong = mixed(wholes, rest, bottom) if wholes else parts(rest, bottom)
            last = says(case.two.left, Sign.PLUS, case.two.right, wrong)
            yield ended(wrong, *((step, last) if last != step else (step,)))


def whole_as_top(case: Parts) -> Iterator[Made]:
    """Add a whole number to the top: 2 + 3/4 gives 5/4."""
    for number, part in ((case.left, case.right), (case.right, case.left)):
        if case.sign is Sign.PLUS and number.bottom == 1 and not part.whole:
            yield from _said(case, 0, number.whole + part.top, part.bottom)


def _alike(case: Parts) -> tuple[int, int, int] | None:
    """Return the bottom and both tops of a difference in which the parts do not suffice."""
    if case.sign is not Sign.MINUS or case.left.whole < max(1, case.right.whole):
        return None
    bottom = lcm(case.left.bottom, case.right.bottom)
    left = case.left.top * bottom // case.left.bottom
    right = case.right.top * bottom // case.right.bottom
    return (bottom, left, right) if left < right else None


def smaller_from_larger(case: Parts) -> Iterator[Made]:
    """Take the smaller parts from the larger: 3 1/4 - 1 3/4 gives 2 2/4."""
    alike = _alike(case)
    if alike is not None:
        bottom, left, right = alike
        yield from _said(case, _wholes(case), right - left, bottom)


def no_regroup(case: Parts) -> Iterator[Made]:
    """Use a whole as parts and still count it: 3 - 1/4 gives 3 3/4."""
    alike = _alike(case)
    if alike is not None:
        bottom, left, right = alike
        yield from _said(case, _wholes(case), bottom + left - right, bottom)


def whole_as_ten(case: Parts) -> Iterator[Made]:
    """Change a whole for ten parts: 3 1/4 - 1 3/4 as 2 11/4 - 1 3/4."""
    alike = _alike(case)
    if alike is not None and alike[0] != 10:
        bottom, left, right = alike
        over = parts(10 + left, bottom), parts(right, bottom)
        rest = parts(10 + left - right, bottom)
        wholes = _wholes(case) - 1
        if wholes >= 0:
            first = says(over[0], Sign.MINUS, over[1], rest)
            wrong = exact(wholes + exact(rest))
            last = says(wholes, Sign.PLUS, rest, wrong)
            yield ended(wrong, first, last) if wholes else ended(rest, first)


def near_miss(case: Parts) -> Iterator[Made]:
    """Be one part off: 1/5 + 3/5 gives 3/5."""
    if case.sign not in _SUMS:
        return
    bottom = lcm(case.left.bottom, case.right.bottom)
    right = case.left.value + case.right.value * (1 if case.sign is Sign.PLUS else -1)
    for off in (-1, 1):
        wrong = exact(right + Fraction(off, bottom))
        yield one_step(case.two.left, case.sign, case.two.right, wrong)


def wrong_operation(case: Parts) -> Iterator[Made]:
    """Subtract instead of adding, or add instead of subtracting."""
    left, right = case.left.value, case.right.value
    if case.sign is Sign.MINUS:
        total = exact(left + right)
        yield one_step(case.two.left, Sign.PLUS, case.two.right, total)
    elif case.sign is Sign.PLUS and left >= right:
        yield one_step(case.two.left, Sign.MINUS, case.two.right, exact(left - right))
    elif case.sign is Sign.PLUS:
        yield one_step(case.two.right, Sign.MINUS, case.two.left, exact(right - left))
