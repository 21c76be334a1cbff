"""A class's year as plain rows, laid out and planned again: no web, no database, no clock.

It runs in a process of its own, so rows are made of texts and numbers alone.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from waysaid.number import Language, Unreadable, parse, text
from waysaid.strings import (
    Curriculum,
    Given,
    Happened,
    Idea,
    SchoolDay,
    Source,
    Talk,
    Year,
    YearError,
    ideas_asked,
    lay_out_year,
    move_says,
    re_plan,
    school_days,
    starters,
)

EVERY_DAY = frozenset(range(7))


@dataclass(frozen=True, slots=True)
class Frame:
    """What a year is laid out for: a grade (0 is kindergarten), a curriculum, a seed."""

    grade: int
    curriculum: Curriculum
    seed: int = 1


@dataclass(frozen=True, slots=True)
class Row:
    """A day's talk: the slug of its idea, its problems as `waysaid.number` writes them."""

    date: date
    idea: str
    problems: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Became:
    """What became of a year: the first day to come, days without a talk, locked days, ideas."""

    today: date
    missed: frozenset[date] = frozenset()
    locked: frozenset[date] = frozenset()
    not_yet: frozenset[str] = frozenset()
    all_have: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Moved:
    """A day with another talk than before, and the sentence that says so, by language."""

    before: Row
    after: Row
    says: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Proposal:
    """A year planned again: what would move, ideas that cannot come again, whether it could be."""

    moves: tuple[Moved, ...] = ()
    without: tuple[str, ...] = ()
    possible: bool = True


@dataclass(frozen=True, slots=True)
class TooManyDays:
    """The talks do not last for the days."""


def laid(
    frame: Frame, first: date, last: date, off: frozenset[date]
) -> tuple[Row, ...] | TooManyDays:
    """Return the rows of a year on the weekdays from the first to the last that are not off."""
    try:
        days = school_days(first, last, off)
        year = lay_out_year(frame.grade, days, frame.curriculum, frame.seed)
    except YearError:
        return TooManyDays()
    return tuple(row for talk in year.talks if (row := row_of(talk)) is not None)


def planned_again(frame: Frame, rows: tuple[Row, ...], became: Became) -> Proposal:
    """Return what would move in a year from what became of it."""
    year = year_of(frame, rows)
    numbers = {talk.day.date: talk.day.number for talk in year.talks}
    coming = [number for day, number in numbers.items() if day and day >= became.today]
    planned = re_plan(
        year,
        Happened(
            today=min(coming, default=len(rows) + 1),
            missed=frozenset(numbers[day] for day in became.missed if day in numbers),
            not_yet=became.not_yet,
            all_have=became.all_have,
            locked=frozenset(numbers[day] for day in became.locked if day in numbers),
        ),
    )
    moves = []
    for move in planned.moves:
        before, after = row_of(move.before), row_of(move.after)
        if before is not None and after is not None:
            says = {each.value: move_says(move, each) for each in Language}
            moves.append(Moved(before, after, says))
    return Proposal(tuple(moves), tuple(one.slug for one in planned.without), planned.fewest)


def row_of(talk: Talk) -> Row | None:
    """Return a talk as a row; None for one without a date."""
    if talk.day.date is None:
        return None
    return Row(talk.day.date, talk.idea.slug, tuple(map(text, talk.given.problems)))


def year_of(frame: Frame, rows: Iterable[Row]) -> Year:
    """Return the year that rows are of.

    A row of an idea that its grade has not, or with a problem that cannot be read, is left out.
    """
    known = ideas_of(frame)
    read = [(row, given) for row in rows if row.idea in known and (given := _given(row))]
    read.sort(key=lambda each: each[0].date)
    times: dict[str, int] = {}
    talks = []
    for day, (row, given) in zip(_days([row.date for row, _ in read]), read, strict=True):
        times[row.idea] = times.get(row.idea, 0) + 1
        talks.append(Talk(day, known[row.idea], given, times[row.idea]))
    return Year(frame.grade, frame.curriculum, frame.seed, tuple(talks))


def ideas_of(frame: Frame) -> Mapping[str, Idea]:
    """Return the ideas of a grade and of the one before it, by slug."""
    grades = (frame.grade - 1, frame.grade)
    return {one.slug: one for grade in grades for one in ideas_asked(grade, frame.curriculum)}


def _given(row: Row) -> Given | None:
    try:
        problems = tuple(map(parse, row.problems))
    except Unreadable:
        return None
    for one in starters():
        if one.problems[: len(problems)] == problems:
            return Given(problems, Source.STARTER, starter=one.slug)
    return Given(problems, Source.COMPOSED)


def _days(dates: Sequence[date]) -> tuple[SchoolDay, ...]:
    if not dates:
        return ()
    there, first, last = frozenset(dates), dates[0], dates[-1]
    every = (first + timedelta(days=more) for more in range((last - first).days + 1))
    return school_days(first, last, frozenset(every) - there, EVERY_DAY)
