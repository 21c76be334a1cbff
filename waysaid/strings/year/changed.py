"""Strings for what composing does not reach: starters, strings of ours, and their like.

In `more-or-less-than-half` two problems together make a third, which no help knows.

The like of a string has one change made alike to all its problems, so that what connects them
stays. In each of its problems the family must come as near to the easiest way as it did, where one
was linked to the next it must be, and no answer may be in smaller parts, or nothing.
"""

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from itertools import combinations, islice, product, repeat
from types import MappingProxyType

from waysaid.number import (
    Blank,
    Claim,
    Compare,
    Exact,
    Image,
    ImageKind,
    NoValue,
    Problem,
    Unreadable,
    answer_of,
    parse,
    text,
)
from waysaid.strings.change import Change, ChangeError, Does, what_if
from waysaid.strings.leaf import leaves_of
from waysaid.strings.links import links
from waysaid.strings.starter import starters
from waysaid.strings.year.given import Given, Source, fits, reaches
from waysaid.strings.year.ideas import Idea
from waysaid.strings.year.table import data_file
from waysaid.ways import Family, tenths_of, ways

_STEPS = tuple(by for size in (*range(1, 10), *range(10, 100, 10)) for by in (size, -size))
"""By how much numbers change alike, in the tens or hundreds that the first is made of."""
_TIMES = (2, 3, 10)
"""How many times as big numbers become alike. Both our choice."""
_MOST_TRIED = 300
"""How many changes are tried for an idea: our choice, to bound the work."""
_NEVER = 10**9

_Rows = tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class Seeds:
    """What the strings of an idea come from; only the numbers at `places` change, or any."""

    strings: tuple[Given, ...]
    places: tuple[int, ...] | None


@cache
def seeds() -> Mapping[str, Seeds]:
    """Return the starters and the strings of ours for each idea that has some, by its slug."""
    by_slug = {one.slug: one for one in starters()}
    found: dict[str, Seeds] = {}
    for line in data_file("seeds.jsonl").splitlines():
        row = json.loads(line)
        known = (
            Given(by_slug[slug].problems, Source.STARTER, starter=slug) for slug in row["starters"]
        )
        ours = (Given(tuple(map(parse, string)), Source.OURS) for string in row["strings"])
        places = tuple(row["change"]) if "change" in row else None
        found[row["idea"]] = Seeds((*known, *ours), places)
    return MappingProxyType(found)


def changed(idea: Idea) -> Iterator[Given]:
    """Yield strings for an idea, the seeds first, then what is most like them."""
    mine = seeds()[idea.slug]
    yield from (one for one in mine.strings if all(fits(each, idea) for each in one.problems))
    likes = [(_likes(one.problems, mine.places), one.problems) for one in mine.strings]
    for rows, seed in islice(_in_turn(likes), _MOST_TRIED):
        in_range = all(fits(each, idea) for each in rows) and reaches(rows, idea)
        if in_range and _as_good(rows, seed, idea.family):
            yield Given(rows, Source.CHANGED)


def _in_turn(likes: list[tuple[Iterator[_Rows], _Rows]]) -> Iterator[tuple[_Rows, _Rows]]:
    """Yield one string like each seed, with the seed, then another of each, until all are done."""
    while likes:
        for one in tuple(likes):
            rows = next(one[0], None)
            if rows is None:
                likes.remove(one)
            else:
                yield rows, one[1]


def _likes(rows: _Rows, places: tuple[int, ...] | None) -> Iterator[_Rows]:
    """Yield the string with all its problems changed alike, small changes first."""
    if isinstance(rows[0], Image):
        yield from _images(rows)
        return
    if any(isinstance(row, Claim | Compare) for row in rows):
        return
    most = max(len(leaves_of(row)) for row in rows)
    free = tuple(range(most)) if places is None else places
    for by in _STEPS:
        for where in _together(free):
            unit = min(_unit(rows, place) for place in where)
            yield from _made(rows, (by * unit, where, Does.ADD))
    for by in _TIMES:
        for where in _together(free):
            yield from _made(rows, (by, where, Does.TIMES))
    for one, other in product(_STEPS, _STEPS):
        for at, to in combinations(free, 2):
            first = (one * _unit(rows, at), (at,), Does.ADD)
            yield from _made(rows, first, (other * _unit(rows, to), (to,), Does.ADD))


def _together(places: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """Yield the places whose numbers change together: one, any two, all."""
    for many in sorted({1, 2, len(places)}):
        yield from (where for where in combinations(places, many) if where)


def _unit(rows: _Rows, place: int) -> int:
    """Return the ten, hundred or so that the first problem's number is made of; 1 for others."""
    numbers = leaves_of(rows[0])
    number = numbers[place] if place < len(numbers) else 1
    if not isinstance(number, int) or not number:
        return 1
    return int(10 ** (len(str(number)) - len(str(number).rstrip("0"))))


def _made(rows: _Rows, *changes: tuple[int, tuple[int, ...], Does]) -> Iterator[_Rows]:
    """Yield the string with the changes made one after the other; nothing where one is refused."""
    for by, places, does in changes:
        where = frozenset(
            (row, place)
            for row, problem in enumerate(rows)
            for place, leaf in enumerate(leaves_of(problem))
            if place in places and not isinstance(leaf, Blank)
        )
        try:
            rows = what_if(rows, Change(by, where, does))
        except ChangeError:
            return
    yield rows


def _images(rows: _Rows) -> Iterator[_Rows]:
    """Yield the same pictures with dots more or fewer in all of them, or turned around."""
    images = [row for row in rows if isinstance(row, Image)]
    most = max(len(_dots(one)) for one in images)
    for by in sorted(product(range(-3, 4), repeat=most), key=lambda each: sum(map(abs, each))):
        for turn in (1, -1):
            made = [_moved(one, by, turn) for one in images]
            if None not in made:
                yield tuple(one for one in made if one is not None)


def _dots(image: Image) -> tuple[int, ...]:
    framed = image.kind in (ImageKind.FRAME, ImageKind.PAIRS)
    return image.numbers[1:] if framed else image.numbers


def _moved(image: Image, by: tuple[int, ...], turn: int) -> Image | None:
    dots = _dots(image)
    fixed = image.numbers[: len(image.numbers) - len(dots)]
    new = tuple(one + more for one, more in zip(dots, by, strict=False))[::turn]
    if min(new) < 1:
        return None
    made = Image(image.kind, (*fixed, *new))
    try:
        return made if parse(text(made)) == made else None
    except Unreadable:
        return None


def _as_good(rows: _Rows, seed: _Rows, family: Family) -> bool:
    """Tell whether a string has all that the one that was changed had."""
    if len(set(rows)) < len(rows) or _parts(rows) > _parts(seed):
        return False
    if not all(map(_as_near, rows, seed, repeat(family))):
        return False
    neighbours = zip(rows, rows[1:], seed, seed[1:], strict=False)
    return all(links((one, two)) or not links((old, after)) for one, two, old, after in neighbours)


def _parts(rows: _Rows) -> int:
    """Return into how many parts the answers go at the most; without bound where one is nothing."""
    try:
        answers = [answer_of(row) for row in rows]
    except NoValue:
        return _NEVER
    numbers = (Fraction(one) for one in answers if isinstance(one, Exact))
    return max((one.denominator if one else _NEVER for one in numbers), default=1)


def _as_near(new: Problem, old: Problem, family: Family) -> bool:
    """Tell whether the family comes as near to the easiest way as it did; counting may lag."""
    here, there = _behind(new, family), _behind(old, family)
    return there is None or (here is not None and (here <= there or family is Family.COUNTING))


@cache
def _behind(problem: Problem, family: Family) -> int | None:
    """Return by how many tenths the family is harder than the easiest way; None without it."""
    efforts = [(tenths_of(way), way.family) for way in ways(problem)]
    mine = [tenths for tenths, one in efforts if one is family]
    return min(mine) - min(tenths for tenths, _ in efforts) if mine else None
