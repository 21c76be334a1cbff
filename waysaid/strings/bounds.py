"""What the best end of a string leaves wanting at the least, behind every candidate.

Without three rules (no problem twice, two meetings in a row unlike, nothing barred) the best end of
a string is found from its last place to its first, for every candidate: no string can leave less
wanting. So the bounds of a pool serve every search in it, whatever was used lately.
"""

from dataclasses import dataclass, field
from operator import add

from waysaid.strings.pool import Pool
from waysaid.strings.wanting import (
    ALONE,
    LAST_ALONE,
    LOOSE,
    of_alone,
    of_help,
    of_place,
    of_run,
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


@dataclass(frozen=True, slots=True)
class Ends:
    """What the best ends from a place of a string on leave wanting, by the candidate before it.

    `helped[place]` is that behind a candidate that came helped, or first; `unhelped[place]` behind
    one that came unhelped, which should help the next. `rest[place]` is what a candidate that comes
    here helped leaves wanting itself, with its best end; `alone` lists those that come unhelped,
    the best first, each with that.
    """

    helped: list[int]
    unhelped: list[int]
    rest: list[int] = field(default_factory=list)
    alone: list[tuple[int, int]] = field(default_factory=list)


@dataclass(slots=True)
class Bounds:
    """The bounds of a pool for a frame.

    `here[at][place]` is what a candidate leaves wanting by itself, `costs[at]` what each help of
    the pool costs there. `ends[at][missing]` are the ends from a place on, by which of the musts
    are still to come.
    """

    pool: Pool
    frame: Frame
    bits: dict[int, int] = field(default_factory=dict)
    here: list[list[int]] = field(default_factory=list)
    costs: list[list[int]] = field(default_factory=list)
    ends: list[list[Ends]] = field(default_factory=list)

    def __post_init__(self) -> None:
        length, many = self.frame.length, len(self.pool.candidates)
        self.bits = {must: 1 << number for number, must in enumerate(self.frame.musts)}
        self.here = [self._by_itself(at) for at in range(length)]
        self.costs = [self._helps(at) for at in range(length)]
        nothing = [[NEVER if missing else 0] * many for missing in self._sets()]
        self.ends = [[Ends(none, none) for none in nothing]]
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

    def unhelped(self, at: int, place: int) -> int:
        """Return what it costs that a candidate comes at a place unhelped."""
        cost = of_alone(self.pool.candidates[place], at, self.frame.length)
        return cost - ALONE - LAST_ALONE if self._surprise(at) else cost

    def _before(self, at: int, missing: int) -> Ends:
        """Return the ends from place `at` on."""
        pool, here, cost, nexts = self.pool, self.here[at], self.costs[at], self.ends[0]
        left = [nexts[self.after(missing, place)] for place in range(len(here))]
        rest = [
            one + end.helped[place] for place, (one, end) in enumerate(zip(here, left, strict=True))
        ]
        alone = sorted(
            (one + end.unhelped[place] + self.unhelped(at, place), place)
            for place, (one, end) in enumerate(zip(here, left, strict=True))
            if one + end.unhelped[place] < NEVER
        )
        least = alone[0][0] if alone else NEVER
        loose = [one + of_run(None, help_) for one, help_ in zip(cost, pool.helps, strict=True)]
        helped, unhelped = [], []
        for leads, by in zip(pool.leads, pool.by, strict=True):
            more = tuple(map(rest.__getitem__, leads))
            ends = map(add, more, map(cost.__getitem__, by))
            helped.append(min(least, min(ends, default=NEVER)))
            ends = map(add, more, map(loose.__getitem__, by))
            unhelped.append(min(least + LOOSE, min(ends, default=NEVER)))
        return Ends(helped, unhelped, rest, alone)
