"""Products and quotients of fractions, and a fraction of a number."""

from collections.abc import Iterator
from fractions import Fraction
from math import lcm

from waysaid.number import Equation, Exact, Number, Sign, exact, parts
from waysaid.slips.cases import Part, Parts
from waysaid.slips.slip import Made
from waysaid.slips.work import ended, one_step, says

_TIMES = (Sign.TIMES, Sign.OF)
_MOST_MULTIPLIED = 12
"""Up to this number, both top and bottom may be multiplied by it: our choice."""


def _top(part: Part) -> int:
    """Return the top of the number written with one top and one bottom: 5 for 1 1/4."""
    return part.whole * part.bottom + part.top


def _said(case: Parts, wrong: Number) -> Made:
    return one_step(case.two.left, case.sign, case.two.right, wrong)


def both_multiplied(case: Parts) -> Iterator[Made]:
    """Multiply top and bottom by the whole number: 2/3 x 4 gives 8/12."""
    for part, number in ((case.left, case.right), (case.right, case.left)):
        small = number.bottom == 1 and 1 < number.whole <= _MOST_MULTIPLIED
        if case.sign in _TIMES and small and part.bottom > 1 and not part.whole:
            yield _said(case, parts(part.top * number.whole, part.bottom * number.whole))


def bottom_kept(case: Parts) -> Iterator[Made]:
    """Multiply the tops over a bottom made alike: 2/5 x 3/5 gives 6/5."""
    if case.sign in _TIMES and min(case.left.bottom, case.right.bottom) > 1:
        bottom = lcm(case.left.bottom, case.right.bottom)
        tops = [_top(each) * bottom // each.bottom for each in (case.left, case.right)]
        yield _said(case, parts(tops[0] * tops[1], bottom))


def crossed(case: Parts) -> Iterator[Made]:
    """Multiply crosswise, as a division is worked: 3/4 x 1/3 gives 9/4."""
    if case.sign is Sign.TIMES and min(case.left.bottom, case.right.bottom) > 1:
        bottom = case.left.bottom * _top(case.right)
        if bottom:
            yield _said(case, parts(_top(case.left) * case.right.bottom, bottom))


def wrong_turned(case: Parts) -> Iterator[Made]:
    """Turn the wrong number over: 3/4 / 1/3 as 4/3 x 1/3."""
    if case.sign is Sign.OVER and _top(case.left):
        turned = parts(case.left.bottom, _top(case.left))
        wrong = exact(Fraction(1) / case.left.value * case.right.value)
        yield ended(wrong, says(turned, Sign.TIMES, case.two.right, wrong))


def always_smaller(case: Parts) -> Iterator[Made]:
    """Make it smaller, as division does with whole numbers: 6 / 1/2 gives 3."""
    part = case.right
    if case.sign is Sign.OVER and not part.whole and part.top < part.bottom:
        wrong = exact(case.left.value * part.value)
        if part.top == 1:
            yield one_step(case.two.left, Sign.OVER, part.bottom, wrong)
        else:
            yield one_step(case.two.left, Sign.TIMES, case.two.right, wrong)


def wrong_operation(case: Parts) -> Iterator[Made]:
    """Add instead of multiplying, multiply instead of dividing, divide instead of multiplying."""
    left, right = case.left.value, case.right.value
    if case.sign is Sign.TIMES:
        yield one_step(case.two.left, Sign.PLUS, case.two.right, exact(left + right))
    elif case.sign is Sign.OVER:
        yield one_step(case.two.left, Sign.TIMES, case.two.right, exact(left * right))


def part_missing(case: Parts) -> Iterator[Made]:
    """Multiply the wholes and let the parts be: 2 1/2 x 3 gives 6 1/2."""
    if case.sign not in _TIMES or not (case.left.whole and case.right.whole):
        return
    wholes = case.left.whole * case.right.whole
    tops = [Fraction(each.top, each.bottom) for each in (case.left, case.right)]
    rest = tops[0] * tops[1] if all(tops) else tops[0] or tops[1]
    step = says(case.left.whole, Sign.TIMES, case.right.whole, wholes)
    wrong = exact(wholes + rest)
    yield ended(wrong, step, says(wholes, Sign.PLUS, exact(rest), wrong))
    yield ended(wholes, step)


def larger_by_smaller(case: Parts) -> Iterator[Made]:
    """Divide the other way round: 1/2 / 3 as 3 / 1/2."""
    if case.sign is Sign.OVER and 0 < case.left.value < case.right.value:
        wrong = exact(case.right.value / case.left.value)
        yield one_step(case.two.right, Sign.OVER, case.two.left, wrong)


def _of(case: Parts) -> tuple[Part, Exact, Number] | None:
    """Return the fraction below one, the number it is taken of, and that number as written."""
    if case.sign not in _TIMES:
        return None
    pairs = ((case.left, case.right, case.two.right), (case.right, case.left, case.two.left))
    for part, number, written in pairs[: 1 if case.sign is Sign.OF else 2]:
        if part.bottom > 1 and not part.whole and part.top and number.value > 1:
            return part, exact(number.value), written
    return None


def only_divided(case: Parts) -> Iterator[Made]:
    """Share by the bottom and stop: 2/3 of 57 gives 19."""
    found = _of(case)
    if found is not None and found[0].top > 1:
        part, number, written = found
        yield one_step(written, Sign.OVER, part.bottom, exact(Fraction(number, part.bottom)))


def only_multiplied(case: Parts) -> Iterator[Made]:
    """Take it as often as the top says and stop: 2/3 of 57 gives 114."""
    found = _of(case)
    if found is not None and found[0].top > 1:
        part, number, written = found
        yield one_step(written, Sign.TIMES, part.top, exact(number * part.top))


def times_bottom(case: Parts) -> Iterator[Made]:
    """Multiply by the bottom: 1/4 of 20 gives 80."""
    found = _of(case)
    if found is not None:
        part, number, written = found
        product = exact(number * part.bottom)
        yield one_step(written, Sign.TIMES, part.bottom, product)
        if part.top > 1 and product % part.top == 0:
            steps = (
                says(written, Sign.TIMES, part.bottom, product),
                says(product, Sign.OVER, part.top, exact(Fraction(product, part.top))),
            )
            yield ended(exact(Fraction(product, part.top)), *steps)


def bottom_taken(case: Parts) -> Iterator[Made]:
    """Take the bottom away: 1/4 of 20 gives 16."""
    found = _of(case)
    if found is not None:
        part, number, written = found
        yield one_step(written, Sign.MINUS, part.bottom, exact(number - part.bottom))


def rest_instead(case: Parts) -> Iterator[Made]:
    """Say what is left instead of the part: 1/4 of 20 gives 15."""
    found = _of(case)
    if found is not None and found[0].top < found[0].bottom:
        part, number, written = found
        taken = exact(number * part.value)
        rest = exact(number - taken)
        yield ended(rest, _taken(case, taken), says(written, Sign.MINUS, taken, rest), at=1)


def _taken(case: Parts, taken: Exact) -> Equation:
    return says(case.two.left, case.sign, case.two.right, taken)
