"""What the best end of a string leaves wanting at the least, behind every candidate.

Without some rules (no problem twice, nothing barred, and no more of how two meetings follow each
other than the kinds of both) the best end of a string is found from its last place to its first,
for every candidate: no string can leave less wanting. So the bounds of a pool serve every search in
it, whatever was used lately.
"""

from collections import defaultdict
from dataclasses import dataclass, field
from enum import IntEnum
from functools import lru_cache
from operator import add
from typing import NamedTuple

from waysaid.strings.helps import Help
from waysaid.strings.link import LinkKind
from waysaid.strings.pool import Pool
from waysaid.strings.wanting import (
    AGAIN,
    ALONE,
    LAST_ALONE,
    LOOSE,
    STRANGE,
    WANDERS,
    of_alone,
    of_help,
    of_place,
)

NEVER = 10**9
"""More than any string leaves wanting."""


@dataclass(frozen=True, slots=True)
class Frame:
    """The frame of a string: its length, and how easy its first problem should be, in tenths.

    `musts` are the places in the pool of problems that must be in it, `kept` those that stand at
    a place of the string already, `outside` those that may stand nowhere. With `surprise` the last
    comes unhelped, and that costs nothing.
    """

    length: int
    easy: int
    musts: tuple[int, ...] = ()
    kept: tuple[tuple[int, int], ...] = ()
    surprise: bool = False
    outside: frozenset[int] = frozenset()


class Came(IntEnum):
    """How a candidate came, so far as what comes next costs by it."""

    UNHELPED = 0
    BOTH_CHANGED = 1
    ONE_CHANGED = 2
    OTHERWISE = 3
    """By another link, or first."""


def came(help_: Help | None) -> Came:
    """Return how a candidate came by a help, or without one."""
    if help_ is None:
        return Came.UNHELPED
    if help_.kind is LinkKind.BOTH_CHANGE:
        return Came.BOTH_CHANGED
    return Came.ONE_CHANGED if help_.kind is LinkKind.ONE_CHANGES else Came.OTHERWISE


@dataclass(frozen=True, slots=True)
class Ends:
    """What the best ends from a place of a string on leave wanting, by the candidate before it.

    `behind[how][place]` is that behind a candidate that came so. `rest[how][place]` is what a
    candidate that comes here so leaves wanting itself, with its best end; `alone` lists those that
    come unhelped, the best first, each with that.
    """

    behind: tuple[list[int], ...]
    rest: tuple[list[int], ...] = ()
    alone: list[tuple[int, int]] = field(default_factory=list)


class Group(NamedTuple):
    """The candidates that one helps with so that they come alike: what comes next costs alike."""

    how: Came
    own: bool
    leads: tuple[int, ...]
    by: tuple[int, ...]

    def more(self, before: Came) -> int:
        """Return the least that it costs besides where the one that helps came so."""
        if before is Came.UNHELPED:
            return 0 if self.own else LOOSE
        if before is not self.how or before is Came.OTHERWISE:
            return 0
        return min(AGAIN, WANDERS)


@lru_cache(maxsize=12)
def _grouped(pool: Pool) -> tuple[tuple[Group, ...], ...]:
    """Return those that each candidate of a pool helps with, in groups that come alike."""
    kinds = [(came(help_), help_.own) for help_ in pool.helps]
    found = []
    for leads, by in zip(pool.leads, pool.by, strict=True):
        groups: dict[tuple[Came, bool], list[tuple[int, int]]] = {}
        for pair in zip(leads, by, strict=True):
            groups.setdefault(kinds[pair[1]], []).append(pair)
        found.append(
            tuple(
                Group(how, own, *map(tuple, zip(*pairs, strict=True)))
                for (how, own), pairs in groups.items()
            )
        )
    return tuple(found)


@lru_cache(maxsize=12)
def standing(pool: Pool) -> tuple[tuple[int, ...], ...]:
    """Return the candidates that have a number standing at a place, for all of `pool.stands`."""
    found: dict[int, list[int]] = defaultdict(list)
    for place, stands in enumerate(pool.stands):
        for stand in stands:
            found[stand].append(place)
    return tuple(tuple(found[stand]) for stand in range(len(found)))


@dataclass(slots=True)
class Bounds:
    """The bounds of a pool for a frame.

    `here[at][place]` is what a candidate leaves wanting by itself, `costs[at]` what each help of
    the pool costs there, `alone[at][place]` what it costs to come unhelped, and `came` how a
    candidate comes by a help. `ends[at][missing]` are the ends from a place on, by which of the
    musts are still to come.
    """

    pool: Pool
    frame: Frame
    bits: dict[int, int] = field(default_factory=dict)
    here: list[list[int]] = field(default_factory=list)
    costs: list[list[int]] = field(default_factory=list)
    alone: list[list[int]] = field(default_factory=list)
    came: list[Came] = field(default_factory=list)
    ends: list[list[Ends]] = field(default_factory=list)

    def __post_init__(self) -> None:
        length, many = self.frame.length, len(self.pool.candidates)
        self.bits = {must: 1 << number for number, must in enumerate(self.frame.musts)}
        self.here = [self._by_itself(at) for at in range(length)]
        self.costs = [self._helps(at) for at in range(length)]
        self.alone = [self._unhelped(at) for at in range(length)]
        self.came = [came(help_) for help_ in self.pool.helps]
        nothing = [[NEVER if missing else 0] * many for missing in self._sets()]
        self.ends = [[Ends((none,) * len(Came)) for none in nothing]]
        for at in range(length - 1, 0, -1):
            self.ends.insert(0, [self._before(at, missing) for missing in self._sets()])
        self.ends.insert(0, [])

    @property
    def every(self) -> int:
        """All the musts."""
        return (1 << len(self.frame.musts)) - 1

    def after(self, missing: int, place: int) -> int:
        """Return the musts still to come once a candidate is in."""
        return missing & ~self.bits.get(place, 0)

    def _sets(self) -> range:
        return range(1 << len(self.frame.musts))

    def _by_itself(self, at: int) -> list[int]:
        """Return what each candidate leaves wanting at a place, where it may stand there."""
        frame = self.frame
        found = [
            NEVER if place in frame.outside else of_place(one, at, frame.length, frame.easy)
            for place, one in enumerate(self.pool.candidates)
        ]
        for other, place in frame.kept:
            if other == at:
                return [cost if one == place else NEVER for one, cost in enumerate(found)]
            found[place] = NEVER
        return found

    def _surprise(self, at: int) -> bool:
        return self.frame.surprise and at == self.frame.length - 1

    def _helps(self, at: int) -> list[int]:
        """Return what each help of the pool costs at a place."""
        if at == 0 or self._surprise(at):
            return [NEVER] * len(self.pool.helps)
        return [of_help(help_, at) for help_ in self.pool.helps]

    def _unhelped(self, at: int) -> list[int]:
        """Return what it costs that each candidate comes at a place unhelped."""
        costs = [of_alone(one, at, self.frame.length) for one in self.pool.candidates]
        return [cost - ALONE - LAST_ALONE for cost in costs] if self._surprise(at) else costs

    def _before(self, at: int, missing: int) -> Ends:
        """Return the ends from place `at` on."""
        here, nexts = self.here[at], self.ends[0]
        left = [nexts[self.after(missing, place)] for place in range(len(here))]
        rest = tuple(
            [
                one + end.behind[how][place]
                for place, (one, end) in enumerate(zip(here, left, strict=True))
            ]
            for how in Came
        )
        promises = list(map(add, rest[Came.UNHELPED], self.alone[at]))
        alone = sorted((more, place) for place, more in enumerate(promises) if more < NEVER)
        least, cost = alone[0][0] + STRANGE if alone else NEVER, self.costs[at].__getitem__
        kept = [min(map(promises.__getitem__, places)) for places in standing(self.pool)]
        behind: tuple[list[int], ...] = tuple([] for _ in Came)
        for groups, stands in zip(_grouped(self.pool), self.pool.stands, strict=True):
            nearest = min((least, *map(kept.__getitem__, stands)))
            ends = [
                (
                    group,
                    min(
                        map(add, map(rest[group.how].__getitem__, group.leads), map(cost, group.by))
                    ),
                )
                for group in groups
            ]
            for how in Came if at > 1 else (Came.OTHERWISE,):
                unhelped = nearest + (LOOSE if how is Came.UNHELPED else 0)
                found = (end + group.more(how) for group, end in ends)
                behind[how].append(min(unhelped, min(found, default=NEVER)))
        return Ends(behind, rest, alone)
