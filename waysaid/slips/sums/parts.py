"""Pieces left out, tens treated as ones, and facts a little off."""

from collections.abc import Iterator

from waysaid.number import Equation, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, pieces, put_together, says, whole


def _jumps(start: int, sign: Sign, hops: tuple[int, ...]) -> tuple[tuple[Equation, ...], int]:
    steps = []
    for hop in hops:
        after = Pair(start, sign, hop).answer
        steps.append(says(start, sign, hop, after))
        start = after
    return tuple(steps), start


def part_missing(pair: Pair) -> Iterator[Made]:
    """Leave one piece out: 37 + 25 gives 57, 42 or 50."""
    places = pieces(pair.right)
    for left_out in range(len(places) - 1, -1, -1):
        kept = places[:left_out] + places[left_out + 1 :]
        if kept:
            steps, end = _jumps(pair.left, pair.sign, kept)
            yield Made(end, steps, at=len(steps) - 1)
    if pair.left > 9 and pair.right > 9:
        big = Pair(pieces(pair.left)[0], pair.sign, places[0])
        yield Made(big.answer, (whole(big, big.answer),))


def hop_missing(pair: Pair) -> Iterator[Made]:
    """Go up from the smaller and leave a hop out: 62 - 25 as 5 and 30, without the 2."""
    if pair.sign is not Sign.MINUS or pair.answer < 10 or pair.right < 2:
        return
    first = -pair.right % 10
    hops = [hop for hop in (first, (pair.answer - first) // 10 * 10) if hop]
    hops += [rest for rest in (pair.answer - sum(hops),) if rest]
    for left_out in range(len(hops) - 1, -1, -1):
        kept = hops[:left_out] + hops[left_out + 1 :]
        if len(kept) > 1:
            steps, _ = _jumps(pair.right, Sign.PLUS, tuple(hops))
            told = [*steps[:left_out], *steps[left_out + 1 :]]
            yield put_together(pair, told, kept, at=len(told) - 1)


def ones_taken(pair: Pair) -> Iterator[Made]:
    """Take all the ones off: 62 - 25 as 60 - 20, then 5 off and 2 off."""
    ones = pair.left % 10, pair.right % 10
    if pair.sign is Sign.MINUS and min(pair.left, pair.right) > 9 and all(ones):
        tens = pair.left - ones[0]
        big = tens - (pair.right - ones[1])
        if big >= sum(ones):
            steps, end = _jumps(big, Sign.MINUS, (ones[1], ones[0]))
            yield Made(end, (says(tens, Sign.MINUS, tens - big, big), *steps), at=2)


def digits_alone(pair: Pair) -> Iterator[Made]:
    """Treat tens as ones: 37 + 25 as 37 and 2 and 5, or as 3 and 7 and 2 and 5."""
    alone = tuple(digit for digit in reversed(digits(pair.right)) if digit)
    if pair.right > 9 and pair.left >= sum(alone):
        steps, end = _jumps(pair.left, pair.sign, alone)
        yield Made(end, steps)
    if pair.sign is Sign.PLUS and pair.left > 9:
        first, *rest = (digit for digit in reversed(digits(pair.left)) if digit)
        steps, end = _jumps(first, pair.sign, (*rest, *alone))
        if steps:
            yield Made(end, steps)


def near_miss(pair: Pair) -> Iterator[Made]:
    """Be one off in a fact: 7 + 5 as 11."""
    yield from _missed(pair, (1,))


def tens_missed(pair: Pair) -> Iterator[Made]:
    """Be a ten, a hundred or a thousand off: 30 + 20 as 60."""
    yield from _missed(pair, (10, 100, 1000))


def _missed(pair: Pair, sizes: tuple[int, ...]) -> Iterator[Made]:
    hops = pieces(pair.right)
    for off in (way * size for size in sizes for way in (-1, 1)):
        wrong = pair.answer + off
        at = _hop_off(hops, abs(off))
        if at is None or wrong < 0 or pair.left < abs(off) > 1:
            continue
        steps, end = _jumps(pair.left, pair.sign, hops[:at])
        after = Pair(end, pair.sign, hops[at]).answer + off
        rest, _ = _jumps(after, pair.sign, hops[at + 1 :])
        yield Made(wrong, (*steps, says(end, pair.sign, hops[at], after), *rest), at)


def _hop_off(hops: tuple[int, ...], size: int) -> int | None:
    """Return the index of the hop of this size (ones or tens), or of the ones for a ten."""
    for at, hop in enumerate(hops):
        if size <= hop < size * 10:
            return at
    return len(hops) - 1 if size == 10 and len(hops) == 1 and hops[0] < 10 else None


def count_start(pair: Pair) -> Iterator[Made]:
    """Count the start as the first: 8 + 3 as 8, 9, 10. Only where counting is likely."""
    start, hops = pair.left, pair.right
    if pair.sign is Sign.PLUS and start < hops:
        start, hops = hops, start
    back = pair.sign is Sign.MINUS
    if 2 <= hops <= 10 and (not back or pair.answer >= hops):
        steps, end = _jumps(start, pair.sign, (1,) * (hops - 1))
        yield Made(end, steps)
    elif back and 1 <= pair.answer <= 10:
        yield Made(pair.answer + 1, (whole(pair, pair.answer + 1),))


def wrong_operation(pair: Pair) -> Iterator[Made]:
    """Work a sum as a difference, or a difference as a sum."""
    larger, smaller = max(pair.left, pair.right), min(pair.left, pair.right)
    if pair.sign is Sign.MINUS:
        yield Made(larger + smaller, (says(pair.left, Sign.PLUS, pair.right, larger + smaller),))
    else:
        yield Made(larger - smaller, (says(larger, Sign.MINUS, smaller, larger - smaller),))
