"""Strings composed for an idea: each the best of what the ones before it left."""

from functools import cache

from waysaid.number import Problem
from waysaid.strings.compose import compose
from waysaid.strings.pool import problems_in
from waysaid.strings.starter import GRADES
from waysaid.strings.topic import Topic
from waysaid.strings.wish import Wish, WishError
from waysaid.strings.year.given import Given, Source, fits
from waysaid.strings.year.ideas import Idea
from waysaid.ways import grades_of

LIGHT = 3
"""How many problems a lighter talk has: the fewest that composing gives."""
USUAL = (4, 4, 5, 5, 5, 5, 5)
"""How many problems any other talk has, by the grade of its idea. Our choice."""


def composed(idea: Idea, light: bool, lately: frozenset[Problem]) -> Given | None:
    """Return the best string for an idea without problems used lately; None where there is none."""
    grade = wish_grade(idea)
    length = LIGHT if light else USUAL[idea.ccss.grade]
    wish = Wish(
        grade,
        idea.family,
        length,
        lately=lately,
        topic=Topic(idea.topic),
        outside=_outside(idea),
    )
    try:
        found = compose(wish)
    except WishError:
        return None
    return Given(found.problems, Source.COMPOSED, found.best_possible)


def wish_grade(idea: Idea) -> int:
    """Return the grade to compose in: numbers to ten are asked for in grade 1 by the engine."""
    return max(1, idea.ccss.grade)


@cache
def _outside(idea: Idea) -> frozenset[Problem]:
    """Return the candidates that are none of the idea's, or of no use in the year after."""
    later = min(GRADES[-1], idea.ccss.grade + 1)
    return frozenset(
        problem
        for problem in problems_in(wish_grade(idea), Topic(idea.topic))
        if not fits(problem, idea) or not grades_of(problem).holds(later)
    )
