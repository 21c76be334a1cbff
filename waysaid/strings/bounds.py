"""What the best end of a string leaves wanting at the least, behind every candidate.

Without some rules (no problem twice, nothing barred, and no more of how two meetings follow each
other than the kinds of both) the best end of a string is found from its last place to its first,
for every candidate: no string can leave less wanting. So the bounds of a pool serve every search in
it, whatever was used lately.
"""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import pairwise, product
from operator import add
from typing import NamedTuple

from waysaid.strings.link import LinkKind
from waysaid.strings.pool import Candidate, Pool
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

_AGAIN = min(AGAIN, WANDERS)
_Weight = tuple[int, int | None, int]
"""What of a candidate is weighed: its effort, what the focus saves, how many rivals there are."""


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


How = LinkKind | None
"""How a candidate comes, so far as what comes next costs by it: by a kind of link, or unhelped."""


@dataclass(frozen=True, slots=True)
class Ends:
    """What the best ends from a place of a string on leave wanting, by the candidate before it.

    `least[place]` is that behind a candidate, however it came, and `behind[how][place]` behind one
    that came so. `rest[how][place]` is what a candidate that comes here so leaves wanting itself,
    with its best end; `promises[place]` the same with what it costs to come unhelped, and `alone`
    lists the candidates, those first that leave the least so.
    """

    least: list[int]
    behind: Mapping[How, list[int]]
    rest: Mapping[How, list[int]] = field(default_factory=dict)
    promises: list[int] = field(default_factory=list)
    alone: list[int] = field(default_factory=list)
    _kept: dict[int, list[int]] = field(default_factory=dict)

    def kept(self, pool: Pool, stand: int) -> list[int]:
        """Return the candidates with a number standing there, as `alone` has them."""
        if stand not in self._kept:
            places = _standing(pool)[stand]
            self._kept[stand] = sorted(places, key=self.promises.__getitem__)
        return self._kept[stand]


class Group(NamedTuple):
    """Meetings in which the candidates that are helped come alike: what comes next costs alike.

    `leads` are those that are helped, `by` how, one for each meeting. Those of each of the `places`
    that help begin where those of the one before end, in `ends`, which begins with 0.
    """

    kind: LinkKind
    own: bool
    places: list[int]
    leads: list[int]
    by: list[int]
    ends: list[int]


@lru_cache(maxsize=12)
def _grouped(pool: Pool) -> tuple[Group, ...]:
    """Return the meetings of a pool in groups that come alike."""
    kinds = [(help_.kind, help_.own) for help_ in pool.helps]
    groups = {kind: Group(*kind, [], [], [], [0]) for kind in kinds}
    notes = [(groups[kind].leads.append, groups[kind].by.append) for kind in kinds]
    for place, (leads, by) in enumerate(zip(pool.leads, pool.by, strict=True)):
        for lead, number in zip(leads, by, strict=True):
            note_lead, note_by = notes[number]
            note_lead(lead)
            note_by(number)
        for group in groups.values():
            if len(group.leads) > group.ends[-1]:
                group.places.append(place)
                group.ends.append(len(group.leads))
    return tuple(groups.values())


@lru_cache(maxsize=12)
def _standing(pool: Pool) -> tuple[tuple[int, ...], ...]:
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
    the pool costs there, and `alone[at][place]` what it costs to come unhelped. `weights` are those
    of the candidates, `alike` has one candidate of each. `ends[at][missing]` are the ends from a
    place on, by which of the musts are still to come.
    """

    pool: Pool
    frame: Frame
    weights: list[_Weight] = field(default_factory=list)
    alike: dict[_Weight, Candidate] = field(default_factory=dict)
    bits: dict[int, int] = field(default_factory=dict)
    here: list[list[int]] = field(default_factory=list)
    costs: list[list[int]] = field(default_factory=list)
    alone: list[list[int]] = field(default_factory=list)
    ends: list[list[Ends]] = field(default_factory=list)

    def __post_init__(self) -> None:
        length, many = self.frame.length, len(self.pool.candidates)
        weights = [(one.effort, one.pays, one.rivals) for one in self.pool.candidates]
        self.weights, self.alike = weights, dict(zip(weights, self.pool.candidates, strict=True))
        self.bits = {must: 1 << number for number, must in enumerate(self.frame.musts)}
        self.here = [self._by_itself(at) for at in range(length)]
        self.costs = [self._helps(at) for at in range(length)]
        self.alone = [self._unhelped(at) for at in range(length)]
        hows = (None, *dict.fromkeys(help_.kind for help_ in self.pool.helps))
        nothing = [[NEVER if missing else 0] * many for missing in self._sets()]
        self.ends = [[Ends(none, dict.fromkeys(hows, none)) for none in nothing]]
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

    def _each(self, cost: Callable[[Candidate], int]) -> list[int]:
        """Return what each candidate costs: worked out once for all that weigh alike."""
        costs = {weight: cost(one) for weight, one in self.alike.items()}
        return [costs[weight] for weight in self.weights]

    def _by_itself(self, at: int) -> list[int]:
        """Return what each candidate leaves wanting at a place, where it may stand there."""
        frame = self.frame
        found = self._each(lambda one: of_place(one, at, frame.length, frame.easy))
        for place in frame.outside:
            found[place] = NEVER
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
        costs = self._each(lambda one: of_alone(one, at, self.frame.length))
        return [cost - ALONE - LAST_ALONE for cost in costs] if self._surprise(at) else costs

    def _before(self, at: int, missing: int) -> Ends:
        """Return the ends from place `at` on."""
        here, nexts = self.here[at], self.ends[0]
        rest = {how: list(map(add, here, behind)) for how, behind in nexts[missing].behind.items()}
        for (must, _), how in product(self.bits.items(), rest):
            end = nexts[self.after(missing, must)].behind[how][must]
            rest[how][must] = here[must] + end
        promises = list(map(add, rest[None], self.alone[at]))
        alone = sorted(range(len(promises)), key=promises.__getitem__)
        least, behind = _behind(self._nearest(promises), self._helped(at, rest))
        return Ends(least, behind, rest, promises, alone)

    def _nearest(self, promises: Sequence[int]) -> list[int]:
        """Return the least left wanting behind each candidate where the next comes unhelped."""
        least = min(promises, default=NEVER) + STRANGE
        kept = [min(map(promises.__getitem__, places)) for places in _standing(self.pool)]
        return [min((least, *map(kept.__getitem__, stands))) for stands in self.pool.stands]

    def _helped(self, at: int, rest: Mapping[How, list[int]]) -> list[tuple[Group, list[int]]]:
        """Return the same for each group, where the candidate helps with the next so."""
        cost, found = self.costs[at].__getitem__, []
        for group in _grouped(self.pool):
            end, least = rest[group.kind].__getitem__, [NEVER] * len(self.pool.candidates)
            costs = list(map(add, map(end, group.leads), map(cost, group.by)))
            for place, (start, stop) in zip(group.places, pairwise(group.ends), strict=True):
                least[place] = min(costs[start:stop])
            found.append((group, least))
        return found


def _behind(
    nearest: list[int], helped: Iterable[tuple[Group, list[int]]]
) -> tuple[list[int], dict[How, list[int]]]:
    """Return what is left wanting at the least behind each candidate, and behind one that came so.

    `nearest` is that where the next is unhelped, `helped` that by each group of those that are
    helped. What comes by the kind of link by which the one before came costs `_AGAIN` more: that
    counts where no other kind is as good.
    """
    loose, kinds = [cost + LOOSE for cost in nearest], dict[LinkKind, list[int]]()
    for group, ends in helped:
        known = kinds.get(group.kind)
        kinds[group.kind] = ends if known is None else list(map(min, known, ends))
        loose = list(map(min, loose, ends if group.own else [end + LOOSE for end in ends]))
    least, second = nearest, [NEVER] * len(nearest)
    for ends in kinds.values():
        second = list(map(min, second, map(max, least, ends)))
        least = list(map(min, least, ends))
    behind: dict[How, list[int]] = {None: loose}
    for kind, ends in kinds.items():
        behind[kind] = [
            one if end > one else min(end + _AGAIN, other)
            for end, one, other in zip(ends, least, second, strict=True)
        ]
    return least, behind
