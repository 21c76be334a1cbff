"""A year laid out: which idea comes on which day, and with which string.

What an idea needs comes before it. It returns after gaps of which each is longer than the one
before, twice as long where the days allow: that practice spread out is kept better is common
knowledge, how the gaps grow is our choice. The first two weeks hold easy things, so that a class
learns how to talk; the last day of a week has a short string of an idea that it knows.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from random import Random

from waysaid.strings.year.composed import LIGHT
from waysaid.strings.year.course import LONGEST, Course, Used
from waysaid.strings.year.days import SchoolDay
from waysaid.strings.year.given import Given
from waysaid.strings.year.ideas import Curriculum, Idea, Topic
from waysaid.strings.year.table import ideas_asked

NORMS = 10
"""So many school days at first are for learning how to talk: two weeks, our choice."""
EASY_IDEAS = 5
"""So many ideas carry them."""
REVIEWED, BEGUN = Fraction(2, 5), Fraction(3, 4)
"""How far into the year the last idea of the year before, and the last new one, come. Our choice:
what begins later could not return."""
LATE = 2
"""An idea that is so many times as late as it should be comes before a new one."""
NEAR = 4
"""The next idea is one of so many that could come next: the seed says which."""
REVIEW_GAP = 8
"""An idea of the year before returns as if it had last been away for so long, apart from the easy
ones; one that all have, as if for `LONGEST`. Our choice."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """What is known of a class before its year, by the slugs of ideas."""

    not_yet: frozenset[str] = frozenset()
    all_have: frozenset[str] = frozenset()


NOTHING_KNOWN = Evidence()


@dataclass(frozen=True, slots=True)
class Talk:
    """A talk of a year: its day, its idea, its string; `time` counts the idea's talks from 1."""

    day: SchoolDay
    idea: Idea
    given: Given
    time: int

    @property
    def light(self) -> bool:
        """Whether it is a lighter talk, for the end of a week."""
        return len(self.given.problems) == LIGHT


@dataclass(frozen=True, slots=True)
class Year:
    """A year of talks, one for each school day."""

    grade: int
    curriculum: Curriculum
    seed: int
    talks: tuple[Talk, ...]


class YearError(ValueError):
    """Raised where the talks do not last for the days: says how many there are."""


def lay_out_year(
    grade: int,
    days: Sequence[SchoolDay],
    curriculum: Curriculum = Curriculum.CCSS,
    seed: int = 1,
    evidence: Evidence = NOTHING_KNOWN,
) -> Year:
    """Return a year for a grade (0 is kindergarten). Raises `YearError` for too many days."""
    begins = _beginnings(grade, len(days), curriculum, Random(seed), evidence)
    laying = _Laying(begins, evidence, grade, curriculum)
    talks = tuple(laying.talk(at, day) for at, day in enumerate(days))
    return Year(grade, curriculum, seed, talks)


def _beginnings(
    grade: int, days: int, curriculum: Curriculum, dice: Random, evidence: Evidence
) -> list[tuple[int, Idea]]:
    """Return the ideas of a year in the order in which they begin, each with its first day."""
    new = _shuffled(ideas_asked(grade, curriculum), dice)
    old = [one for one in ideas_asked(grade - 1, curriculum) if one.topic is not Topic.IMAGES]
    old.sort(key=lambda one: one.slug not in evidence.not_yet)
    easy = [one for one in new if one.topic is Topic.IMAGES and not one.needs]
    easy += [one for one in new if one.topic is Topic.IMAGES and one not in easy]
    easy = (easy + old)[:EASY_IDEAS]
    spread = _spread(old, easy, days, REVIEWED) + _spread(new, easy, days, BEGUN)
    order = [(0, one) for one in easy] + sorted(spread, key=lambda each: each[0])
    return _needs_first(order)


def _shuffled(ideas: Sequence[Idea], dice: Random) -> list[Idea]:
    """Return the ideas in an order that the dice choose, each behind what it needs of them."""
    left, order = list(ideas), list[Idea]()
    while left:
        waiting = {one.slug for one in left}
        ready = [one for one in left if not waiting.intersection(one.needs)]
        chosen = dice.choice(ready[:NEAR])
        left.remove(chosen)
        order.append(chosen)
    return order


def _spread(
    ideas: Sequence[Idea], easy: Sequence[Idea], days: int, until: Fraction
) -> list[tuple[int, Idea]]:
    rest = [one for one in ideas if one not in easy]
    room = max(0, int(days * until) - NORMS)
    return [(NORMS + at * room // len(rest), one) for at, one in enumerate(rest)]


def _needs_first(order: list[tuple[int, Idea]]) -> list[tuple[int, Idea]]:
    """Return the same beginnings, where one that another needs is moved in front of it."""
    begins = {one.slug: (day, one) for day, one in order}
    done: dict[str, tuple[int, Idea]] = {}

    def begin(slug: str, at: int) -> None:
        if slug in begins and slug not in done:
            day, one = begins[slug]
            for need in one.needs:
                begin(need, day)
            done[slug] = (min(day, at), one)

    for day, one in order:
        begin(one.slug, day)
    return list(done.values())


class _Laying:
    """The days of a year as they are laid out, one after the other."""

    def __init__(
        self,
        begins: list[tuple[int, Idea]],
        evidence: Evidence,
        grade: int,
        curriculum: Curriculum,
    ) -> None:
        self.waiting = [(day, Course(one, grade, curriculum)) for day, one in begins]
        self.begun: list[Course] = []
        self.used: Used = set()
        for day, course in self.waiting:
            if course.idea.slug in evidence.all_have:
                course.gap = LONGEST
            elif day and course.idea.standard(curriculum).grade < grade:
                course.gap = REVIEW_GAP

    def talk(self, at: int, day: SchoolDay) -> Talk:
        """Return the talk of a day, the first of the courses that should come and has a string."""
        for course in self._wanted(at, day):
            given = course.next_string(day.ends_week, self.used)
            if given is not None:
                self.used.add(given.problems)
                self._note(course, at)
                return Talk(day, course.idea, given, course.times)
        raise YearError(f"The talks last for {at} school days: so many, or fewer, would fit.")

    def _note(self, course: Course, at: int) -> None:
        if course.last is None:
            self.waiting = [one for one in self.waiting if one[1] is not course]
            self.begun.append(course)
        course.met(at)

    def _wanted(self, at: int, day: SchoolDay) -> list[Course]:
        """Return the courses for a day, the most wanted first."""
        back = [course for course in self.begun if course.may_return(at)]
        back.sort(key=lambda course: course.due(at), reverse=True)
        late = [course for course in back if course.due(at) >= LATE]
        due = [course for course in back if course.due(at) >= 1]
        waiting = {course.idea.slug for _, course in self.waiting}
        ready = [one for one in self.waiting if not waiting.intersection(one[1].idea.needs)]
        new = [course for first, course in ready[:1] if first <= at]
        early = [course for _, course in ready]
        rest = sorted(self.begun, key=lambda course: -(at - (course.last or 0)))
        if day.ends_week:
            return [*back, *early, *rest]
        if at < NORMS:
            return [*new, *back, *rest, *early]
        return [*late, *new, *due, *early, *back, *rest]
