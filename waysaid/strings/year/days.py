"""The school days of a year: plain dates in, numbered days out."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise

WEEKDAYS = frozenset(range(5))
"""Monday to Friday, as `date.weekday` counts them."""
USUAL_DAYS, USUAL_WEEK = 180, 5
"""A year without a calendar: as many school days as most states of the US ask for, no source."""
MOST_DAYS = 366


@dataclass(frozen=True, slots=True)
class SchoolDay:
    """A day of school: its number from 1, its date where there is a calendar, the end of a week."""

    number: int
    date: date | None
    ends_week: bool


def school_days(
    first: date,
    last: date,
    off: Collection[date] = (),
    weekdays: Collection[int] = WEEKDAYS,
) -> tuple[SchoolDay, ...]:
    """Return the school days from the first to the last, both of them included where they are any.

    A day that is the last before a weekend, or before days off that reach one, ends its week.
    Nothing is returned where the last comes before the first; more than a year is cut to one.
    """
    return days_on(
        day for day in _dates(first, last) if day.weekday() in weekdays and day not in off
    )


def days_on(dates: Collection[date] | Iterator[date]) -> tuple[SchoolDay, ...]:
    """Return the school days of these dates, in order."""
    kept = sorted(set(dates))
    ends = [_week(one) != _week(after) for one, after in pairwise(kept)]
    rows = zip(kept, [*ends, True], strict=True) if kept else ()
    return tuple(SchoolDay(number, day, end) for number, (day, end) in enumerate(rows, start=1))


def numbered_days(count: int = USUAL_DAYS, week: int = USUAL_WEEK) -> tuple[SchoolDay, ...]:
    """Return so many school days without dates, in weeks of so many days."""
    return tuple(
        SchoolDay(number, None, number % week == 0 or number == count)
        for number in range(1, count + 1)
    )


def _dates(first: date, last: date) -> Iterator[date]:
    for passed in range(min(MOST_DAYS, (last - first).days + 1)):
        yield first + timedelta(days=passed)


def _week(day: date) -> tuple[int, int]:
    year, week, _ = day.isocalendar()
    return year, week
