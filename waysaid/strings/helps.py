"""How one problem helps with the next: what a child who just heard it still has to do."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import combinations, product
from typing import NamedTuple

from waysaid.number import Exact, Sign, exact
from waysaid.strings.link import LinkKind
from waysaid.strings.shape import Counts, Key, Shape
from waysaid.strings.show import gap
from waysaid.ways import Family, Kind, Way, tenths_of, worked

SEEN = 6
"""Tenths to see that a problem is the one before with something changed. Our choice."""

_FEW = (1, 2, 3, 4, 5, 10)
"""By how much a number changes so that a class may see it at once. Our choice."""
_MORE = (20, 50, 100)
_TENTHS = tuple(Fraction(each, 10) for each in (1, 2, 3, 5))
_HUNDREDTHS = tuple(Fraction(each, 100) for each in (1, 2, 5))
_PARTS = tuple(Fraction(1, bottom) for bottom in (2, 3, 4, 5, 6, 8, 10, 12))
_WHOLES = (1, 2)
_LEFT = (1, 2, 3)
"""So many more to share out may be seen as left over. Our choice."""
_PERCENTS = tuple(Fraction(each, 100) for each in (1, 5, 10, 20, 25, 50))
_TIMES = tuple(
    (times, kind, by)
    for times, kind in ((2, LinkKind.DOUBLE_HALF), (10, LinkKind.TEN_TIMES))
    for by in (Fraction(times), Fraction(1, times))
)
_TRADES = tuple(
    (times, by) for times in (2, 3, 4, 10) for by in (Fraction(times), Fraction(1, times))
)


class Help(NamedTuple):
    """A help: the kind of link it is, by how much something changed, and the tenths left to do.

    `own` is whether it is the kind of link that shows the family in focus.
    """

    kind: LinkKind
    size: Exact
    left: int
    own: bool = False


class Change(NamedTuple):
    """How a problem differs from one that may help: the kind of link, and by how much."""

    kind: LinkKind
    size: Exact
    each: Exact = 1


def steps_of(shapes: Iterable[Shape]) -> tuple[Exact, ...]:
    """Return by how much a number of these problems may change, both up and down.

    Whole numbers change by wholes, those with a point by tenths and hundredths, fractions by one
    part of a kind.
    """
    known = tuple(shapes)
    pointed, parted = any(one.pointed for one in known), any(one.parted for one in known)
    sizes: tuple[Exact, ...] = (*_FEW, *_MORE)
    if pointed or parted:
        points = _TENTHS + _HUNDREDTHS if pointed else ()
        sizes = tuple({*_WHOLES, *points, *(_PARTS if parted else ())})
    return tuple(sorted((*sizes, *(-size for size in sizes)), key=lambda size: (abs(size), size)))


def changes(one: Shape, steps: Sequence[Exact]) -> Iterator[tuple[Key, Change]]:
    """Yield the keys of problems of the same form that may help with this one, each with how.

    Whatever may help with a problem may be helped by it.
    """
    match one.counts:
        case Counts.ADDED:
            yield from _added(one, steps)
        case Counts.MULTIPLIED:
            yield from _multiplied(one, steps)
        case Counts.COMPARED:
            for at, number in enumerate(one.numbers):
                for by in steps:
                    yield _with(one, {at: number + by}), Change(LinkKind.SAME_NUMBER, gap(by, 0))
    yield from _turned(one)


def left_of(before: Shape, one: Shape, change: Change, effort: int) -> int | None:
    """Return the tenths left to do behind a helpful problem; None where it does not help.

    `effort` is that of the problem by itself.
    """
    had, has = before.answer, one.answer
    match change.kind:
        case LinkKind.BOTH_CHANGE:
            turned = sorted(before.numbers) == sorted(one.numbers)
            return 2 * SEEN if had == has and not turned else None
        case LinkKind.SAME_TOTAL:
            return 2 * SEEN
        case LinkKind.TURNED_AROUND | LinkKind.OPPOSITE:
            return SEEN
        case LinkKind.SAME_NUMBER:
            return SEEN + effort // 2
    if had is None or has is None or not had or not has or had == has:
        return None
    if change.kind is LinkKind.ONE_CHANGES:
        left = SEEN + work(had, Sign.PLUS if has > had else Sign.MINUS, gap(has, had))
        return left if change.each == 1 else left + work(change.size, Sign.TIMES, change.each)
    times = exact(Fraction(has) / had)
    if times in (change.size, exact(Fraction(1, 1) / change.size)):
        return SEEN + work(had, Sign.TIMES if has > had else Sign.OVER, change.size)
    return None


def _with(one: Shape, new: dict[int, Exact]) -> Key:
    """Return the key with other numbers at some places."""
    numbers = list(one.numbers)
    for at, number in new.items():
        numbers[at] = exact(number)
    return one.other(numbers)


def _added(one: Shape, steps: Sequence[Exact]) -> Iterator[tuple[Key, Change]]:
    """Yield what differs in one number, in two with the same answer, or in all doubled."""
    places = range(len(one.numbers))
    for by in steps:
        alone = Change(LinkKind.ONE_CHANGES, gap(by, 0))
        both = Change(LinkKind.BOTH_CHANGE, gap(by, 0))
        for at in places:
            yield _with(one, {at: one.numbers[at] + by}), alone
        for at, to in combinations(places, 2):
            other = by if one.turns[at] != one.turns[to] else -by
            yield _with(one, {at: one.numbers[at] + by, to: one.numbers[to] + other}), both
    if len(one.numbers) > 1:
        for times, kind, by in _TIMES:
            yield _with(one, {at: one.numbers[at] * by for at in places}), Change(kind, times)


def _multiplied(one: Shape, steps: Sequence[Exact]) -> Iterator[tuple[Key, Change]]:
    """Yield what differs by groups, in one number so many times as big, or in two that trade."""
    places = range(len(one.numbers))
    for at in places:
        yield from _grouped(one, at, steps)
        if one.turns[at] < 0 and "=" in one.key.form:
            continue
        for times, kind, by in _TIMES:
            yield _with(one, {at: one.numbers[at] * by}), Change(kind, times)
    for (at, to), (trade, by) in product(combinations(places, 2), _TRADES):
        other = by if one.turns[at] != one.turns[to] else 1 / by
        key = _with(one, {at: one.numbers[at] * by, to: one.numbers[to] * other})
        yield key, Change(LinkKind.BOTH_CHANGE, trade)


def _grouped(one: Shape, at: int, steps: Sequence[Exact]) -> Iterator[tuple[Key, Change]]:
    """Yield what has groups more or less of what is multiplied, or more to share out."""
    if one.turns[at] < 0:
        return
    shared = [other for other, turn in zip(one.numbers, one.turns, strict=True) if turn < 0]
    rest = [other for place, other in enumerate(one.numbers) if place != at]
    sizes: Sequence[Exact] = [size for size in steps if 0 < size <= max(_WHOLES)]
    if shared:
        sizes = (*shared, *_LEFT) if len(shared) == 1 else ()
    elif one.percent and at == 0:
        sizes = _PERCENTS
    for size, up in product(sizes, (True, False)):
        each = rest[0] if size == 2 and len(rest) == 1 and not shared else 1
        by = size if up else -size
        yield _with(one, {at: one.numbers[at] + by}), Change(LinkKind.ONE_CHANGES, size, each)


def _turned(one: Shape) -> Iterator[tuple[Key, Change]]:
    """Yield the same numbers in another order, where the answer stays."""
    numbers, turned = one.numbers, Change(LinkKind.TURNED_AROUND, 0)
    if one.percent and len(numbers) == 2 and one.turns == (1, 1):
        yield one.other((exact(Fraction(numbers[1], 100)), exact(numbers[0] * 100))), turned
        return
    if one.counts is Counts.COMPARED:
        return
    for at, to in combinations(range(len(numbers)), 2):
        if one.turns[at] == one.turns[to] and numbers[at] != numbers[to]:
            yield _with(one, {at: numbers[to], to: numbers[at]}), turned


@lru_cache(maxsize=100_000)
def work(left: Exact, sign: Sign, right: Exact) -> int:
    """Return the tenths of one step: what it asks to go on from an answer that is known."""
    done = worked(Kind.JOIN, sign, left, right)
    return tenths_of(Way(Family.KNOWN_FACT, "", (done,), left))
