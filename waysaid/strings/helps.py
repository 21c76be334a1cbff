"""How one problem helps with the next: what a child who just heard it still has to do."""

from collections.abc import Iterator
from typing import NamedTuple

from waysaid.number import Sign
from waysaid.strings.link import LinkKind
from waysaid.strings.plain import Plain
from waysaid.ways import Family, Kind, Way, step, tenths_of

SEEN = 6
"""Tenths to see that a problem is the one before with something changed. Our choice."""

_FEW = (1, 2, 3, 4, 5, 10)
"""By how much a number changes so that a class may see it at once. Our choice."""
_MORE = (20, 50, 100)
_GROUPS = (1, 2)


class Help(NamedTuple):
    """A help: the kind of link it is, by how much something changed, and the tenths left to do.

    `own` is whether it is the kind of link that shows the family in focus.
    """

    kind: LinkKind
    size: int
    left: int
    own: bool = False


def helped(plain: Plain, inside: tuple[tuple[Plain, int], ...]) -> Iterator[tuple[Plain, Help]]:
    """Yield the problems that help with this one, each with its help; some may be given twice.

    `inside` are the problems that are steps of one of its ways, each with the tenths then left.
    """
    for part, left in inside:
        yield part, Help(LinkKind.INSIDE_A_WAY, 0, SEEN + left)
    match plain.sign:
        case Sign.PLUS | Sign.MINUS:
            yield from _changed(plain)
        case _:
            yield from _scaled(plain)


def _changed(plain: Plain) -> Iterator[tuple[Plain, Help]]:
    left, sign, right = plain
    for size in (*_FEW, *_MORE):
        for by in (size, -size):
            yield from _one(plain, Plain(left + by, sign, right), size)
            yield from _one(plain, Plain(left, sign, right + by), size)
            other = right - by if sign is Sign.PLUS else right + by
            yield from _both(plain, Plain(left + by, sign, other), size)
    if sign is Sign.PLUS and left != right:
        yield Plain(right, sign, left), Help(LinkKind.TURNED_AROUND, 0, SEEN)
    for times, kind in ((2, LinkKind.DOUBLE_HALF), (10, LinkKind.TEN_TIMES)):
        yield from _times(plain, times, kind)


def _one(plain: Plain, before: Plain, size: int) -> Iterator[tuple[Plain, Help]]:
    """Yield a help where one number changed, and the answer with it."""
    had, has = before.answer, plain.answer
    if had is not None and has is not None and min(before.left, before.right) > 0:
        sign = Sign.PLUS if has > had else Sign.MINUS
        yield before, Help(LinkKind.ONE_CHANGES, size, SEEN + work(had, sign, size))


def _both(plain: Plain, before: Plain, size: int) -> Iterator[tuple[Plain, Help]]:
    """Yield a help where both numbers changed, and the answer stayed."""
    if before.left > 0 and before.right > 0 and before.answer == plain.answer:
        yield before, Help(LinkKind.BOTH_CHANGE, size, 2 * SEEN)


def _times(plain: Plain, times: int, kind: LinkKind) -> Iterator[tuple[Plain, Help]]:
    """Yield the help of the problem with both numbers so many times as small."""
    left, sign, right = plain
    if left % times == 0 and right % times == 0:
        before = Plain(left // times, sign, right // times)
        if before.answer is not None:
            yield before, Help(kind, times, SEEN + work(before.answer, Sign.TIMES, times))


def _scaled(plain: Plain) -> Iterator[tuple[Plain, Help]]:
    left, sign, right = plain
    if sign is Sign.TIMES:
        if left != right:
            yield Plain(right, sign, left), Help(LinkKind.TURNED_AROUND, 0, SEEN)
        for groups in _GROUPS:
            for by in (groups, -groups):
                yield from _grouped(plain, Plain(left + by, sign, right), groups, right)
                yield from _grouped(plain, Plain(left, sign, right + by), groups, left)
    else:
        for by in (1, -1):
            yield from _grouped(plain, Plain(left + by * right, sign, right), 1, 1)
    for times, kind in ((2, LinkKind.DOUBLE_HALF), (10, LinkKind.TEN_TIMES)):
        yield from _one_times(plain, times, kind)
    for times in (2, 3):
        yield from _traded(plain, times)


def _grouped(plain: Plain, before: Plain, groups: int, each: int) -> Iterator[tuple[Plain, Help]]:
    """Yield a help where there are groups more or less, and the answer has so many times `each`."""
    had, has = before.answer, plain.answer
    if had is not None and has is not None and had > 0 and min(before.left, before.right) > 1:
        sign = Sign.PLUS if has > had else Sign.MINUS
        left = SEEN + work(had, sign, abs(has - had))
        if groups > 1:
            left += work(groups, Sign.TIMES, each)
        yield before, Help(LinkKind.ONE_CHANGES, groups, left)


def _one_times(plain: Plain, times: int, kind: LinkKind) -> Iterator[tuple[Plain, Help]]:
    """Yield the help of a problem with one number so many times as small or as big."""
    left, sign, right = plain
    has = plain.answer
    befores = [Plain(left // times, sign, right)] if left % times == 0 else []
    if sign is Sign.TIMES and right % times == 0:
        befores.append(Plain(left, sign, right // times))
    for before in befores:
        had = before.answer
        if had is not None and has is not None and min(before.left, before.right) > 1:
            yield before, Help(kind, times, SEEN + work(had, Sign.TIMES, times))


def _traded(plain: Plain, times: int) -> Iterator[tuple[Plain, Help]]:
    """Yield the helps of problems with the same answer: twice as many, half as large; or both."""
    left, sign, right = plain
    befores = []
    if sign is Sign.TIMES:
        if right % times == 0:
            befores.append(Plain(left * times, sign, right // times))
        if left % times == 0:
            befores.append(Plain(left // times, sign, right * times))
    else:
        befores.append(Plain(left * times, sign, right * times))
        if left % times == 0 and right % times == 0:
            befores.append(Plain(left // times, sign, right // times))
    for before in befores:
        if before.answer == plain.answer and min(before.left, before.right) > 1:
            yield before, Help(LinkKind.BOTH_CHANGE, times, 2 * SEEN)


def work(left: int, sign: Sign, right: int) -> int:
    """Return the tenths of one step: what it asks to go on from an answer that is known."""
    done = step(Kind.JOIN, left, sign, right)
    return tenths_of(Way(Family.KNOWN_FACT, "", (done,), left))
