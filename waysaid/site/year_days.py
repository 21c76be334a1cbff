"""The days of a class's year as they are kept: laid out, swapped, locked, skipped, moved."""

from collections.abc import Mapping, Sequence
from dataclasses import asdict
from datetime import date
from typing import Any

from django.db import transaction
from django.utils import timezone

from waysaid.number import Language
from waysaid.site.models import Plan, SchoolClass, SchoolYear, Talk, YearDay
from waysaid.site.planning import problems_of
from waysaid.site.planning import row_of as plan_row
from waysaid.site.year_laid import Became, Frame, Proposal, Row, ideas_of, year_of
from waysaid.strings import Curriculum, Year, idea_name, year_told

Kept = dict[str, Any]


LATELY = 10
"""School days: what was missed longer ago is not made up by itself, and what was heard is not asked
about. Two weeks, as long as a missed talk has to come again; our choice."""


class FixedDayError(ValueError):
    """Raised for a day that stays as it is: it is past, or locked."""

    def __init__(self, day: date, *, locked: bool) -> None:
        super().__init__(day, locked)
        self.day = day
        self.locked = locked


def frame_of(year: SchoolYear) -> Frame:
    """Return what a year was laid out for."""
    return Frame(year.grade, Curriculum(year.curriculum), year.seed)


def keep_laid(
    school_class: SchoolClass, frame: Frame, given: tuple[date, date, frozenset[date]], rows: Any
) -> SchoolYear:
    """Keep the rows as the class's year; one that it had goes."""
    first, last, off = given
    with transaction.atomic():
        SchoolYear.objects.filter(school_class=school_class).delete()
        year = SchoolYear.objects.create(
            school_class=school_class,
            grade=frame.grade,
            curriculum=frame.curriculum.value,
            seed=frame.seed,
            first=first,
            last=last,
            off=sorted(day.isoformat() for day in off),
        )
        YearDay.objects.bulk_create(
            YearDay(year=year, date=row.date, idea=row.idea, problems=list(row.problems))
            for row in rows
        )
    return year


def rows_of_year(days: Sequence[YearDay]) -> tuple[Row, ...]:
    """Return the days that planning goes by: those that it left behind are not among them."""
    return tuple(Row(day.date, day.idea, tuple(day.problems)) for day in days if not day.settled)


def whole_year(year: SchoolYear) -> Year:
    """Return the year as the strings know it, days without a talk left out."""
    days = [day for day in year.days.all() if not day.skipped]
    return year_of(frame_of(year), rows_of_year(days))


def talks_by_day(school_class: SchoolClass) -> Mapping[date, list[Talk]]:
    """Return the talks of a class by the day on which each began."""
    found: dict[date, list[Talk]] = {}
    for talk in school_class.talks.order_by("made_at", "pk"):
        found.setdefault(timezone.localtime(talk.made_at).date(), []).append(talk)
    return found


def was_missed(day: YearDay, talks: Mapping[date, list[Talk]], today: date) -> bool:
    """Tell whether there is, or was, no talk on a day."""
    return day.skipped or (day.date < today and not day.held and day.date not in talks)


def became_of(
    days: Sequence[YearDay],
    talks: Mapping[date, list[Talk]],
    today: date,
    told: tuple[frozenset[str], frozenset[str]] = (frozenset(), frozenset()),
) -> Became:
    """Return what became of the days; `told` are ideas not heard yet, and those that all have.

    A day on which a talk was already held is past. One longer ago than `LATELY` counts as held
    unless somebody said that there was no talk: most likely there was one without these pages.
    """
    past = [day.date for day in days if day.date < today or (day.date == today and today in talks)]
    coming = [day.date for day in days if day.date not in past]
    long_ago = past[:-LATELY]
    missed = (day for day in days if was_missed(day, talks, today))
    return Became(
        today=min(coming, default=date.max),
        missed=frozenset(day.date for day in missed if day.skipped or day.date not in long_ago),
        locked=frozenset(day.date for day in days if day.locked),
        not_yet=told[0],
        all_have=told[1],
    )


def swap(year: SchoolYear, one: date, other: date, today: date) -> tuple[YearDay, YearDay]:
    """Give each of two days the other's talk. Raises `FixedDayError`, or `YearDay.DoesNotExist`."""
    with transaction.atomic():
        first, second = (year.days.select_for_update().get(date=each) for each in (one, other))
        for day in (first, second):
            if day.locked or day.date < today:
                raise FixedDayError(day.date, locked=day.locked)
        theirs = (second.idea, second.problems, second.plan)
        second.idea, second.problems, second.plan = first.idea, first.problems, first.plan
        first.idea, first.problems, first.plan = theirs
        for day in (first, second):
            day.save(update_fields=["idea", "problems", "plan"])
            plan_comes_along(day)
    return first, second


def plan_comes_along(day: YearDay) -> None:
    """Say in a day's plan, if it has one, which day that is."""
    if day.plan is not None:
        day.plan.made_for = day.date
        day.plan.save(update_fields=["made_for"])


def plan_of_day(day: YearDay) -> Plan:
    """Return the plan made of a day's string: the one that there is, else a new one, kept."""
    if day.plan is not None:
        return day.plan
    school_class = day.year.school_class
    language = Language(school_class.desk_language)
    idea = ideas_of(frame_of(day.year)).get(day.idea)
    why = whys_of(day, language)
    day.plan = Plan.objects.create(
        school_class=school_class,
        title=(idea_name(idea, language) if idea is not None else day.idea)[:120],
        problems=[
            plan_row(problem, reason)
            for problem, reason in zip(problems_of(_texts(day)), why, strict=False)
        ],
        made_for=day.date,
    )
    day.save(update_fields=["plan"])
    return day.plan


def _texts(day: YearDay) -> list[Kept]:
    return [{"text": each} for each in day.problems]


def whys_of(day: YearDay, language: Language) -> list[str]:
    """Return a reason for each problem of a day."""
    told: Any = year_told(year_of(frame_of(day.year), rows_of_year([day])))
    talks = told["talks"]
    return list(talks[0]["why"][language.value]) if talks else [""] * len(day.problems)


def proposal_kept(proposal: Proposal, became: Became) -> Kept:
    """Return a proposal as it is kept with its year."""
    return {
        "moves": [
            {"before": _kept(each.before), "after": _kept(each.after), "says": dict(each.says)}
            for each in proposal.moves
        ],
        "without": list(proposal.without),
        "possible": proposal.possible,
        "missed": sorted(day.isoformat() for day in became.missed),
    }


def _kept(row: Row) -> Kept:
    return {**asdict(row), "date": row.date.isoformat(), "problems": list(row.problems)}


def take_proposal(year: SchoolYear) -> bool:
    """Move the talks as proposed; False, and nothing moved, where the days are others by now."""
    kept = year.proposal or {}
    with transaction.atomic():
        days = {day.date.isoformat(): day for day in year.days.select_for_update()}
        moves = kept.get("moves", [])
        plans = {tuple(day.problems): day.plan for day in days.values()}
        for move in moves:
            day = days.get(move["before"]["date"])
            if day is None or day.locked or day.problems != move["before"]["problems"]:
                return False
        for move in moves:
            day = days[move["before"]["date"]]
            day.idea, day.problems = move["after"]["idea"], move["after"]["problems"]
            day.plan = plans.get(tuple(day.problems))
            day.save(update_fields=["idea", "problems", "plan"])
            plan_comes_along(day)
        missed = [date.fromisoformat(each) for each in kept.get("missed", [])]
        year.days.filter(date__in=missed).update(settled=True, skipped=True)
        year.proposal = None
        year.save(update_fields=["proposal"])
    return True
