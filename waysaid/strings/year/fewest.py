"""The fewest days to change in a plan so that it keeps its rules again: bound and search.

A rule that is broken can be mended in a few ways only, and one of them is in every plan that keeps
the rules; a day once decided stays as it is. So to try them all, with one changed day more each
time, finds the fewest. Of plans with as few changes the first is taken, those that do least harm
being tried first.
"""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cached_property

from waysaid.strings.year.course import FIRST_GAP

MOST_CHANGES = 12
MOST_NODES = 20_000
"""How many days may change, and how many plans are looked at, before nothing is changed instead."""


@dataclass(frozen=True, slots=True)
class Item:
    """A talk as a plan sees it: which of all, the idea, whether it is a lighter one."""

    number: int
    idea: str
    light: bool


@dataclass(frozen=True, slots=True)
class Wanted:
    """An idea that is to come between two days, both included."""

    idea: str
    since: int
    until: int


@dataclass(frozen=True)
class Task:
    """A plan for the days to come, and its rules; days are numbers of school days.

    `light` are the days of lighter talks: a talk goes to a day of its own kind. `spare` are talks
    without a day. `met` has the first and last day of each idea that already came. An idea comes
    behind those that it `needs`, so far as they are met, planned or spare; those to `keep` do not
    fall out; no idea comes twice within `FIRST_GAP` days; nothing changes on `locked` days.
    `dear` are the ideas that give way last, from 0 up.
    """

    plan: Mapping[int, Item]
    light: frozenset[int]
    locked: frozenset[int]
    spare: tuple[Item, ...]
    met: Mapping[str, tuple[int, int]]
    needs: Mapping[str, tuple[str, ...]]
    wanted: tuple[Wanted, ...]
    keep: frozenset[str]
    dear: Mapping[str, int]

    @cached_property
    def known(self) -> frozenset[str]:
        """The ideas that are met, planned or spare."""
        items = (*self.plan.values(), *self.spare)
        return frozenset({*self.met, *(item.idea for item in items)})


@dataclass(frozen=True, slots=True)
class _State:
    """A plan on its way: days without a talk as yet, and the days that are decided."""

    plan: Mapping[int, Item]
    holes: frozenset[int]
    free: frozenset[Item]
    decided: frozenset[int]


_Step = tuple[int, Item | None]


def fewest_changes(task: Task) -> dict[int, Item] | None:
    """Return the plan that keeps the rules with the fewest changed days; None without one in reach.

    In reach: with `MOST_CHANGES` days and `MOST_NODES` plans.
    """
    search = _Search(task)
    start = _State(task.plan, frozenset(), frozenset(task.spare), frozenset())
    for most in range(MOST_CHANGES + 1):
        found = search.mended(start, most)
        if found is not None:
            return dict(found)
        if search.nodes > MOST_NODES:
            return None
    return None


class _Search:
    def __init__(self, task: Task) -> None:
        self.task = task
        self.nodes = 0
        self.often = Counter(item.idea for item in task.plan.values())

    def mended(self, state: _State, most: int) -> Mapping[int, Item] | None:
        """Return a plan that keeps the rules, with at most so many changed days in all."""
        self.nodes += 1
        changed = len(state.decided | state.holes)
        unmet = len({one.idea for one in self._unmet(state)})
        if changed + max(0, unmet - len(state.holes)) > most or self.nodes > MOST_NODES:
            return None
        steps = next(self._broken(state), None)
        if steps is None:
            return state.plan
        for day, item in sorted(steps, key=self._harm):
            after = self._done(state, day, item)
            found = self.mended(after, most) if after is not None else None
            if found is not None:
                return found
        return None

    def _harm(self, step: _Step) -> tuple[int, int, int, int]:
        """Sort first what takes a day from an idea that can spare it."""
        day, item = step
        old = self.task.plan[day].idea
        return self.task.dear.get(old, 0), -self.often[old], day, item.number if item else -1

    def _done(self, state: _State, day: int, item: Item | None) -> _State | None:
        """Return the plan with a talk put on a day, or taken off it; None where that cannot be."""
        plan = dict(state.plan)
        old = plan.pop(day, None)
        free = state.free | {old} if old is not None else state.free
        if item is None:
            return replace(state, plan=plan, free=free, holes=state.holes | {day})
        holes = state.holes - {day}
        if item in free:
            free -= {item}
        else:
            origin = next(each for each, one in plan.items() if one == item)
            if origin in state.decided or origin in self.task.locked:
                return None
            del plan[origin]
            holes |= {origin}
        plan[day] = item
        if item == self.task.plan[day]:
            return None
        return _State(plan, holes, free, state.decided | {day})

    def _broken(self, state: _State) -> Iterator[list[_Step]]:
        """Yield, for each rule that is broken, every step that may mend it."""
        for one in self._unmet(state):
            yield list(self._put(state, one.idea, one.until, one.since))
        here = {item.idea for item in state.plan.values()}
        for idea in sorted(self.task.keep - here - self.task.met.keys()):
            yield list(self._put(state, idea, max(self.task.plan, default=0)))
        first = self._first(state)
        for idea, day in sorted(first.items()):
            if idea in self.task.met:
                continue
            for need in self.task.needs.get(idea, ()):
                if need in self.task.known and first.get(need, day) >= day:
                    yield [*self._put(state, need, day - 1), *self._off(state, day)]
        for day, other in self._too_near(state):
            yield [*self._off(state, other), *self._off(state, day)]
        for day in sorted(state.holes):
            yield [(day, item) for item in self._items(state, day)]

    def _unmet(self, state: _State) -> list[Wanted]:
        return [
            one
            for one in self.task.wanted
            if not any(
                item.idea == one.idea and one.since <= day <= one.until
                for day, item in state.plan.items()
            )
        ]

    def _first(self, state: _State) -> dict[str, int]:
        first = {idea: days[0] for idea, days in self.task.met.items()}
        for day in sorted(state.plan):
            first.setdefault(state.plan[day].idea, day)
        return first

    def _too_near(self, state: _State) -> Iterator[tuple[int, int]]:
        last = {idea: days[1] for idea, days in self.task.met.items()}
        for day in sorted(state.plan):
            idea = state.plan[day].idea
            if idea in last and day - last[idea] < FIRST_GAP:
                yield last[idea], day
            last[idea] = day

    def _open(self, state: _State, day: int) -> bool:
        return day in self.task.plan and day not in self.task.locked and day not in state.decided

    def _put(self, state: _State, idea: str, until: int, since: int = 0) -> Iterator[_Step]:
        """Yield each way to let an idea come on an open day, from one to another."""
        for day in self.task.plan:
            if since <= day <= until and self._open(state, day):
                yield from ((day, item) for item in self._items(state, day) if item.idea == idea)

    def _off(self, state: _State, day: int) -> Iterator[_Step]:
        """Yield the step that takes its talk off a day, where it is open."""
        if self._open(state, day) and day not in state.holes:
            yield day, None

    def _items(self, state: _State, day: int) -> list[Item]:
        """Return the talks of a day's kind that stand nowhere, or on another open day."""
        elsewhere = [item for at, item in state.plan.items() if at != day and self._open(state, at)]
        items = [item for item in (*state.free, *elsewhere) if item != self.task.plan[day]]
        return [item for item in items if item.light == (day in self.task.light)]
