"""A friendly number near by, and the difference forgotten or put right the wrong way."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import one_step, says

_NEAR = ((10, 4, 2), (100, 15, 5), (1000, 100, 50), (10_000, 500, 200), (100_000, 2000, 1000))
"""Round to this, from at most so far below or so far above: our choice."""
_NEAR_BELOW_TEN = ((10, 2, 0),)
_OPPOSITE = {Sign.PLUS: Sign.MINUS, Sign.MINUS: Sign.PLUS}


def _friendly(number: int) -> Iterator[tuple[int, int]]:
    """Yield each friendly neighbour and how far it lies above the number (below: negative)."""
    seen = {number, 0}
    for size, up, down in _NEAR if number > 9 else _NEAR_BELOW_TEN:
        over = number % size
        for near, far in ((number + size - over, size - over <= up), (number - over, over <= down)):
            if far and near not in seen:
                seen.add(near)
                yield near, near - number


_NEAR_DOUBLE = 3
"""Two numbers so near may be taken as a double: our choice."""


def _doubles(pair: Pair) -> Iterator[tuple[int, int]]:
    """Yield the number whose double is near a sum, and how far it lies above the other."""
    off = pair.left - pair.right
    if pair.sign is Sign.PLUS and 0 < abs(off) <= _NEAR_DOUBLE:
        yield from ((pair.left, off), (pair.right, -off))


def forget_adjust(pair: Pair) -> Iterator[Made]:
    """Use the friendly number and never put the difference right: 65 - 29 gives 35."""
    for near, _ in _friendly(pair.right):
        worked = Pair(pair.left, pair.sign, near)
        yield Made(worked.answer, (says(pair.left, pair.sign, near, worked.answer),))
    if pair.sign is Sign.PLUS:
        for near, _ in _friendly(pair.left):
            total = near + pair.right
            yield Made(total, (says(near, pair.sign, pair.right, total),))
    for double, _ in _doubles(pair):
        yield one_step(double, Sign.PLUS, double, 2 * double)


def adjust_wrong_way(pair: Pair) -> Iterator[Made]:
    """Put the difference right the wrong way: 65 - 30 = 35, then 34."""
    for near, above in _friendly(pair.right):
        yield _off(pair.left, pair.sign, near, above)
    if pair.sign is Sign.PLUS:
        for near, above in _friendly(pair.left):
            yield _off(near, pair.sign, pair.right, above)
    for double, above in _doubles(pair):
        yield _off(double, Sign.PLUS, double, above)


def _off(left: int, sign: Sign, right: int, above: int) -> Made:
    between = Pair(left, sign, right).answer
    way = sign if above > 0 else _OPPOSITE[sign]
    wrong = Pair(between, way, abs(above)).answer
    steps = says(left, sign, right, between), says(between, way, abs(above), wrong)
    return Made(wrong, steps, at=1)


def moved_across(pair: Pair) -> Iterator[Made]:
    """Move some across as if it were a sum: 63 - 28 is worked as 61 - 30."""
    if pair.sign is not Sign.MINUS:
        return
    for near, above in _friendly(pair.right):
        if above > 0 and pair.left - above >= near:
            rest = pair.left - above
            steps = (
                says(pair.right, Sign.PLUS, above, near),
                says(pair.left, Sign.MINUS, above, rest),
                says(rest, Sign.MINUS, near, rest - near),
            )
            yield Made(rest - near, steps, at=1)
