"""What of a class is about to go, because its year is over; and letting it go."""

from dataclasses import dataclass
from datetime import date, datetime

from django.conf import settings
from django.utils import timezone

from waysaid.site.erasing import forget_children, forget_talks
from waysaid.site.keep_dates import end_of, goes_on, said_from
from waysaid.site.models import Child, SchoolClass, SchoolYear, Talk
from waysaid.site.people_models import Keeping


@dataclass(frozen=True, slots=True)
class Due:
    """What goes and when: the talks up to the end of a year, and names that no talk needs then."""

    on: date
    end: date
    talks: tuple[Talk, ...]
    children: tuple[Child, ...]
    said: bool


def keeping_of(school_class: SchoolClass) -> Keeping:
    """Return how long the class's talks and names are kept."""
    kept, _made = Keeping.objects.get_or_create(school_class=school_class)
    return kept


def days_of(kept: Keeping) -> int | None:
    """Return the days after the year's end, the school's most at most; None for no end."""
    most: int | None = settings.KEEP_DAYS
    if not kept.on:
        return most
    return kept.days if most is None else min(kept.days, most)


def due_in(school_class: SchoolClass, today: date) -> Due | None:
    """Return what is said to be about to go, or goes, by today; None where there is nothing."""
    kept = keeping_of(school_class)
    days = days_of(kept)
    if days is None:
        return None
    laid = SchoolYear.objects.filter(school_class=school_class).first()
    year = (laid.first, laid.last) if laid else None
    talks = list(school_class.talks.all())
    ends = {talk.pk: end_of(_day(talk.made_at), kept.ends, year) for talk in talks}
    begun = end_of(_day(school_class.made_at), kept.ends, year)
    over = [end for end in ends.values() or [begun] if said_from(end, days) <= today]
    if not over:
        return None
    going = tuple(talk for talk in talks if ends[talk.pk] <= max(over))
    on = goes_on(min(over), days, kept.said_on)
    goes_on_teaching = len(going) < len(talks) or (year is not None and year[1] >= on)
    children = (
        school_class.children.filter(active=False)
        if goes_on_teaching
        else (school_class.children.all())
    )
    if not going and not children:
        return None
    return Due(on, max(over), going, tuple(children), kept.said_on is not None)


def _day(moment: datetime) -> date:
    return timezone.localtime(moment).date()


def say(school_class: SchoolClass, today: date) -> Due | None:
    """Return what is about to go, to be shown; from now on it counts as said."""
    due = due_in(school_class, today)
    if due is not None and not due.said:
        Keeping.objects.filter(school_class=school_class).update(said_on=today)
        return due_in(school_class, today)
    return due


def let_go(today: date) -> int:
    """Delete what is due in every class, in the backups too; return how many talks went."""
    gone = 0
    for school_class in SchoolClass.objects.all():
        due = due_in(school_class, today)
        if due is None or today < due.on:
            continue
        gone += len(due.talks)
        forget_talks(list(due.talks), backups_too=True)
        forget_children(due.children, said_too=True, in_words=True)
        Keeping.objects.filter(school_class=school_class).update(said_on=None)
    return gone
