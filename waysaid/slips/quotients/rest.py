"""What is left over, forgotten or said in a way that it is not."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Sign, decimal, mixed
from waysaid.slips.quotients.facts import groups_said
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, ended, says, whole


def _told(pair: Pair, groups: int) -> tuple[Equation, Equation]:
    """Return the groups taken out and what they leave."""
    taken = groups * pair.right
    return (
        says(groups, Sign.TIMES, pair.right, taken),
        says(pair.left, Sign.MINUS, taken, pair.left - taken),
    )


def rest_forgotten(pair: Pair) -> Iterator[Made]:
    """Say the groups and forget what is left over: 16 / 3 gives 5."""
    groups, left = divmod(pair.left, pair.right)
    if left and groups:
        step = says(groups, Sign.TIMES, pair.right, groups * pair.right)
        yield ended(groups, step, whole(pair, groups), at=1)


def rest_as_point(pair: Pair) -> Iterator[Made]:
    """Write what is left over after the point: 16 / 3 gives 5.1."""
    groups, left = divmod(pair.left, pair.right)
    if left and groups:
        size = len(str(left))
        wrong = decimal(groups + Fraction(left, 10**size), size)
        yield ended(wrong, *_told(pair, groups), whole(pair, wrong), at=2)


def rest_wrong_bottom(pair: Pair) -> Iterator[Made]:
    """Put what is left over a number that it is no part of: 16 / 3 gives 5 1/5 or 5 1/16."""
    groups, left = divmod(pair.left, pair.right)
    if left and groups:
        for bottom in dict.fromkeys((groups, pair.left)):
            if bottom > left:
                wrong = mixed(groups, left, bottom)
                yield ended(wrong, *_told(pair, groups), whole(pair, wrong), at=2)


def rest_too_large(pair: Pair) -> Iterator[Made]:
    """Leave over more than a group: 16 / 3 gives 4 r 4."""
    groups = pair.left // pair.right
    for fewer in (1, 2):
        if groups > fewer:
            left = pair.left - (groups - fewer) * pair.right
            yield Made(groups_said(groups - fewer, left), _told(pair, groups - fewer))


def rest_as_group(pair: Pair) -> Iterator[Made]:
    """Count what is left over as a group: 16 / 3 gives 6."""
    groups, left = divmod(pair.left, pair.right)
    if left and groups:
        steps = (*_told(pair, groups), says(groups, Sign.PLUS, 1, groups + 1))
        yield Made(groups + 1, steps, at=2)


def rest_not_carried(pair: Pair) -> Iterator[Made]:
    """Divide digit by digit, and leave behind what each digit leaves: 96 / 4 gives 21."""
    places = tuple(reversed(digits(pair.left)))
    if not 1 < pair.right < 10 or len(places) < 2 or places[0] < pair.right:
        return
    steps, said = [], ""
    at = None
    for place, digit in enumerate(places):
        groups, left = divmod(digit, pair.right)
        if left and place < len(places) - 1:
            at = place if at is None else at
        said += str(groups)
        steps.append(says(digit, Sign.OVER, pair.right, groups))
    if at is not None:
        yield ended(int(said), *steps, whole(pair, int(said)), at=at)
