"""Products that go wrong as a whole: another sign, another fact, a group too many or too few."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, one_step, pieces, put_together, says, whole, zeros

_MOST_GROUPS = 20
"""Up to so many groups may be counted one after another: our choice."""
_LARGEST_FACT = 12
_FAR = 2


def is_fact(pair: Pair) -> bool:
    """Tell whether both factors are those of the tables."""
    return max(pair.left, pair.right) <= _LARGEST_FACT


def wrong_operation(pair: Pair) -> Iterator[Made]:
    """Add instead of multiplying: 12 x 8 gives 20."""
    if is_fact(pair):
        yield from added_up(pair)


def added_up(pair: Pair) -> Iterator[Made]:
    """Add instead of multiplying, with larger numbers: 23 x 14 gives 37."""
    yield one_step(pair.left, Sign.PLUS, pair.right, pair.left + pair.right)


def group_off(pair: Pair) -> Iterator[Made]:
    """Count one group too few or too many: 12 x 8 as 11 eights."""
    if is_fact(pair):
        yield from groups_off(pair)


def groups_off(pair: Pair) -> Iterator[Made]:
    """Count one group too few or too many of a larger number: 14 x 6 as 13 sixes."""
    for groups, size in ((pair.left, pair.right), (pair.right, pair.left)):
        if 2 <= groups <= _MOST_GROUPS and size > 1:
            for off in (-1, 1):
                yield one_step(groups + off, Sign.TIMES, size, (groups + off) * size)


def fact_beside(pair: Pair) -> Iterator[Made]:
    """Give the answer of the fact next to it in one of the two tables: 6 x 8 as 6 x 7."""
    yield from _other_fact(pair, 1, 1)


def fact_near(pair: Pair) -> Iterator[Made]:
    """Give the answer of another fact near by: 9 x 6 as 7 x 8."""
    yield from _other_fact(pair, 2, 2 * _FAR)


def _other_fact(pair: Pair, near: int, far: int) -> Iterator[Made]:
    """Yield the facts that lie so far off; 70 x 8 is the fact 7 x 8 with its zero."""
    if not pair.left or not pair.right:
        return
    size = 10 ** zeros(pair.left), 10 ** zeros(pair.right)
    left, right = pair.left // size[0], pair.right // size[1]
    if is_fact(pair):
        size, left, right = (1, 1), pair.left, pair.right
    if not (2 <= left <= _LARGEST_FACT and 2 <= right <= _LARGEST_FACT):
        return
    for off, first, second in _around():
        other = left + first, right + second
        if near <= off <= far and min(other) > 1 and max(other) <= _LARGEST_FACT:
            product = other[0] * other[1] * size[0] * size[1]
            yield one_step(other[0] * size[0], Sign.TIMES, other[1] * size[1], product)


def _around() -> Iterator[tuple[int, int, int]]:
    """Yield how far off both factors are together, and each; the nearest first."""
    steps = range(-_FAR, _FAR + 1)
    yield from sorted((abs(one) + abs(two), one, two) for one in steps for two in steps)


def near_miss(pair: Pair) -> Iterator[Made]:
    """Be one off in a fact, or ten off: 6 x 8 as 47 or 58."""
    size = 1
    while size <= pair.answer:
        for off in (-size, size):
            if size < 100 or pair.answer >= size * 10:
                yield Made(pair.answer + off, (whole(pair, pair.answer + off),))
        size *= 10


def zero_times(pair: Pair) -> Iterator[Made]:
    """Say that zero times n is n: 0 x 8 gives 8, and 205 x 3 gives 645."""
    if not pair.left or not pair.right:
        if pair.left or pair.right:
            yield Made(pair.left + pair.right, (whole(pair, pair.left + pair.right),))
        return
    for over, times in ((pair.left, pair.right), (pair.right, pair.left)):
        places = [place for place, digit in enumerate(digits(over)) if not digit]
        if places and 1 < times < 10:
            parts = [piece * times for piece in pieces(over)]
            steps = [
                says(piece, Sign.TIMES, times, part)
                for piece, part in zip(pieces(over), parts, strict=True)
            ]
            at = len(steps)
            for place in reversed(places):
                steps.append(says(0, Sign.TIMES, times * 10**place, times * 10**place))
                parts.append(times * 10**place)
            yield put_together(pair, steps, parts, at)
