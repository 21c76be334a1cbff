"""Differences that go wrong in a column, as on paper or in the head.

Every slip here is column subtraction from the ones up with one thing changed: what a column gives
(`Fact`), or what an exchange does to the digits to its left (`Exchange`). So a slip is a row.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from waysaid.number import Equation, Sign
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import column, digits, one_step, put_together, says

Tops = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Column:
    """One column as it is met: the digits on top by now, the place, the digit below it."""

    tops: Tops
    first: Tops
    place: int
    below: int

    @property
    def top(self) -> int:
        """The digit on top, after the exchanges so far."""
        return self.tops[self.place]

    @property
    def is_zero(self) -> bool:
        """Whether the digit on top was a zero from the start, and is one still."""
        return not self.first[self.place] and not self.top


Given = tuple[int, int, int]
"""The digit taken from, the digit taken, and the digit that a false rule gives."""
Fact = Callable[[Column], Given | None]
"""What a false rule gives in this column, or None where the column is worked rightly."""
Exchange = Callable[[Tops, int], Tops | None]
"""The digits on top after a ten was fetched for a place; None where there is nothing to fetch."""


def rightly(column: Column) -> Given | None:
    """Work every column rightly."""
    return None


def turned(column: Column) -> Given | None:
    """Take the smaller digit from the larger, wherever it stands."""
    if column.top >= column.below:
        return None
    return column.below, column.top, column.below - column.top


def turned_by_zero(column: Column) -> Given | None:
    """Take the smaller from the larger only where the ten would have to come from a zero."""
    beyond = column.tops[column.place + 1 :]
    return turned(column) if beyond and beyond[0] == 0 and any(beyond) else None


def zero_gives_all(column: Column) -> Given | None:
    """Say that zero take away n is n."""
    if not column.is_zero or not column.below:
        return None
    return 0, column.below, column.below


def zero_gives_none(column: Column) -> Given | None:
    """Say that zero take away n is zero."""
    if not column.is_zero or not column.below:
        return None
    return 0, column.below, 0


def taking_zero_leaves_none(column: Column) -> Given | None:
    """Say that a digit take away zero is zero."""
    return (column.top, 0, 0) if column.top and not column.below else None


def too_small_gives_none(column: Column) -> Given | None:
    """Write zero where the digit on top is too small."""
    return (column.top, column.below, 0) if column.top < column.below else None


def carried_on(tops: Tops, place: int) -> Tops | None:
    """Exchange rightly: zeros on the way become nines, the first other digit is lowered."""
    for at in range(place + 1, len(tops)):
        if tops[at] > 0:
            return (*tops[: place + 1], *((9,) * (at - place - 1)), tops[at] - 1, *tops[at + 1 :])
    return None


def from_nowhere(tops: Tops, place: int) -> Tops | None:
    """Lower no digit."""
    return tops


def zero_to_nine(tops: Tops, place: int) -> Tops | None:
    """Make a zero next door nine, and lower nothing beyond it."""
    if place + 1 < len(tops) and tops[place + 1] == 0:
        return (*tops[: place + 1], 9, *tops[place + 2 :])
    return carried_on(tops, place)


def past_zeros(tops: Tops, place: int) -> Tops | None:
    """Lower the first digit beyond the zeros, and leave the zeros."""
    for at in range(place + 1, len(tops)):
        if tops[at] > 0:
            return (*tops[:at], tops[at] - 1, *tops[at + 1 :])
    return None


def zero_to_ten(tops: Tops, place: int) -> Tops | None:
    """Make a zero on the way ten, and do not lower it to nine."""
    for at in range(place + 1, len(tops)):
        if tops[at] > 0:
            return (*tops[: place + 1], *((10,) * (at - place - 1)), tops[at] - 1, *tops[at + 1 :])
    return None


def from_the_left(tops: Tops, place: int) -> Tops | None:
    """Lower the leftmost digit, whatever stands between."""
    last = len(tops) - 1
    return (*tops[:last], tops[last] - 1) if last > place and tops[last] > 0 else None


def worked(fact: Fact, exchange: Exchange) -> Callable[[Pair], Iterator[Made]]:
    """Return the rule that works a difference with this fact and this exchange."""

    def make(pair: Pair) -> Iterator[Made]:
        if pair.sign is Sign.MINUS and pair.left >= pair.right:
            made = _work(pair, fact, exchange)
            if made is not None:
                yield made

    return make


def _work(pair: Pair, fact: Fact, exchange: Exchange) -> Made | None:
    """Work the columns from the ones up; told from the left where nothing was exchanged."""
    tops = first = digits(pair.left)
    below = len(digits(pair.right))
    told: list[tuple[int, Equation]] = []
    parts: list[int] = []
    exchanged = False
    for place, (_, bottom) in enumerate(column(pair)):
        size = 10**place
        given = fact(Column(tops, first, place, bottom)) if place < below else None
        fetches = given is None and tops[place] < bottom
        if fetches:
            fetched = exchange(tops, place)
            if fetched is None:
                return None
            exchanged = True
            tops = (*fetched[:place], fetched[place] + 10, *fetched[place + 1 :])
        over, under, digit = given or (tops[place], bottom, tops[place] - bottom)
        if given or bottom:
            equation = says(over * size, Sign.MINUS, under * size, digit * size)
            told.append((2 * (given is not None) + fetches, equation))
        parts.append(digit * size)
    if not exchanged:
        told.reverse()
    most = max((slipped for slipped, _ in told), default=0)
    at = next((index for index, (slipped, _) in enumerate(told) if slipped == most), 0)
    return put_together(pair, [equation for _, equation in told], parts, at)


def turned_whole(pair: Pair) -> Iterator[Made]:
    """Take the smaller number from the larger: 3 - 8 gives 5."""
    if pair.sign is Sign.MINUS and pair.left < pair.right:
        gap = pair.right - pair.left
        yield one_step(pair.right, Sign.MINUS, pair.left, gap)


def stops_short(pair: Pair) -> Iterator[Made]:
    """Work only the columns that have a digit below: 439 - 4 gives 5."""
    size = len(digits(pair.right))
    if pair.sign is Sign.MINUS and pair.right and len(digits(pair.left)) > size:
        kept = pair.left % 10**size
        if kept >= pair.right:
            rest = kept - pair.right
            yield Made(rest, (says(kept, Sign.MINUS, pair.right, rest),))


def lowers_blank(pair: Pair) -> Iterator[Made]:
    """Take one from each digit over an empty place: 548 - 2 gives 436."""
    top = digits(pair.left)
    size = len(digits(pair.right))
    beyond = top[size:]
    if pair.sign is Sign.MINUS and pair.right and beyond and all(beyond):
        kept = pair.left % 10**size
        if kept >= pair.right:
            taken = sum(10**place for place in range(size, len(top)))
            over = pair.left - kept
            steps = [
                says(kept, Sign.MINUS, pair.right, kept - pair.right),
                says(over, Sign.MINUS, taken, over - taken),
            ]
            at = 1
            if over == taken:
                steps.reverse()
                at = 0
            yield put_together(pair, steps, [kept - pair.right, over - taken], at)
