"""A string for a talk with where it is from, and what fits an idea."""

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from waysaid.number import (
    Blank,
    Exact,
    Image,
    NoValue,
    Problem,
    answer_of,
    exact,
    sides,
    written,
)
from waysaid.strings.year.ideas import Curriculum, Idea
from waysaid.ways import grades_of

SHARED = (2, 1, 1, 1, 1, 1, 1)
"""At most so many problems may two talks of one idea have in common, by its grade. Our choice: to
ten there are too few problems for one."""


class Source(StrEnum):
    """Where a string is from."""

    COMPOSED = "composed"
    STARTER = "starter"
    """A starter that somebody chose for the day."""


@dataclass(frozen=True, slots=True)
class Given:
    """A string. `best` is whether it is proven the best of its candidates; `starter` its slug."""

    problems: tuple[Problem, ...]
    source: Source
    best: bool = False
    starter: str = ""


def fits(problem: Problem, idea: Idea) -> bool:
    """Tell whether a problem is in the range of an idea, so far as one alone can."""
    if largest(problem) > idea.top:
        return False
    numbers = _numbers(problem)
    return not idea.tables or any(one in idea.tables for one in numbers)


def in_grade(problems: Sequence[Problem], idea: Idea, grade: int, curriculum: Curriculum) -> bool:
    """Tell whether a string of an idea belongs to a grade.

    The idea does, in its first year or the one after, and each problem is in its range; with `ccss`
    the engine says the same: no problem is of a later grade, and one at least of this, though what
    leads to it may be easier. In kindergarten the idea's range is enough: K.OA.2 goes to 10 and
    K.NBT.1 to 20, and the engine's first sums go to 5.
    """
    if not 0 <= grade - idea.standard(curriculum).grade <= 1:
        return False
    if not all(fits(problem, idea) for problem in problems):
        return False
    if curriculum is not Curriculum.CCSS or grade == 0:
        return True
    grades = [grades_of(problem) for problem in problems]
    return all(one.first <= grade for one in grades) and any(one.holds(grade) for one in grades)


def largest(problem: Problem) -> Exact:
    """Return the largest number of a problem, its answer among them, without signs."""
    found = _numbers(problem)
    with suppress(NoValue):
        answer = answer_of(problem)
        found += [answer] if isinstance(answer, int | Fraction) else []
    return max(*found, -min(found))


def _numbers(problem: Problem) -> list[Exact]:
    if isinstance(problem, Image):
        return [problem.count]
    leaves = (leaf for side in sides(problem) for leaf in written(side))
    return [exact(leaf) for leaf in leaves if not isinstance(leaf, Blank)]
