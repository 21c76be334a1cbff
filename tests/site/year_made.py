"""A class's year of six weeks, three of them past, and the buttons of its pages."""

import time
from datetime import timedelta

import pytest
from django.utils import timezone

from waysaid.site.year_days import keep_laid
from waysaid.site.year_laid import Frame, laid
from waysaid.site.year_work import WORKS
from waysaid.strings import Curriculum

KINDER = Frame(0, Curriculum.CCSS)


def waited(class_id):
    """Wait until the work of a class is done."""
    for _ in range(1200):
        if not WORKS.busy(class_id):
            return
        time.sleep(0.05)
    raise AssertionError("the work never ended")


@pytest.fixture(scope="module")
def rows():
    """Return six weeks of a kindergarten's year, three of them past."""
    today = timezone.localdate()
    monday = today - timedelta(days=today.weekday() + 21)
    days = (monday, monday + timedelta(days=39), frozenset())
    return days, laid(KINDER, *days)


@pytest.fixture
def year(cast, rows):
    return keep_laid(cast.school_class, KINDER, *rows)


def coming(year):
    """Return the days that are still to come, today left out."""
    return list(year.days.filter(date__gt=timezone.localdate()))


def texts(year):
    return {day.date: day.problems for day in year.days.all()}


def press(cast, day, what):
    return cast.owner.post(f"/year/day/{day.date}", {"do": what})


def exchange(cast, one, other):
    return cast.owner.post("/year/swap", {"one": str(one.date), "other": str(other.date)})


def proposed(cast, **ideas):
    cast.owner.post("/year/again", {"do": "work", **ideas})
    waited(cast.school_class.pk)
    return cast.owner.get("/year/again").text
