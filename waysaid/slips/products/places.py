"""Products whose places go wrong: zeros lost or added, tens as ones, partial products left out."""

from collections.abc import Iterator

from waysaid.number import Equation, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, ended, pieces, put_together, says, whole, zeros

_Part = tuple[int, int]


def zero_dropped(pair: Pair) -> Iterator[Made]:
    """Lose a zero or more: 60 x 40 gives 240."""
    if pair.answer:
        for lost in range(1, zeros(pair.left) + zeros(pair.right) + 1):
            yield _with_zeros(pair, pair.answer // 10**lost)


def zero_added(pair: Pair) -> Iterator[Made]:
    """Write a zero too many: 60 x 40 gives 24000."""
    if pair.answer and zeros(pair.left) + zeros(pair.right):
        yield _with_zeros(pair, pair.answer * 10)


def _with_zeros(pair: Pair, wrong: int) -> Made:
    left = pair.left // 10 ** zeros(pair.left)
    right = pair.right // 10 ** zeros(pair.right)
    if left == 1 or right == 1:
        return ended(wrong, whole(pair, wrong))
    return ended(wrong, says(left, Sign.TIMES, right, left * right), whole(pair, wrong), at=1)


def digits_alone(pair: Pair) -> Iterator[Made]:
    """Treat the tens as ones: 23 x 14 as 23 x 4 and 23 x 1."""
    for kept, alone in ((pair.left, pair.right), (pair.right, pair.left)):
        single = [digit for digit in digits(alone) if digit]
        if len(single) > 1 and kept:
            yield _parts(pair, [(kept, digit) for digit in single], at=1)


def part_missing(pair: Pair) -> Iterator[Made]:
    """Leave a partial product out: 145 x 12 gives 1450."""
    for kept, split in ((pair.left, pair.right), (pair.right, pair.left)):
        yield from _one_left_out(pair, [(kept, piece) for piece in pieces(split)])
    lefts, rights = pieces(pair.left), pieces(pair.right)
    if len(lefts) > 1 and len(rights) > 1:
        yield from _one_left_out(pair, [(one, two) for one in lefts for two in rights])


def _one_left_out(pair: Pair, parts: list[_Part]) -> Iterator[Made]:
    for at in range(len(parts) - 1, -1, -1):
        if len(parts) > 1:
            yield _parts(pair, parts[:at] + parts[at + 1 :])


def straight_across(pair: Pair) -> Iterator[Made]:
    """Multiply tens by tens and ones by ones only: 13 x 14 gives 112."""
    lefts, rights = digits(pair.left), digits(pair.right)
    if len(lefts) == len(rights) > 1:
        matched = [
            (one * 10**place, two * 10**place)
            for place, (one, two) in enumerate(zip(lefts, rights, strict=True))
            if one and two
        ]
        if matched:
            yield _parts(pair, matched[::-1], at=len(matched) - 1)


def _parts(pair: Pair, parts: list[_Part], at: int = 0) -> Made:
    """Return the work of partial products and their sum."""
    steps: list[Equation] = [says(one, Sign.TIMES, two, one * two) for one, two in parts]
    at = min(at, len(steps) - 1)
    return put_together(pair, steps, [one * two for one, two in parts], at)


def broken_up(pair: Pair) -> Made | None:
    """Return the right work by partial products; None where there is but one."""
    lefts, rights = pieces(pair.left), pieces(pair.right)
    parts = [(one, two) for one in lefts for two in rights]
    return _parts(pair, parts) if len(parts) > 1 else None
