"""Sums whose columns are added well and put together badly."""

from collections.abc import Iterator

from waysaid.number import Equation, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import column, digits, put_together, says, whole


def drop_carry(pair: Pair) -> Iterator[Made]:
    """Drop what should carry: in every column but the last, or in one of them alone."""
    if pair.sign is not Sign.PLUS:
        return
    columns = column(pair)
    over = [place for place, (top, bottom) in enumerate(columns[:-1]) if top + bottom > 9]
    if over:
        yield _dropped(pair, frozenset(over))
    if len(over) > 1:
        for place in over:
            yield _dropped(pair, frozenset({place}))


def _dropped(pair: Pair, places: frozenset[int]) -> Made:
    steps: list[Equation] = []
    parts: list[int] = []
    at = 0
    for place, (top, bottom) in reversed(tuple(enumerate(column(pair)))):
        size = 10**place
        total = (top + bottom) % 10 if place in places else top + bottom
        parts.append(total * size)
        if top and bottom:
            at = len(steps) if place in places else at
            steps.append(says(top * size, Sign.PLUS, bottom * size, total * size))
    return put_together(pair, steps, parts, at)


def write_carry(pair: Pair) -> Iterator[Made]:
    """Write each column's sum in full beside the others: 74 + 56 gives 1210."""
    if pair.sign is not Sign.PLUS:
        return
    columns = tuple(reversed(column(pair)))
    totals = [top + bottom for top, bottom in columns]
    if any(total > 9 for total in totals[1:]):
        wrong = int("".join(str(total) for total in totals))
        steps = [says(top, Sign.PLUS, bottom, top + bottom) for top, bottom in columns]
        at = next(index for index in range(1, len(totals)) if totals[index] > 9)
        yield Made(wrong, (*steps, whole(pair, wrong)), at)


def misaligned(pair: Pair) -> Iterator[Made]:
    """Line the numbers up on the left: 425 + 36 is worked as 425 + 360."""
    sizes = len(digits(pair.left)), len(digits(pair.right))
    left = pair.left * 10 ** max(0, sizes[1] - sizes[0])
    right = pair.right * 10 ** max(0, sizes[0] - sizes[1])
    worked = Pair(left, pair.sign, right)
    if sizes[0] != sizes[1] and min(pair.left, pair.right) > 0 and worked.answer >= 0:
        yield Made(worked.answer, (whole(worked, worked.answer),))
