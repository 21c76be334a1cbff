"""Every true connection in a string of problems, the most telling first.

The order and the limits below are our choice: neighbours before problems further apart, changes
and turns before numbers that merely come back.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import combinations

from waysaid.number import Image, Problem, exact
from waysaid.strings.changes import change_links
from waysaid.strings.groups import same_number, same_total
from waysaid.strings.inside import inside_link
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.meets import meet_links
from waysaid.strings.patterns import patterns
from waysaid.strings.product_changes import product_links, together
from waysaid.strings.sight import Sight, sights

MOST = 8
"""Links offered for one string unless every one is asked for."""
MOST_OF_A_PAIR = 2

_WEIGHT = {
    LinkKind.PATTERN: 0,
    LinkKind.TURNED_AROUND: 1,
    LinkKind.OPPOSITE: 1,
    LinkKind.BOTH_CHANGE: 1,
    LinkKind.ONE_CHANGES: 1,
    LinkKind.TEN_TIMES: 1,
    LinkKind.DOUBLE_HALF: 2,
    LinkKind.FEEDS_NEXT: 2,
    LinkKind.INSIDE_A_WAY: 2,
    LinkKind.FRIENDLY_TWIN: 2,
    LinkKind.SAME_TOTAL: 3,
    LinkKind.SAME_NUMBER: 4,
}
_FURTHER = 2
_FURTHER_TURNED = 1
_ANSWERS_ALONE = 2
_MANY_GROUPS = 1
_FEW = 2
"""Groups more or less that are seen at once."""
_LARGE_CHANGE = 3
_HARD_TO_SEE = 20
_SAME_ANSWER = frozenset({LinkKind.BOTH_CHANGE, LinkKind.TURNED_AROUND, LinkKind.OPPOSITE})
_STEADY = frozenset(
    {
        Saying.MOVES_EACH_TIME,
        Saying.ALIKE_EACH_TIME,
        Saying.ALL_STAY,
        Saying.BOTH_GROW,
        Saying.BOTH_SHRINK,
        Saying.TRADES,
    }
)
_TURNS = frozenset({LinkKind.TURNED_AROUND, LinkKind.OPPOSITE, LinkKind.TEN_TIMES})
_SCALED = frozenset(
    {
        Saying.DOUBLE_AND_HALF,
        Saying.TIMES_AND_OVER,
        Saying.BOTH_DOUBLED,
        Saying.BOTH_HALVED,
        Saying.BOTH_TIMES,
        Saying.BOTH_OVER,
        Saying.ONE_TIMES,
        Saying.ONE_OVER,
        Saying.BY_TIMES,
        Saying.BY_OVER,
    }
)
_BY_GROUPS = frozenset({Saying.GROUPS_MORE, Saying.GROUPS_LESS, Saying.PART_MORE, Saying.PART_LESS})
_ONE_BY_TWO = frozenset({Saying.ONE_DOUBLED, Saying.ONE_HALVED, Saying.BY_TWICE, Saying.BY_HALF})
_ANSWERS_ONLY = frozenset(
    {Saying.ANSWERS_UP, Saying.ANSWERS_DOWN, Saying.ANSWERS_GROW, Saying.ANSWERS_SHRINK}
)
_PLAIN_NUMBERS = frozenset({0, 1, 2})
"""Numbers that come back too often to tell anything."""


def links(problems: Sequence[Problem], *, every: bool = False) -> tuple[Link, ...]:
    """Return the true connections in a string, the most telling first.

    At most `MOST`, and at most `MOST_OF_A_PAIR` for two problems, without those that say again
    what a better one says; all of them with `every`. Raises `NoValue` where a problem has no
    answer.
    """
    seen = sights(problems)
    found = sorted((_on_pictures(link, seen) for link in _all(seen)), key=_rank)
    return tuple(found) if every else _chosen(found)


def _on_pictures(link: Link, seen: Sequence[Sight]) -> Link:
    """Return the link with the marks on pictures, which have no numbers, put on their answers."""
    marks: dict[tuple[int, Place], None] = {}
    for row, place in link.marks:
        marks[row, "answer" if isinstance(seen[row].problem, Image) else place] = None
    return replace(link, marks=tuple(marks))


def _all(seen: tuple[Sight, ...]) -> Iterator[Link]:
    yield from patterns(seen)
    for first, second in combinations(seen, 2):
        yield from change_links(first, second)
        yield from product_links(first, second)
        yield from meet_links(first, second)
        yield from _inside(first, second)
    for three in combinations(seen, 3):
        yield from together(*three)
    yield from same_total(seen)
    yield from same_number(seen)


def _inside(first: Sight, second: Sight) -> Iterator[Link]:
    for part, whole in ((first, second), (second, first)):
        link = inside_link(part, whole)
        if link is not None:
            yield link


def _rank(link: Link) -> tuple[int, tuple[int, ...], int]:
    """Return the place in the order: the lower, the more telling."""
    weight = _WEIGHT[link.kind]
    if len(link.between) == 2:
        further = _FURTHER_TURNED if link.kind in _TURNS else _FURTHER
        weight += further * (link.between[1] - link.between[0] - 1)
        if link.kind in (LinkKind.ONE_CHANGES, LinkKind.BOTH_CHANGE) and _large(link):
            weight += _LARGE_CHANGE
        elif link.saying in _BY_GROUPS and not _few(link):
            weight += _MANY_GROUPS
        elif link.saying in _ONE_BY_TWO:
            weight = weight - _WEIGHT[link.kind] + _WEIGHT[LinkKind.ONE_CHANGES]
    elif link.kind is not LinkKind.PATTERN:
        weight -= 1
    elif link.saying in _ANSWERS_ONLY:
        weight += _ANSWERS_ALONE
    return weight, link.between, tuple(_WEIGHT).index(link.kind)


def _few(link: Link) -> bool:
    by = exact(link.numbers[2])
    return isinstance(by, int) and by <= _FEW


def _large(link: Link) -> bool:
    """Tell whether a change is by more than ten and not by tens: true, but hard to see."""
    if link.saying in _SCALED:
        return False
    by = exact(link.numbers[0] if link.kind is LinkKind.BOTH_CHANGE else link.numbers[2])
    return by > 10 and by % 10 != 0


def _chosen(found: Sequence[Link]) -> tuple[Link, ...]:
    kept: list[Link] = []
    for link in found:
        if len(kept) == MOST:
            break
        if not _said_already(link, kept):
            kept.append(link)
    return tuple(kept)


def _said_already(link: Link, kept: Sequence[Link]) -> bool:
    """Tell whether the links kept so far leave nothing for this one to say."""
    if link.kind is LinkKind.PATTERN:
        return False
    if link.kind is LinkKind.SAME_NUMBER:
        plain = exact(link.numbers[0]) in _PLAIN_NUMBERS
        return plain or (link.saying is Saying.NUMBER_BACK and _joined(link, kept))
    if link.kind is LinkKind.SAME_TOTAL:
        told = [one for one in kept if one.kind in _SAME_ANSWER or _steady(one)]
        return _joined(link, told) and (len(link.between) == 2 or any(map(_steady, kept)))
    if link.saying is Saying.TOGETHER:
        return any(one.kind is LinkKind.PATTERN and _covers(one, link) for one in kept)
    return _pair_told(link, kept)


def _covers(one: Link, other: Link) -> bool:
    return set(other.between) <= set(one.between)


def _steady(link: Link) -> bool:
    """Tell whether a pattern keeps the answer."""
    return link.saying in _STEADY


def _ruled(link: Link) -> bool:
    """Tell whether a pattern is about the numbers, and not the answers alone."""
    return link.saying not in _ANSWERS_ONLY


def _joined(link: Link, kept: Sequence[Link]) -> bool:
    """Tell whether the kept links lead from each problem of this one to every other."""
    reached, before = {link.between[0]}, 0
    while len(reached) != before:
        before = len(reached)
        for one in kept:
            if reached & set(one.between):
                reached |= set(one.between)
    return set(link.between) <= reached


def _pair_told(link: Link, kept: Sequence[Link]) -> bool:
    pair = set(link.between)
    first, second = link.between
    ruled = [one for one in kept if one.kind is LinkKind.PATTERN and pair <= set(one.between)]
    if ruled and second - first > 1:
        return True
    same_pair = [one for one in kept if set(one.between) == pair]
    kinds = {one.kind for one in same_pair}
    if len(same_pair) >= MOST_OF_A_PAIR or _follows(link, kept):
        return True
    match link.kind:
        case LinkKind.FRIENDLY_TWIN:
            return bool(kinds & {LinkKind.ONE_CHANGES, LinkKind.BOTH_CHANGE})
        case LinkKind.BOTH_CHANGE:
            return LinkKind.SAME_TOTAL in kinds or any(map(_ruled, ruled))
        case LinkKind.ONE_CHANGES:
            far = second - first > 1 or exact(link.numbers[2]) > _HARD_TO_SEE
            told = kinds & {LinkKind.ONE_CHANGES, LinkKind.OPPOSITE}
            return (_large(link) and far) or bool(told) or any(map(_ruled, ruled))
        case LinkKind.FEEDS_NEXT:
            return second - first > 1 or LinkKind.OPPOSITE in kinds
        case LinkKind.INSIDE_A_WAY:
            same = any(one.shows[-1] in link.shows for one in same_pair)
            return same or bool(kinds & _SAME_ANSWER)
        case _:
            return False


def _follows(link: Link, kept: Sequence[Link]) -> bool:
    """Tell whether two kept links of the kind, end to end, already lead from one to the other."""
    first, second = link.between
    steps = {one.between for one in kept if one.kind is link.kind and len(one.between) == 2}
    return any((first, by) in steps and (by, second) in steps for by in range(first + 1, second))
