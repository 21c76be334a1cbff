"""A friendly factor near by, or one factor changed, and the product not put right after it."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import one_step, says, zeros

_FROM_TENS = 2
_TO_TENS = 3
_FIVE = (4, 6, 7)
"""Factors near five, from which a child may go: our choice, as is how near a ten must be."""
_TENFOLD = {5: 2, 25: 4, 50: 2}
"""Factors that a child may take as 10 or 100, and how many times too much that is."""
_OPPOSITE = {Sign.PLUS: Sign.MINUS, Sign.MINUS: Sign.PLUS}


def _near(number: int) -> Iterator[int]:
    """Yield the friendly numbers near a factor: the ten or hundred near by, five for 4, 6, 7."""
    if number in _FIVE:
        yield 5
    for size in (10, 100, 1000):
        over = number % size
        if over and number > size * 7 // 10:
            if size - over <= _TO_TENS:
                yield number - over + size
            if over <= _FROM_TENS and number > size:
                yield number - over


def _turns(pair: Pair) -> Iterator[tuple[int, int, int]]:
    """Yield each friendly factor, how far it lies above the one given, and the other factor."""
    for changed, kept in ((pair.left, pair.right), (pair.right, pair.left)):
        if kept > 1 and (changed > 9 or kept % 10):
            for near in dict.fromkeys(_near(changed)):
                yield near, near - changed, kept


def forget_adjust(pair: Pair) -> Iterator[Made]:
    """Use the friendly factor and never put it right: 19 x 7 gives 140, 36 x 25 gives 3600."""
    for near, _, kept in _turns(pair):
        yield one_step(near, Sign.TIMES, kept, near * kept)
    for changed, kept in ((pair.left, pair.right), (pair.right, pair.left)):
        if changed in _TENFOLD and kept > 1:
            large = changed * _TENFOLD[changed]
            yield one_step(kept, Sign.TIMES, large, kept * large)


def adjust_wrong_way(pair: Pair) -> Iterator[Made]:
    """Put the group on where it comes off, or off where it goes on: 19 x 7 as 140 + 7."""
    for near, above, kept in _turns(pair):
        sign = Sign.PLUS if above > 0 else Sign.MINUS
        yield _put_right(near, kept, (sign, abs(above) * kept))


def adjust_by_ones(pair: Pair) -> Iterator[Made]:
    """Put right by ones instead of by groups: 19 x 7 as 140 - 1."""
    for near, above, kept in _turns(pair):
        sign = Sign.MINUS if above > 0 else Sign.PLUS
        yield _put_right(near, kept, (sign, abs(above)))


def _put_right(near: int, kept: int, change: tuple[Sign, int]) -> Made:
    sign, size = change
    between = near * kept
    wrong = Pair(between, sign, size).answer
    steps = says(near, Sign.TIMES, kept, between), says(between, sign, size, wrong)
    return Made(wrong, steps, at=1)


def one_side_only(pair: Pair) -> Iterator[Made]:
    """Double or halve one factor and leave the other: 16 x 5 as 16 x 10 or as 8 x 5."""
    for halved, doubled in ((pair.left, pair.right), (pair.right, pair.left)):
        if halved % 2 == 0 and halved > 2 and _worth_doubling(halved, doubled):
            twice, half = doubled * 2, halved // 2
            step = says(doubled, Sign.TIMES, 2, twice)
            yield Made(halved * twice, (step, says(halved, Sign.TIMES, twice, halved * twice)), 1)
            step = says(halved, Sign.OVER, 2, half)
            yield Made(half * doubled, (step, says(half, Sign.TIMES, doubled, half * doubled)), 1)


def _worth_doubling(halved: int, doubled: int) -> bool:
    """Tell whether a child would halve and double here: to reach tens, or a smaller factor."""
    return doubled > 1 and (zeros(doubled * 2) > zeros(doubled) or 10 < halved < 100)
