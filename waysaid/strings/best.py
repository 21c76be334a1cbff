"""The best string of a pool, and the proof that no other is better: bound and search.

The bounds (see `bounds.py`) say what the best end behind any candidate leaves wanting at the least.
The search tries the starts that promise most, and stops where nothing left promises more than it
has. Its work is counted in nodes, never in time.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from random import Random

from waysaid.strings.bounds import NEVER, Bounds, Ends, Frame
from waysaid.strings.helps import Help
from waysaid.strings.link import LinkKind
from waysaid.strings.pool import Pool
from waysaid.strings.wanting import STRANGE, of_run

MOST_NODES = 200_000
"""The nodes that are searched before the best found so far is given without its proof."""

Idea = tuple[LinkKind | None, ...]
"""What a string is about: the kind of link by which each problem after the first is met."""


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
    """What is looked for: the frame of the string, what it must not hold, ideas it must not have.

    `most_nodes` is how many nodes may be searched once there is a string at all.
    """

    frame: Frame
    barred: frozenset[int] = frozenset()
    ideas: frozenset[Idea] = frozenset()
    most_nodes: int = MOST_NODES


def best_string(pool: Pool, asked: Asked, seed: int) -> Best:
    """Return the best string of the pool; of several the one that the seed comes upon first."""
    search = _Search(pool, asked, bounds_of(pool, asked.frame))
    order = list(range(len(pool.candidates)))
    Random(seed).shuffle(order)
    search.run(order)
    proven = search.nodes <= asked.most_nodes
    return Best(search.found, search.least, proven, search.nodes)


@lru_cache(maxsize=16)
def bounds_of(pool: Pool, frame: Frame) -> Bounds:
    """Return the bounds of a pool for a frame: worked out once, whatever is barred."""
    return Bounds(pool, frame)


@dataclass(slots=True)
class _Search:
    pool: Pool
    asked: Asked
    bounds: Bounds
    found: tuple[int, ...] = ()
    least: int = NEVER
    nodes: int = 0

    def run(self, order: list[int]) -> None:
        """Try every start, the most promising first."""
        here, ends = self.bounds.here[0], self.bounds.ends[1]
        starts = []
        for place in order:
            missing = self.bounds.after(self.bounds.every, place)
            promise = here[place] + ends[missing].least[place]
            if promise < NEVER and place not in self.asked.barred:
                starts.append((promise, place, missing))
        for promise, place, missing in sorted(starts, key=lambda start: start[0]):
            if promise >= self.least or self._spent():
                return
            self._go_on((place,), here[place], (), missing)

    def _spent(self) -> bool:
        """Tell whether enough was searched: never before there is a string at all."""
        return bool(self.found) and self.nodes > self.asked.most_nodes

    def _go_on(
        self, so_far: tuple[int, ...], wanting: int, met: tuple[Help | None, ...], left: int
    ) -> None:
        """Try every way to go on from a string begun, the most promising first."""
        self.nodes += 1
        if len(so_far) == self.asked.frame.length:
            idea = tuple(None if help_ is None else help_.kind for help_ in met)
            if wanting < self.least and not left and idea not in self.asked.ideas:
                self.found, self.least = so_far, wanting
            return
        for promise, more, place, help_ in self._nexts(so_far, wanting, met, left):
            if promise >= self.least or self._spent():
                return
            self._go_on((*so_far, place), more, (*met, help_), self.bounds.after(left, place))

    def _nexts(
        self, so_far: tuple[int, ...], wanting: int, met: tuple[Help | None, ...], left: int
    ) -> list[tuple[int, int, int, Help | None]]:
        """Return what may come next, the most promising first.

        Each as the least that the whole then leaves wanting, what it does so far, the candidate,
        and how it is met.
        """
        at, bounds, pool = len(so_far), self.bounds, self.pool
        ends, costs, here = bounds.ends[at][left], bounds.costs[at], bounds.here[at]
        most, barred = self.least - wanting, self.asked.barred
        nexts: list[tuple[int, int, int, Help | None]] = []
        leads, by = pool.leads[so_far[-1]], pool.by[so_far[-1]]
        for place, number in zip(leads, by, strict=True):
            more = ends.rest[pool.helps[number].kind][place] + costs[number]
            if more < most and place not in so_far and place not in barred:
                help_ = pool.helps[number]
                run = _run(met, help_)
                spent = wanting + here[place] + costs[number] + run
                nexts.append((wanting + more + run, spent, place, help_))
        run, taken = _run(met, None), {*so_far, *leads}
        for more, place, strange in self._alone(so_far[-1], ends, most - run):
            if place not in taken and place not in barred:
                taken.add(place)
                spent = wanting + here[place] + bounds.alone[at][place] + strange + run
                nexts.append((wanting + more + run, spent, place, None))
        return sorted(nexts, key=lambda one: one[0])

    def _alone(self, before: int, ends: Ends, most: int) -> Iterator[tuple[int, int, int]]:
        """Yield what may come unhelped behind a candidate and promises less than `most`.

        Each as what it leaves wanting with its best end, its place, and what of that it costs that
        no number stays; some more than once.
        """
        promises, stands = ends.promises, self.pool.stands
        for stand in stands[before]:
            for place in ends.kept(self.pool, stand):
                if promises[place] >= most:
                    break
                yield promises[place], place, 0
        strange = set(stands[before]).isdisjoint
        for place in ends.alone:
            if promises[place] + STRANGE >= most:
                break
            if strange(stands[place]):
                yield promises[place] + STRANGE, place, STRANGE


def _run(met: tuple[Help | None, ...], help_: Help | None) -> int:
    """Return what it leaves wanting how the next problem is met after the one before it."""
    return of_run(met[-1], help_) if met else 0
