"""What the pages of a year show: months of school days, one day, what was heard lately."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby

from babel.dates import format_date

from waysaid.drawing import Scene
from waysaid.number import Language, Unreadable, parse, say
from waysaid.site.image_view import image_scene
from waysaid.site.models import SchoolYear, Talk, YearDay
from waysaid.site.record import at_hand
from waysaid.site.talk_rows import printed
from waysaid.site.year_days import LATELY, frame_of, was_missed, whys_of
from waysaid.site.year_laid import ideas_of
from waysaid.strings import Curriculum, Idea, idea_name


@dataclass(frozen=True, slots=True)
class DayShown:
    """A school day in the calendar; `missed` says that there is, or was, no talk on it."""

    date: date
    number: str
    short: str
    idea: str
    code: str
    locked: bool
    missed: bool
    past: bool
    today: bool
    talks: tuple[Talk, ...]

    @property
    def weekday(self) -> int:
        """The day of the week, from 1 for Monday."""
        return self.date.isoweekday()

    @property
    def movable(self) -> bool:
        """Whether its talk can be given to another day."""
        return not (self.past or self.locked or self.missed)


@dataclass(frozen=True, slots=True)
class Month:
    """A month with its school days, week by week."""

    id: str
    name: str
    short: str
    weeks: tuple[tuple[DayShown, ...], ...]


@dataclass(frozen=True, slots=True)
class ProblemShown:
    """A problem of a day's string, drawn if it is an image, and why it is there."""

    shown: str
    spoken: str
    why: str
    image: Scene | None


@dataclass(frozen=True, slots=True)
class Heard:
    """An idea talked about lately, and whether its family was heard then: None where unknown."""

    slug: str
    name: str
    heard: bool | None


@dataclass(frozen=True, slots=True)
class Known:
    """A year with all that its pages ask for: its days, its ideas, the talks of each day."""

    year: SchoolYear
    days: Sequence[YearDay]
    ideas: Mapping[str, Idea]
    talks: Mapping[date, list[Talk]]
    today: date
    language: Language

    def name(self, slug: str) -> str:
        """Return what an idea is called."""
        idea = self.ideas.get(slug)
        return idea_name(idea, self.language) if idea is not None else slug

    def code(self, slug: str) -> str:
        """Return the code of an idea's standard."""
        idea = self.ideas.get(slug)
        return idea.standard(Curriculum(self.year.curriculum)).code if idea is not None else ""


def known_of(
    year: SchoolYear, talks: Mapping[date, list[Talk]], today: date, language: Language
) -> Known:
    """Return a year with what its pages ask for."""
    return Known(year, list(year.days.all()), ideas_of(frame_of(year)), talks, today, language)


def months_of(known: Known) -> list[Month]:
    """Return the months in which there is school."""
    months = []
    shown = [day_shown(known, day) for day in known.days]
    for (at, month), days in groupby(shown, key=lambda one: (one.date.year, one.date.month)):
        weeks = groupby(days, key=lambda one: one.date.isocalendar().week)
        first = date(at, month, 1)
        months.append(
            Month(
                f"{first:%Y-%m}",
                _month(first, "LLLL y", known.language),
                _month(first, "LLL", known.language),
                tuple(tuple(week) for _, week in weeks),
            )
        )
    return months


def day_shown(known: Known, day: YearDay) -> DayShown:
    """Return a day as the calendar shows it."""
    return DayShown(
        date=day.date,
        number=str(day.date.day),
        short=format_date(day.date, "EEE", locale=known.language.value),
        idea=known.name(day.idea),
        code=known.code(day.idea),
        locked=day.locked,
        missed=was_missed(day, known.talks, known.today),
        past=day.date < known.today,
        today=day.date == known.today,
        talks=tuple(known.talks.get(day.date, ())),
    )


def weekdays(language: Language) -> list[str]:
    """Return the names of the weekdays from Monday to Friday."""
    monday = date(2024, 1, 1).toordinal()
    days = (date.fromordinal(monday + more) for more in range(5))
    return [format_date(day, "EEEE", locale=language.value) for day in days]


def problems_shown(day: YearDay, language: Language) -> list[ProblemShown]:
    """Return the problems of a day, each with its reason."""
    whys = whys_of(day, language)
    return [_problem(each, why, language) for each, why in zip(day.problems, whys, strict=True)]


def _problem(problem: str, why: str, language: Language) -> ProblemShown:
    try:
        spoken = say(parse(problem), language)
    except Unreadable:
        return ProblemShown(problem, problem, why, None)
    return ProblemShown(printed(problem), spoken, why, image_scene(problem, language))


def swappable(known: Known, day: YearDay) -> list[DayShown]:
    """Return the days that could change places with one, itself left out."""
    shown = (day_shown(known, one) for one in known.days if one.pk != day.pk)
    return [one for one in shown if one.movable]


def heard_lately(known: Known) -> list[Heard]:
    """Return the ideas of the last days with a talk, the newest first."""
    past = [day for day in known.days if day.date <= known.today and not day.settled]
    talked = [day for day in past if not was_missed(day, known.talks, known.today)]
    talked = [day for day in talked if day.date < known.today or day.date in known.talks]
    found: dict[str, list[bool]] = {}
    for day in reversed(talked[-LATELY:]):
        found.setdefault(day.idea, []).extend(_heard(known, day))
    return [
        Heard(slug, known.name(slug), any(heard) if heard else None)
        for slug, heard in found.items()
    ]


def _heard(known: Known, day: YearDay) -> list[bool]:
    """Return for each talk on the day's own string whether the idea's family was heard in it."""
    idea = known.ideas.get(day.idea)
    states = [at_hand(talk.pk).state for talk in known.talks.get(day.date, ())]
    return [
        any(way.family is idea.family for way in state.ways)
        for state in states
        if idea is not None and state.ways
        if any(each.text in day.problems for each in state.problems)
    ]


def next_day(known: Known) -> date | None:
    """Return the next day with a talk: today until one was held."""
    coming = (day for day in known.days if day.date >= known.today and not day.skipped)
    held = known.today in known.talks
    return next((day.date for day in coming if not (held and day.date == known.today)), None)


def comes_too_early(known: Known, day: YearDay) -> list[str]:
    """Return the names of ideas that a day's idea needs and that come only after it."""
    idea = known.ideas.get(day.idea)
    first: dict[str, date] = {}
    for one in known.days:
        if not one.skipped:
            first.setdefault(one.idea, one.date)
    needs = idea.needs if idea is not None else ()
    return [known.name(slug) for slug in needs if slug in first and first[slug] > day.date]


def _month(first: date, pattern: str, language: Language) -> str:
    said = format_date(first, pattern, locale=language.value)
    return said[:1].upper() + said[1:]
