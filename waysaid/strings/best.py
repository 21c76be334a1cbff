"""The best string of a pool, and the proof that no other is better: bound and search.

Without two of its rules (no problem twice, no meeting like the one before) the best end of a string
is found from its last place to its first, for every candidate: no string can leave less wanting.
With that as its bound the search tries the starts that promise most, and stops where nothing left
promises more than it has. Its work is counted in nodes, never in time.
"""

from dataclasses import dataclass, field
from random import Random

from waysaid.strings.helps import Help
from waysaid.strings.pool import Pool
from waysaid.strings.wanting import of_meeting, of_place, of_run

MOST_NODES = 200_000
"""The nodes that are searched before the best found so far is given without its proof."""

_NEVER = 10**9


@dataclass(frozen=True, slots=True)
class Best:
    """The best string found, by the places of its problems in the pool.

    `proven` is whether no string of the pool leaves less wanting; `nodes` how many were searched.
    `places` is empty where there is no string at all.
    """

    places: tuple[int, ...]
    wanting: int
    proven: bool
    nodes: int


@dataclass(frozen=True, slots=True)
class Asked:
    """What is looked for: so many problems, those that must be in, how easy the first should be."""

    length: int
    easy: int
    musts: tuple[int, ...] = ()
    most_nodes: int = MOST_NODES


def best_string(pool: Pool, asked: Asked, seed: int) -> Best:
    """Return the best string of the pool; of several the one that the seed comes upon first."""
    search = _Search(pool, asked, _Bounds(pool, asked))
    order = list(range(len(pool.candidates)))
    Random(seed).shuffle(order)
    search.run(order)
    proven = search.nodes <= asked.most_nodes
    return Best(search.found, search.least, proven, search.nodes)


@dataclass(slots=True)
class _Bounds:
    """For each place of a string: what the best end behind each candidate leaves wanting.

    By which of the musts are still to come: `ends[at][missing][place]`. `alone` lists, for each
    place, the candidates that come unhelped, each with what it and its end leave wanting.
    """

    pool: Pool
    asked: Asked
    bits: dict[int, int] = field(default_factory=dict)
    ends: list[list[list[int]]] = field(default_factory=list)
    here: list[list[int]] = field(default_factory=list)
    alone: list[list[list[tuple[int, int]]]] = field(default_factory=list)

    def __post_init__(self) -> None:
        length, candidates = self.asked.length, self.pool.candidates
        every = range(1 << len(self.asked.musts))
        self.bits = {must: 1 << number for number, must in enumerate(self.asked.musts)}
        self.here = [
            [of_place(one, at, length, self.asked.easy) for one in candidates]
            for at in range(length)
        ]
        self.alone = [[] for _ in range(length)]
        last = [[_NEVER if missing else 0] * len(candidates) for missing in every]
        self.ends = [last]
        for at in range(length - 1, 0, -1):
            self.ends.insert(0, [self._before(at, missing) for missing in every])

    def after(self, missing: int, place: int) -> int:
        """Return the musts still to come once a candidate is in."""
        return missing & ~self.bits.get(place, 0)

    def _before(self, at: int, missing: int) -> list[int]:
        """Return what the best end from place `at` on leaves wanting, behind each candidate."""
        candidates, here, ends = self.pool.candidates, self.here[at], self.ends[0]
        rest = [
            here[place] + ends[self.after(missing, place)][place]
            for place in range(len(candidates))
        ]
        alone = sorted(
            (more + of_meeting(candidates[place], None, at), place)
            for place, more in enumerate(rest)
            if more < _NEVER
        )
        self.alone[at].append(alone)
        least = alone[0][0] if alone else _NEVER
        found = []
        for helps in self.pool.helps:
            best = least
            for place, help_ in helps:
                if rest[place] < best:
                    whole = rest[place] + of_meeting(candidates[place], help_, at)
                    best = min(best, whole)
            found.append(best)
        return found


@dataclass(slots=True)
class _Search:
    pool: Pool
    asked: Asked
    bounds: _Bounds
    found: tuple[int, ...] = ()
    least: int = _NEVER
    nodes: int = 0

    def run(self, order: list[int]) -> None:
        """Try every start, the most promising first."""
        bounds, none = self.bounds, (1 << len(self.asked.musts)) - 1
        starts = []
        for place in order:
            missing = bounds.after(none, place)
            starts.append((bounds.here[0][place] + bounds.ends[0][missing][place], place, missing))
        for promise, place, missing in sorted(starts, key=lambda start: start[0]):
            if promise >= self.least or self._spent():
                return
            self._go_on((place,), bounds.here[0][place], None, missing)

    def _spent(self) -> bool:
        """Tell whether enough was searched: never before there is a string at all."""
        return bool(self.found) and self.nodes > self.asked.most_nodes

    def _go_on(self, so_far: tuple[int, ...], wanting: int, before: Help | None, left: int) -> None:
        """Try every way to go on from a string begun, the most promising first."""
        self.nodes += 1
        if len(so_far) == self.asked.length:
            if wanting < self.least and not left:
                self.found, self.least = so_far, wanting
            return
        for promise, place, help_ in self._nexts(so_far, wanting, before, left):
            if promise >= self.least or self._spent():
                return
            missing = self.bounds.after(left, place)
            ends = self.bounds.ends[len(so_far)][missing][place]
            self._go_on((*so_far, place), promise - ends, help_, missing)

    def _nexts(
        self, so_far: tuple[int, ...], wanting: int, before: Help | None, left: int
    ) -> list[tuple[int, int, Help | None]]:
        """Return what may come next: what the whole then leaves wanting at the least, and what."""
        at, bounds = len(so_far), self.bounds
        here, ends, candidates = bounds.here[at], bounds.ends[at], self.pool.candidates
        helps = dict(self.pool.helps[so_far[-1]])
        nexts: list[tuple[int, int, Help | None]] = []
        for place, help_ in helps.items():
            if place not in so_far:
                more = here[place] + of_meeting(candidates[place], help_, at)
                more += of_run(before, help_) + ends[bounds.after(left, place)][place]
                nexts.append((wanting + more, place, help_))
        for more, place in bounds.alone[at][left]:
            if wanting + more >= self.least:
                break
            if place not in so_far and place not in helps:
                nexts.append((wanting + more, place, None))
        return sorted(nexts, key=lambda one: one[0])
