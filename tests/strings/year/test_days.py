"""School days: between first and last, on the weekdays of school, without days off."""

from datetime import date, timedelta
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from waysaid.strings import numbered_days, school_days

DATES = st.dates(date(2025, 1, 1), date(2027, 12, 31))


@given(DATES, st.integers(-3, 300), st.sets(DATES, max_size=20), st.sets(st.integers(0, 6)))
def test_a_day_is_a_school_day_just_when_it_should_be(first, length, off, weekdays):
    last = first + timedelta(days=length)
    days = school_days(first, last, off, weekdays)
    wanted = [first + timedelta(days=passed) for passed in range(length + 1)]
    wanted = [day for day in wanted if day.weekday() in weekdays and day not in off]
    assert [day.date for day in days] == wanted
    assert [day.number for day in days] == list(range(1, len(wanted) + 1))
    for day, after in pairwise(days):
        same = day.date.isocalendar()[:2] == after.date.isocalendar()[:2]
        assert day.ends_week != same


def test_thursday_ends_the_week_before_a_friday_off():
    days = school_days(date(2026, 9, 7), date(2026, 9, 15), {date(2026, 9, 11)})
    assert [day.date.day for day in days if day.ends_week] == [10, 15]


def test_without_dates_there_are_180_days_in_weeks_of_five():
    days = numbered_days()
    assert len(days) == 180
    assert sum(day.ends_week for day in days) == 36
    assert {day.date for day in days} == {None}
