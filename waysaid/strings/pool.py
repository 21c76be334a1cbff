"""What a string is composed from: every candidate of a topic and grade, and what each helps."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from waysaid.number import Exact, NoValue, Problem
from waysaid.strings.helps import SEEN, Change, Help, changes, left_of, steps_of
from waysaid.strings.link import LinkKind
from waysaid.strings.look import Look, Part, look
from waysaid.strings.shape import Counts, Key, Shape, undoes
from waysaid.strings.topic import Topic
from waysaid.strings.topic_forms import other_forms_of
from waysaid.strings.topic_numbers import problems_of
from waysaid.ways import Family, grades_of

_FIRST_RESORT = frozenset(
    {
        Family.KNOWN_FACT,
        Family.COLUMN,
        Family.COUNTING,
        Family.JUMP,
        Family.SPLIT,
        Family.BREAK_UP,
        Family.CHUNK_OUT,
        Family.RENAME,
    }
)
"""The families that need no eye for the numbers: what the focus must save work against."""

_INSIDE = frozenset({LinkKind.INSIDE_A_WAY})
_BOTH = frozenset({LinkKind.BOTH_CHANGE})
_ONE = frozenset({LinkKind.ONE_CHANGES})
_OWN = {
    Family.GIVE_AND_TAKE: _BOTH,
    Family.SHIFT_BOTH: _BOTH,
    Family.DOUBLE_HALVE: _BOTH,
    Family.SCALE_BOTH: _BOTH,
    Family.THINK_ADD: frozenset({LinkKind.OPPOSITE}),
    Family.THINK_TIMES: frozenset({LinkKind.OPPOSITE}),
    Family.COUNTING: _ONE,
    Family.KNOWN_FACT: _ONE | _BOTH | {LinkKind.TURNED_AROUND},
    Family.NEAR_DOUBLE: _INSIDE | _ONE,
    Family.NEAR_FACT: _INSIDE | _ONE,
    Family.FACTOR_STEPS: _INSIDE | {LinkKind.DOUBLE_HALF},
    Family.BENCHMARK: _INSIDE | _ONE | {LinkKind.DOUBLE_HALF},
    Family.RENAME: _INSIDE | {LinkKind.SAME_TOTAL, LinkKind.TURNED_AROUND},
}
"""The kinds of link in which a family shows; in one inside a way where none is named. Our choice.
"""

ENOUGH = 2000
"""From so many problems a string is to be chosen. Our choice."""
RIVAL = 10
"""A family costs at most so many tenths more than the easiest way to be its rival."""


@dataclass(frozen=True, slots=True)
class Candidate:
    """A problem that a string may hold.

    `effort` is that of its easiest way; `focus` that of the easiest way of the family in focus,
    None where it has none; `usual` that of the easiest way of first resort (of any, where there
    is none); all in tenths. `rivals` is how many families come near the easiest. `parts` are the
    problems that are steps of its ways in focus, each with what then is left to do.
    """

    problem: Problem
    shape: Shape
    effort: int
    focus: int | None
    usual: int
    rivals: int
    parts: tuple[Part, ...] = ()

    @property
    def pays(self) -> int | None:
        """What the focus saves against the usual ways, in tenths; None without such a way."""
        return None if self.focus is None else self.usual - self.focus


@dataclass(frozen=True, slots=True, eq=False)
class Pool:
    """The candidates, and for each those that it helps with.

    `places` says where each problem stands among the candidates; `steps` is by how much numbers
    change from one to another. `leads[place]` are the places of the
    candidates that the one at `place` helps with, and `by[place]` how it helps with each: places in
    `helps`, which has each different help once. `stands` are the numbers of each, a
    number for each number that stands at a place of a form.
    """

    candidates: tuple[Candidate, ...]
    helps: tuple[Help, ...]
    leads: tuple[tuple[int, ...], ...]
    by: tuple[tuple[int, ...], ...]
    steps: tuple[Exact, ...]
    places: Mapping[Problem, int]
    stands: tuple[tuple[int, ...], ...]

    def helped(self, before: int) -> dict[int, Help]:
        """Return those that a candidate helps with, each with its help."""
        helps = self.helps
        pairs = zip(self.leads[before], self.by[before], strict=True)
        return {place: helps[number] for place, number in pairs}

    def keeps(self, before: int, place: int) -> bool:
        """Tell whether a number stays where it was from one problem to another of its form."""
        return any(one in self.stands[place] for one in self.stands[before])

    def met(self, places: Sequence[int]) -> tuple[Help | None, ...]:
        """Return the help with which each problem of a string meets the one before; first None."""
        return (None, *(self.helped(one).get(other) for one, other in pairwise(places)))


@lru_cache(maxsize=12)
def pool(grade: int, topic: Topic, family: Family) -> Pool:
    """Return the pool of a grade for a topic and a family in focus."""
    return pool_of(problems_in(grade, topic), family)


@lru_cache(maxsize=12)
def pool_with(grade: int, topic: Topic, family: Family, more: tuple[Problem, ...]) -> Pool:
    """Return the pool of a grade for a topic and a family in focus, with problems more."""
    return widened(pool(grade, topic, family), more, family)


@lru_cache(maxsize=64)
def problems_in(grade: int, topic: Topic) -> tuple[Problem, ...]:
    """Return every problem of a grade, each once, that a string of the topic may hold.

    Where those as they are written most are fewer than `ENOUGH`, the same facts in other forms too.
    """
    plain = plain_in(grade, topic)
    if len(plain) >= ENOUGH:
        return plain
    return tuple(dict.fromkeys((*plain, *_of_grade(grade, other_forms_of(topic)))))


@lru_cache(maxsize=64)
def plain_in(grade: int, topic: Topic) -> tuple[Problem, ...]:
    """Return the problems of a grade, each once, in the form in which the topic mostly has them."""
    return _of_grade(grade, problems_of(topic))


def _of_grade(grade: int, problems: Iterable[Problem]) -> tuple[Problem, ...]:
    return tuple(one for one in dict.fromkeys(problems) if grades_of(one).holds(grade))


def candidates_of(problems: Iterable[Problem], family: Family) -> tuple[Candidate, ...]:
    """Return the problems that can be candidates, each once: those with an answer."""
    found = []
    for problem in dict.fromkeys(problems):
        try:
            seen = look(problem)
        except NoValue:
            continue
        if seen.families and (seen.shape.answer is not None or _compared(seen.shape)):
            found.append(_candidate(seen, family))
    return tuple(found)


def _compared(shape: Shape) -> bool:
    return shape.counts is Counts.COMPARED


def _candidate(seen: Look, family: Family) -> Candidate:
    """Return what a problem is for a family in focus."""
    effort, focus = seen.effort, seen.families.get(family)
    others = {one: it.tenths for one, it in seen.families.items() if one is not family}
    usual = [tenths for one, tenths in others.items() if one in _FIRST_RESORT]
    return Candidate(
        seen.problem,
        seen.shape,
        effort,
        focus.tenths if focus else None,
        min(usual or others.values(), default=effort),
        sum(it.tenths <= effort + RIVAL for it in seen.families.values()),
        focus.parts if focus else (),
    )


def pool_of(
    problems: Iterable[Problem], family: Family, shown: frozenset[LinkKind] = frozenset()
) -> Pool:
    """Return the pool of these problems; the focus shows in links `shown`, or as it mostly does."""
    index = _Index(candidates_of(problems, family), family, shown=shown)
    tied = _Tied((), [() for _ in index.candidates], [() for _ in index.candidates])
    for place in range(len(index.candidates)):
        for before, help_ in index.helped_by(place).items():
            tied.add(before, place, help_)
    return tied.pool(index)


def widened(narrow: Pool, problems: Iterable[Problem], family: Family) -> Pool:
    """Return the pool with problems more: the same as that of all together, only sooner."""
    new = candidates_of((one for one in problems if one not in narrow.places), family)
    index = _Index((*narrow.candidates, *new), family, narrow.steps)
    more: list[tuple[int, ...]] = [()] * len(new)
    tied = _Tied(narrow.helps, [*narrow.leads, *more], [*narrow.by, *more])
    first = len(narrow.candidates)
    for place in range(first, len(index.candidates)):
        for before, help_ in index.helped_by(place).items():
            tied.add(before, place, help_)
        for other in dict.fromkeys(index.near(place)):
            if other < first and place in (helped := index.helped_by(other)):
                tied.add(place, other, helped[place])
    return tied.pool(index)


class _Tied:
    """Which candidate helps with which, and how, as it is put together."""

    def __init__(
        self,
        helps: tuple[Help, ...],
        leads: list[tuple[int, ...]],
        by: list[tuple[int, ...]],
    ) -> None:
        self.known = {help_: number for number, help_ in enumerate(helps)}
        self.leads = leads
        self.by = by

    def add(self, before: int, place: int, help_: Help) -> None:
        """Note that one candidate helps with another."""
        self.leads[before] += (place,)
        self.by[before] += (self.known.setdefault(help_, len(self.known)),)

    def pool(self, index: "_Index") -> Pool:
        """Return the pool."""
        leads, by = tuple(self.leads), tuple(self.by)
        stands = _stands(index.candidates)
        return Pool(
            index.candidates, tuple(self.known), leads, by, index.steps, index.places, stands
        )


def _stands(candidates: Iterable[Candidate]) -> tuple[tuple[int, ...], ...]:
    """Return for each number of each candidate the same where it stands at the same place."""
    known: dict[tuple[str, int, Exact], int] = {}
    keys = (one.shape.key for one in candidates)
    return tuple(
        tuple(known.setdefault((key.form, *one), len(known)) for one in enumerate(key.numbers))
        for key in keys
    )


def _best(found: Iterator[tuple[int, Help]], own: frozenset[LinkKind]) -> dict[int, Help]:
    """Return one help for each problem that helps: what shows the focus, with the least left."""
    best: dict[int, Help] = {}
    for before, plain in found:
        help_ = plain._replace(own=True) if plain.kind in own else plain
        other = best.get(before)
        if other is not None:
            left = min(help_.left, other.left)
            shown = max(other, help_, key=lambda one: (one.own, -one.left))
            help_ = shown._replace(left=left)
        best[before] = help_
    return best


class _Index:
    """The candidates by their numbers, and by the fact that they are a side of."""

    def __init__(
        self,
        candidates: tuple[Candidate, ...],
        family: Family,
        steps: tuple[Exact, ...] = (),
        shown: frozenset[LinkKind] = frozenset(),
    ) -> None:
        self.candidates = candidates
        self.own = shown or _OWN.get(family, _INSIDE)
        self.steps = steps or steps_of(one.shape for one in candidates)
        self.places = {one.problem: place for place, one in enumerate(candidates)}
        self.at: dict[Key, list[int]] = defaultdict(list)
        self.trios: dict[tuple[object, ...], list[int]] = defaultdict(list)
        for place, one in enumerate(candidates):
            self.at[one.shape.key].append(place)
            if one.shape.trio is not None:
                self.trios[one.shape.trio].append(place)

    def helped_by(self, place: int) -> dict[int, Help]:
        """Return those that help with a candidate, each with its help."""
        one = self.candidates[place]
        own = self.own | {LinkKind.SAME_NUMBER} if _compared(one.shape) else self.own
        best = _best(self._befores(place), own)
        return {
            before: help_._replace(left=one.effort) if help_.left > one.effort else help_
            for before, help_ in best.items()
        }

    def near(self, place: int) -> Iterator[int]:
        """Yield the places of those that a candidate may help with."""
        one = self.candidates[place]
        for key, _ in (*changes(one.shape, self.steps), *_unchanged(one.shape)):
            yield from self.at.get(key, ())
        if one.shape.trio is not None:
            yield from self.trios[one.shape.trio]
        for other, whole in enumerate(self.candidates):
            if any(part.problem == one.problem for part in whole.parts):
                yield other

    def _befores(self, place: int) -> Iterator[tuple[int, Help]]:
        """Yield the places of those that help with a candidate, each with how; some twice."""
        one = self.candidates[place]
        for key, change in (*changes(one.shape, self.steps), *_unchanged(one.shape)):
            if (befores := self.at.get(key)) is not None:
                yield from self._helping(place, befores, change)
        if one.shape.trio is not None:
            for side in self.trios[one.shape.trio]:
                seen = self.candidates[side].shape
                if undoes(seen, one.shape):
                    asked_again = seen.answer == one.shape.answer
                    kind = LinkKind.SAME_TOTAL if asked_again else LinkKind.OPPOSITE
                    yield from self._helping(place, (side,), Change(kind, 0))
        for part in one.parts:
            before = self.places.get(part.problem)
            if before is not None:
                yield before, Help(LinkKind.INSIDE_A_WAY, 0, SEEN + part.left)

    def _helping(
        self, place: int, befores: Iterable[int], change: Change
    ) -> Iterator[tuple[int, Help]]:
        one = self.candidates[place]
        for before in befores:
            if before != place:
                left = left_of(self.candidates[before].shape, one.shape, change, one.effort)
                if left is not None:
                    yield before, Help(change.kind, change.size, left)


def _unchanged(shape: Shape) -> Iterator[tuple[Key, Change]]:
    """Yield the key itself: the same problem, its numbers written in another way."""
    if not _compared(shape):
        yield shape.key, Change(LinkKind.SAME_TOTAL, 0)
