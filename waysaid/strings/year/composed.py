"""Strings composed for an idea: each the best of what the ones before it left.

They are composed as any wish is, but from fewer candidates: those in the idea's range, thinned to
`ENOUGH`, so that the years of all grades are laid out in a minute.
"""

from collections.abc import Collection
from functools import lru_cache
from random import Random

from waysaid.number import Blank, Problem, exact, sides, written
from waysaid.strings.best import Asked, best_string
from waysaid.strings.bounds import Frame
from waysaid.strings.pool import Pool, pool_of, problems_in
from waysaid.strings.starter import GRADES
from waysaid.strings.topic import Topic
from waysaid.strings.wanting import EASY
from waysaid.strings.year.given import Given, Source, fits, largest
from waysaid.strings.year.ideas import Idea
from waysaid.ways import grades_of

LIGHT = 3
"""How many problems a lighter talk has: the fewest that composing gives."""
USUAL = (4, 4, 5, 5, 5, 5, 5)
"""How many problems any other talk has, by the grade of its idea. Our choice."""
ENOUGH = 600
"""How many candidates an idea has at the most. Our choice."""


def composed(idea: Idea, light: bool, lately: frozenset[Problem]) -> Given | None:
    """Return the best string for an idea without problems used lately; None where there is none."""
    found = _pool(idea)
    barred = frozenset(at for at, one in enumerate(found.candidates) if one.problem in lately)
    frame = Frame(LIGHT if light else USUAL[idea.ccss.grade], EASY[_grade(idea)])
    best = best_string(found, Asked(frame, barred), seed=1)
    problems = tuple(found.candidates[place].problem for place in best.places)
    return Given(problems, Source.COMPOSED, best.proven) if problems else None


@lru_cache(maxsize=4)
def _pool(idea: Idea) -> Pool:
    """Return the pool of an idea: of use in the year after it too."""
    later = min(GRADES[-1], idea.ccss.grade + 1)
    problems = [
        problem
        for problem in problems_in(_grade(idea), Topic(idea.topic))
        if idea.over < largest(problem) and fits(problem, idea) and grades_of(problem).holds(later)
    ]
    return pool_of(_thinned(problems, idea), idea.family)


def _grade(idea: Idea) -> int:
    """Return the grade to compose in: numbers to ten are asked for in grade 1 by the engine."""
    return max(1, idea.ccss.grade)


def _thinned(problems: list[Problem], idea: Idea) -> list[Problem]:
    """Return few enough of the problems: those whose numbers begin with some of the digits.

    Which digits is up to the name of the idea; numbers below ten always stay. So what a problem
    helps with mostly stays beside it.
    """
    digits = Random(idea.slug).sample("123456789", 9)
    for many in range(9, 1, -1):
        kept = [one for one in problems if _begins(one, digits[:many])]
        if len(kept) <= ENOUGH:
            return kept
    return kept


def _begins(problem: Problem, digits: Collection[str]) -> bool:
    leaves = (leaf for side in sides(problem) for leaf in written(side))
    numbers = [exact(leaf) for leaf in leaves if not isinstance(leaf, Blank)]
    return all(number < 10 or str(number)[0] in digits for number in numbers)
