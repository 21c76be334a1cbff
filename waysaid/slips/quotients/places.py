"""Divisions whose places go wrong, parts left out, and one of the two numbers changed alone."""

from collections.abc import Iterator

from waysaid.number import Equation, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, ended, pieces, put_together, says, whole, zeros


def _even(pair: Pair) -> bool:
    """Tell whether the division leaves nothing and has something to share."""
    return pair.left > 0 and pair.left % pair.right == 0


def zero_dropped(pair: Pair) -> Iterator[Made]:
    """Leave zeros of the answer out: 618 / 3 gives 26, 420 / 7 gives 6."""
    if not _even(pair):
        return
    inner = str(pair.answer).rstrip("0")
    ends = zeros(pair.answer)
    for lost in range(1, ends + 1):
        yield ended(pair.answer // 10**lost, whole(pair, pair.answer // 10**lost))
    if "0" in inner:
        wrong = int(inner.replace("0", "") + "0" * ends)
        yield ended(wrong, whole(pair, wrong))


def zero_added(pair: Pair) -> Iterator[Made]:
    """Write a zero too many: 420 / 7 gives 600, 6000 / 20 gives 3000."""
    if _even(pair) and zeros(pair.left):
        for more in range(1, zeros(pair.right) + 2):
            yield ended(pair.answer * 10**more, whole(pair, pair.answer * 10**more))


def digits_alone(pair: Pair) -> Iterator[Made]:
    """Divide the digits as ones and add what they give: 84 / 4 as 2 and 1."""
    single = [digit for digit in reversed(digits(pair.left)) if digit]
    if len(single) > 1 and pair.right > 1 and not any(digit % pair.right for digit in single):
        results = [digit // pair.right for digit in single]
        steps = [
            says(digit, Sign.OVER, pair.right, result)
            for digit, result in zip(single, results, strict=True)
        ]
        yield put_together(pair, steps, results)


def part_missing(pair: Pair) -> Iterator[Made]:
    """Leave one part of what is shared out: 84 / 4 gives 20."""
    places = pieces(pair.answer)
    if pair.right == 1 or len(places) < 2:
        return
    for left_out in range(len(places) - 1, -1, -1):
        kept = places[:left_out] + places[left_out + 1 :]
        steps: list[Equation] = [
            says(piece * pair.right, Sign.OVER, pair.right, piece) for piece in kept
        ]
        yield put_together(pair, steps, list(kept))


def one_side_only(pair: Pair) -> Iterator[Made]:
    """Halve one of the two and leave the other: 180 / 12 as 90 / 12 or as 180 / 6."""
    if pair.right < 3 or not _even(pair):
        return
    if pair.left % 2 == 0 and pair.left // 2 % pair.right == 0:
        half = pair.left // 2
        steps = (
            says(pair.left, Sign.OVER, 2, half),
            says(half, Sign.OVER, pair.right, half // pair.right),
        )
        yield Made(half // pair.right, steps, at=1)
    if pair.right % 2 == 0:
        half, twice = pair.right // 2, pair.answer * 2
        steps = says(pair.right, Sign.OVER, 2, half), says(pair.left, Sign.OVER, half, twice)
        yield Made(twice, steps, at=1)


def divisor_split(pair: Pair) -> Iterator[Made]:
    """Share by each part of the divisor and add: 60 / 12 as 60 / 10 and 60 / 2."""
    parts = pieces(pair.right)
    if len(parts) > 1 and pair.left and not any(pair.left % part for part in parts):
        results = [pair.left // part for part in parts]
        steps = [
            says(pair.left, Sign.OVER, part, result)
            for part, result in zip(parts, results, strict=True)
        ]
        yield put_together(pair, steps, results)
