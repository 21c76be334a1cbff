"""A percent of a number: the percent itself said, divided by, taken off, or a place too far."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Number, Sign, decimal, exact, percent
from waysaid.slips.cases import Rate, is_pointed
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import ended, one_step, says

_BLOCKS = (100, 50, 25, 10, 5, 1)
"""The percents that a child may work from: our choice."""


def _right(case: Rate) -> Exact:
    return exact(case.rate.value * exact(case.number))


def _number(case: Rate, value: Exact | Fraction) -> Number:
    """Return an answer as a class would write it: with a point where the number has one."""
    return decimal(exact(value)) if is_pointed(case.number) else exact(value)


def _said(case: Rate, wrong: Exact | Fraction) -> Made:
    return one_step(case.two.left, case.two.sign, case.two.right, _number(case, wrong))


def as_number(case: Rate) -> Iterator[Made]:
    """Say the percent as a number: 15% of 80 gives 15."""
    yield _said(case, case.percent)


def divided_by(case: Rate) -> Iterator[Made]:
    """Divide by the percent, as works for ten: 20% of 60 gives 3."""
    if case.percent:
        by = exact(case.percent)
        wrong = _number(case, Fraction(exact(case.number)) / by)
        yield one_step(case.number, Sign.OVER, by, wrong)


def taken(case: Rate) -> Iterator[Made]:
    """Take the percent off as a number, or put it on: 15% of 80 gives 65 or 95."""
    by, number = exact(case.percent), exact(case.number)
    for sign, wrong in ((Sign.MINUS, number - by), (Sign.PLUS, number + by)):
        yield one_step(case.number, sign, by, _number(case, wrong))


def hundred_forgotten(case: Rate) -> Iterator[Made]:
    """Multiply by the percent and stop: 15% of 80 gives 1200."""
    by = exact(case.percent)
    yield one_step(by, Sign.TIMES, case.number, _number(case, by * exact(case.number)))


def place_off(case: Rate) -> Iterator[Made]:
    """Be a place off: 15% of 80 gives 120 or 1.2."""
    right = _right(case)
    for wrong in (right * 10, Fraction(right) / 10):
        yield one_step(case.two.left, case.two.sign, case.two.right, decimal(exact(wrong)))


def part_missing(case: Rate) -> Iterator[Made]:
    """Say one block and leave the rest: 15% of 80 gives 8 or 4."""
    if case.percent.denominator > 1:
        return
    hundredths = int(case.percent)
    largest = next((block for block in _BLOCKS if block < hundredths), None)
    if largest is None:
        return
    ten = (10,) if hundredths > 10 else ()
    for block in dict.fromkeys((largest, hundredths - largest, *ten)):
        part = percent(Fraction(block, 100))
        wrong = _number(case, Fraction(block, 100) * exact(case.number))
        yield one_step(part, case.two.sign, case.number, wrong)


def rest_instead(case: Rate) -> Iterator[Made]:
    """Say what is left instead of the part: 15% of 80 gives 68."""
    if case.percent < 100:
        right, number = _right(case), exact(case.number)
        found = says(case.two.left, case.two.sign, case.two.right, _number(case, right))
        rest = _number(case, number - right)
        yield ended(rest, found, says(case.number, Sign.MINUS, _number(case, right), rest), at=1)


def hundred_dropped(case: Rate) -> Iterator[Made]:
    """Leave the whole out of a percent over 100: 120% of 50 gives 10."""
    if case.percent > 100:
        over = percent(Fraction(case.rate.value) - 1)
        wrong = _number(case, (case.rate.value - 1) * exact(case.number))
        yield one_step(over, case.two.sign, case.number, wrong)


def near_miss(case: Rate) -> Iterator[Made]:
    """Be one off somewhere on the way."""
    for off in (-1, 1):
        yield _said(case, _right(case) + off)


PERCENTS: tuple[Rule[Rate], ...] = (
    Rule(SlipName.PERCENT_AS_NUMBER, as_number, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.DIVIDED_BY_PERCENT, divided_by, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.PART_MISSING, part_missing, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.PERCENT_TAKEN, taken, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.POINT_MISPLACED, place_off, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.HUNDRED_FORGOTTEN, hundred_forgotten, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.HUNDRED_DROPPED, hundred_dropped, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.REST_INSTEAD, rest_instead, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.NEAR_MISS, near_miss, Likely.SOMETIMES, OUR_GUESS),
)
