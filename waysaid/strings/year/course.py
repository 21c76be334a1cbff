"""How far a year has come with one idea: when it was last, how long the gap was, what is left."""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.number import Problem
from waysaid.strings.year.composed import LIGHT
from waysaid.strings.year.given import Given, in_grade
from waysaid.strings.year.ideas import Curriculum, Idea
from waysaid.strings.year.stock import MOST, cut, is_light, stocked

FIRST_GAP = 2
"""An idea first returns two school days on. Our choice: the next day but one."""
GROWTH = 2
"""Each gap should be twice the one before; it is longer than it in any case. Our choice."""
LONGEST = 20
"""Behind a gap of so many school days, four weeks, the next may be shorter than it, but not than
this. Our choice: else what came early in a year would not be met at its end."""

Used = set[tuple[Problem, ...]]


@dataclass(slots=True)
class Course:
    """An idea in a year that is being laid out; days are counted from 0."""

    idea: Idea
    grade: int
    curriculum: Curriculum
    gap: int = FIRST_GAP - 1
    last: int | None = None
    times: int = 0
    light_from: int = 0
    usual_from: int = 0

    def may_return(self, day: int) -> bool:
        """Tell whether a day is late enough for the gap to have grown."""
        return self.last is not None and day - self.last >= min(LONGEST, self.gap + 1)

    def due(self, day: int) -> Fraction:
        """Return how far the wait has come to what it should be; 1 is just due."""
        if self.last is None:
            return Fraction(0)
        wait = GROWTH * min(LONGEST, self.gap)
        return Fraction(day - self.last, max(FIRST_GAP, wait))

    def met(self, day: int) -> None:
        """Note that the idea comes on a day."""
        if self.last is not None:
            self.gap = day - self.last
        self.last = day
        self.times += 1

    def next_string(self, light: bool, used: Used) -> Given | None:
        """Return the next string that the year has not had; None where no more is in stock.

        Without a light one left, a light talk is the beginning of a usual one.
        """
        if light:
            for number in range(self.light_from, MOST):
                if is_light(number) and (given := self._fresh(number, light, used)):
                    self.light_from = number + 1
                    return given
        for number in range(self.usual_from, MOST):
            if not is_light(number) and (given := self._fresh(number, light, used)):
                self.usual_from = number + 1
                return given
        return None

    def _fresh(self, number: int, light: bool, used: Used) -> Given | None:
        given = stocked(self.idea, number)
        if given is None or given.problems in used or given.problems[:LIGHT] in used:
            return None
        given = cut(given) if light else given
        suits = in_grade(given.problems, self.idea, self.grade, self.curriculum)
        return given if suits else None
