"""Strings composed for an idea: each the best of what the ones before it left.

They are composed as any wish is, but from fewer candidates: the idea's own, or those of its topic
in its range, thinned to `ENOUGH`, so that the years of all grades are laid out in a minute. Where
an idea has beginnings of its own, each is composed around one of them.
"""

from collections.abc import Collection, Iterable, Sequence
from functools import cache, lru_cache
from random import Random

from waysaid.number import Blank, Exact, Problem, exact, sides, written
from waysaid.strings.best import Asked, best_string
from waysaid.strings.bounds import Frame
from waysaid.strings.link import LinkKind
from waysaid.strings.pool import Pool, plain_in, pool_of
from waysaid.strings.starter import GRADES
from waysaid.strings.topic import Topic
from waysaid.strings.wanting import EASY
from waysaid.strings.year.given import Given, Source, fits, largest
from waysaid.strings.year.ideas import Idea
from waysaid.strings.year.numbers import BEGUN, OWN
from waysaid.ways import grades_of

LIGHT = 3
"""How many problems a lighter talk has: the fewest that composing gives."""
USUAL = (4, 4, 5, 5, 5, 5, 5)
"""How many problems any other talk has, by the grade of its idea. Our choice."""
ENOUGH = 700
"""How many candidates a string is chosen from at the most. Our choice."""
_SHOWN = {
    "start-with-the-bigger": frozenset({LinkKind.TURNED_AROUND}),
    "what-is-left-over": frozenset({LinkKind.ONE_CHANGES}),
    "groups-with-some-left": frozenset({LinkKind.ONE_CHANGES}),
}
"""The links in which an idea shows, where they are not those of its family. Our choice."""
_FIRST_DIGITS = ("123", "456", "789")
"""With what the first number begins, in turn: so an idea's talks have not all the same numbers."""


def composed(idea: Idea, turn: int, light: bool, lately: frozenset[Problem]) -> Given | None:
    """Return the best string for an idea without problems used lately; None where there is none.

    Which of the idea's sets of candidates it is chosen from is up to the `turn`.
    """
    few = len(candidates(idea)) <= ENOUGH
    found = _pool(idea, 0 if few else turn % len(_FIRST_DIGITS))
    kept, apart = _begun(idea, found, lately)
    length = LIGHT if light else USUAL[idea.ccss.grade]
    frame = Frame(length, EASY[_grade(idea)], kept=kept, outside=apart)
    barred = _places(found, lately)
    best = best_string(found, Asked(frame, barred), seed=1)
    problems = tuple(found.candidates[place].problem for place in best.places)
    return Given(problems, Source.COMPOSED, best.proven) if problems else None


def _begun(
    idea: Idea, pool: Pool, lately: frozenset[Problem]
) -> tuple[tuple[tuple[int, int], ...], frozenset[int]]:
    """Return what a string begins with that was not used lately, and what only others do."""
    every = BEGUN.get(idea.slug, ())
    begun = next((one for one in every if lately.isdisjoint(one)), ())
    others = {problem for one in every for problem in one}.difference(begun)
    kept = tuple((at, place) for at, one in enumerate(begun) for place in _places(pool, {one}))
    return kept, _places(pool, others)


def _places(pool: Pool, problems: Collection[Problem]) -> frozenset[int]:
    """Return the places of some problems among the candidates."""
    return frozenset(at for at, one in enumerate(pool.candidates) if one.problem in problems)


@lru_cache(maxsize=4)
def _pool(idea: Idea, turn: int) -> Pool:
    """Return one of the pools of an idea."""
    shown = _SHOWN.get(idea.slug, frozenset())
    return pool_of(_thinned(candidates(idea), idea, turn), idea.family, shown)


@cache
def candidates(idea: Idea) -> tuple[Problem, ...]:
    """Return every candidate of an idea: in its range, and of no later grade.

    Those of a topic are of use in the year after it too.
    """
    if idea.slug in OWN:
        own = (problem for problem in dict.fromkeys(OWN[idea.slug]()) if fits(problem, idea))
        return tuple(problem for problem in own if grades_of(problem).first <= _grade(idea))
    later = min(GRADES[-1], idea.ccss.grade + 1)
    return tuple(
        problem
        for problem in plain_in(_grade(idea), Topic(idea.topic))
        if idea.over < largest(problem) and fits(problem, idea) and grades_of(problem).holds(later)
    )


def _grade(idea: Idea) -> int:
    """Return the grade to compose in: numbers to ten are asked for in grade 1 by the engine."""
    return max(1, idea.ccss.grade)


def _thinned(problems: Sequence[Problem], idea: Idea, turn: int) -> Sequence[Problem]:
    """Return few enough of the problems; numbers below ten always stay.

    The first number begins with a digit of the turn, the others with one of some digits that are
    up to the name of the idea. So what a problem helps with mostly stays beside it.
    """
    if len(problems) <= ENOUGH:
        return problems
    kept = [one for one in problems if _begins(_numbers(one)[:1], _FIRST_DIGITS[turn])]
    digits = Random(idea.slug).sample("123456789", 9)
    for many in range(9, 1, -1):
        fewer = [one for one in kept if _begins(_numbers(one)[1:], digits[:many])]
        if len(fewer) <= ENOUGH:
            return fewer
    return fewer


def _begins(numbers: Iterable[Exact], digits: Collection[str]) -> bool:
    return all(number < 10 or str(number)[0] in digits for number in numbers)


@cache
def _numbers(problem: Problem) -> tuple[Exact, ...]:
    leaves = (leaf for side in sides(problem) for leaf in written(side))
    return tuple(exact(leaf) for leaf in leaves if not isinstance(leaf, Blank))
