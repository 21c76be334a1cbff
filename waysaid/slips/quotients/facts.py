"""Divisions that go wrong as a whole: another sign, another fact, a group off, numbers swapped."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Remainder, Said, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, one_step, says, whole

_MOST_GROUPS = 20
_LARGEST_FACT = 12
_FAR = 2


def groups_said(groups: int, left: int) -> Said:
    """Return groups and what is left as an answer: a whole number where nothing is left."""
    return Remainder(groups, left) if left else groups


def wrong_operation(pair: Pair) -> Iterator[Made]:
    """Multiply or subtract instead of dividing: 48 / 6 gives 288 or 42."""
    yield one_step(pair.left, Sign.TIMES, pair.right, pair.left * pair.right)
    if pair.left >= pair.right:
        yield one_step(pair.left, Sign.MINUS, pair.right, pair.left - pair.right)


def near_miss(pair: Pair) -> Iterator[Made]:
    """Be one off in a division fact: 48 / 6 gives 9."""
    yield from _missed(pair, (1, -1))


def tens_missed(pair: Pair) -> Iterator[Made]:
    """Be ten off in how many groups there are: 96 / 4 gives 34."""
    yield from _missed(pair, (10, -10))


def _missed(pair: Pair, misses: tuple[int, ...]) -> Iterator[Made]:
    groups, left = divmod(pair.left, pair.right)
    for off in misses:
        wrong = groups + off
        if wrong > 0 and (abs(off) == 1 or groups > 10):
            step = says(pair.left - left, Sign.OVER, pair.right, wrong)
            if left:
                rest = says(pair.left, Sign.MINUS, pair.left - left, left)
                yield Made(groups_said(wrong, left), (step, rest))
            else:
                yield Made(wrong, (step,))


def rest_near_miss(pair: Pair) -> Iterator[Made]:
    """Be one off in what is left over: 16 / 3 gives 5 r 2."""
    groups, left = divmod(pair.left, pair.right)
    taken = groups * pair.right
    for rest in (left - 1, left + 1):
        if left and 0 < rest < pair.right and groups:
            steps = (
                says(groups, Sign.TIMES, pair.right, taken),
                says(pair.left, Sign.MINUS, taken, rest),
            )
            yield Made(groups_said(groups, rest), steps, at=1)


def neighbour_fact(pair: Pair) -> Iterator[Made]:
    """Take a neighbouring fact for the one that fits: 56 / 8 by 8 x 6 = 56."""
    groups, left = divmod(pair.left, pair.right)
    if left or not (1 < groups <= _LARGEST_FACT and 1 < pair.right <= _LARGEST_FACT):
        return
    for off in range(1, _FAR + 1):
        for other in (groups - off, groups + off):
            if other > 0:
                fact = says(pair.right, Sign.TIMES, other, pair.left)
                yield Made(other, (fact, whole(pair, other)))


def group_off(pair: Pair) -> Iterator[Made]:
    """Count one group too few or too many on the way."""
    groups, left = divmod(pair.left, pair.right)
    if 1 < groups <= _MOST_GROUPS and not left:
        for off in (-1, 1):
            taken = (groups + off) * pair.right
            step = says(groups + off, Sign.TIMES, pair.right, taken)
            yield Made(
                groups + off, (step, says(pair.left, Sign.OVER, pair.right, groups + off)), 1
            )


def larger_by_smaller(pair: Pair) -> Iterator[Made]:
    """Divide the larger number by the smaller, whichever was to be shared: 4 / 12 gives 3."""
    if 0 < pair.left < pair.right:
        wrong = Fraction(pair.right, pair.left)
        result = wrong.numerator if wrong.denominator == 1 else wrong
        yield one_step(pair.right, Sign.OVER, pair.left, result)
        groups, left = divmod(pair.right, pair.left)
        if left:
            steps = (
                says(groups, Sign.TIMES, pair.left, groups * pair.left),
                says(pair.right, Sign.MINUS, groups * pair.left, left),
            )
            yield Made(groups_said(groups, left), steps)


def swapped_digits(pair: Pair) -> Iterator[Made]:
    """Divide each digit and the divisor the way that works: 26 / 6 as 6 / 2 and 6 / 6."""
    places = tuple(reversed(digits(pair.left)))
    if not 1 < pair.right < 10 or len(places) < 2 or 0 in places:
        return
    pairs = [(max(digit, pair.right), min(digit, pair.right)) for digit in places]
    if any(over % under for over, under in pairs):
        return
    results = [over // under for over, under in pairs]
    at = next((at for at, digit in enumerate(places) if digit < pair.right), None)
    if at is not None:
        wrong = int("".join(map(str, results)))
        steps = [
            says(over, Sign.OVER, under, result)
            for (over, under), result in zip(pairs, results, strict=True)
        ]
        yield Made(wrong, (*steps, says(pair.left, Sign.OVER, pair.right, wrong)), at)


def zero_shared(pair: Pair) -> Iterator[Made]:
    """Say that zero shared by n is n: 0 / 5 gives 5."""
    if not pair.left:
        yield one_step(0, Sign.OVER, pair.right, pair.right)
