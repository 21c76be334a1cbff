"""Products worked digit by digit, as on paper, with what should carry lost or misplaced."""

from collections.abc import Iterator

from waysaid.number import Equation, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import digits, ended, put_together, says, whole


def _by_digit(pair: Pair) -> Iterator[tuple[int, int]]:
    """Yield a factor of two or more digits and the other, of one digit."""
    for long, short in ((pair.left, pair.right), (pair.right, pair.left)):
        if long > 9 and 1 < short < 10:
            yield long, short


def drop_carry(pair: Pair) -> Iterator[Made]:
    """Drop what should carry: 27 x 6 as 42 with its 4 lost and 12 tens."""
    long, short = digits(max(pair.left, pair.right)), digits(min(pair.left, pair.right))
    last = len(long) - 1
    if not last or pair.answer == 0:
        return
    steps: list[Equation] = []
    parts: list[int] = []
    at = None
    for by, times in enumerate(short):
        for place, digit in enumerate(long):
            if digit and times:
                kept = digit * times if place == last else digit * times % 10
                if at is None and kept != digit * times:
                    at = len(steps)
                size = 10 ** (place + by)
                parts.append(kept * size)
                steps.append(says(digit * 10**place, Sign.TIMES, times * 10**by, kept * size))
    if at is not None:
        yield put_together(pair, steps, parts, at)


def write_carry(pair: Pair) -> Iterator[Made]:
    """Write each product in full beside the others: 27 x 6 gives 1242."""
    for long, times in _by_digit(pair):
        columns = tuple(reversed(digits(long)))
        totals = [digit * times for digit in columns]
        late = [at for at, total in enumerate(totals) if at and total > 9]
        if late:
            wrong = int("".join(str(total) for total in totals))
            steps = [says(digit, Sign.TIMES, times, digit * times) for digit in columns]
            yield ended(wrong, *steps, whole(pair, wrong), at=late[0])


def carry_first(pair: Pair) -> Iterator[Made]:
    """Add what carries before multiplying: 27 x 6 as 42, then 2 + 4 = 6 and 6 x 6 = 36."""
    for long, times in _by_digit(pair):
        steps: list[Equation] = []
        carried, written, at = 0, "", None
        for place, digit in enumerate(digits(long)):
            over = digit + carried
            if carried:
                at = len(steps) if at is None else at
                steps.append(says(digit, Sign.PLUS, carried, over))
            total = over * times
            steps.append(says(over, Sign.TIMES, times, total))
            last = place == len(digits(long)) - 1
            written = str(total if last else total % 10) + written
            carried = total // 10
        if at is not None:
            yield ended(int(written), *steps, whole(pair, int(written)), at=at)
