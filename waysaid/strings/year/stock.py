"""The strings that a year draws on for an idea, in the order in which it draws them."""

from collections.abc import Sequence
from functools import cache

from waysaid.number import Problem
from waysaid.strings.year.composed import LIGHT, composed
from waysaid.strings.year.given import SHARED, Given
from waysaid.strings.year.ideas import Idea

MOST = 15
"""How many strings an idea has at the most. Our choice: more than a year asks for."""
FIRST = 9
"""How many are worked out at once: as many as most years ask for."""


def stocked(idea: Idea, number: int) -> Given | None:
    """Return a string of the idea by its number from 0; None where it has none of that number.

    Every third is a light one. Any two have at most `SHARED` problems in common.
    """
    if number >= MOST:
        return None
    mine = _composed(idea, 0 if number < FIRST else 1)
    return mine[number] if number < len(mine) else None


def is_light(number: int) -> bool:
    """Tell whether the string of that number is a light one: every third."""
    return number % 3 == 2


@cache
def _composed(idea: Idea, block: int) -> tuple[Given | None, ...]:
    """Compose the first strings of an idea at once, or all: its pool is then at hand."""
    found = list(_composed(idea, 0)) if block else []
    for number in range(len(found), MOST if block else FIRST):
        before = [one for one in found if one is not None]
        found.append(_next(idea, number, before))
    return tuple(found)


def _next(idea: Idea, number: int, before: Sequence[Given]) -> Given | None:
    """Compose with problems that are new to the idea; where there are too few, with some again."""
    seen = frozenset(problem for one in before for problem in one.problems)
    for again in (frozenset[Problem](), _again(idea, before)):
        made = composed(idea, number // 3 + number, is_light(number), seen - again)
        if made is not None and all(one.problems != made.problems for one in before):
            return made
    return None


def _again(idea: Idea, before: Sequence[Given]) -> frozenset[Problem]:
    """Return problems that may come again: of each string so far no more than may be shared."""
    most, again = SHARED[idea.ccss.grade], set[Problem]()
    for turn in range(most):
        for at, one in enumerate(before):
            problem = one.problems[(len(before) - at + turn) % len(one.problems)]
            more = again | {problem}
            if all(len(more.intersection(other.problems)) <= most for other in before):
                again = more
    return frozenset(again)


def cut(one: Given) -> Given:
    """Return the string without what asks most: its first problems alone."""
    if len(one.problems) == LIGHT:
        return one
    return Given(one.problems[:LIGHT], one.source, False, one.starter)
