"""A year's end, and the day on which what is kept of it goes: whatever the dates."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.keep_dates import (
    LATEST_DAYS,
    SEEN_DAYS,
    USUAL_DAYS,
    USUAL_END,
    end_of,
    goes_on,
    is_end,
    said_from,
)

days = st.dates(date(2024, 1, 1), date(2031, 12, 31))
ends = st.dates(date(2028, 1, 1), date(2028, 12, 31)).map(lambda day: f"{day:%m-%d}")


@given(days, ends)
def test_a_year_ends_on_or_after_each_of_its_days_and_within_a_year(day, end):
    found = end_of(day, end)
    assert day <= found <= day + timedelta(366)
    assert end_of(found, end) == found
    assert end_of(found + timedelta(1), end) > found


@given(days, ends, st.integers(1, 360))
def test_a_year_that_is_laid_out_says_itself_when_it_ends(first, end, long):
    last = first + timedelta(long)
    assert end_of(first, end, (first, last)) == end_of(last, end, (first, last)) == last
    after = last + timedelta(1)
    assert end_of(after, end, (first, last)) == end_of(after, end)


@given(days, st.integers(0, 400), st.integers(-20, 400))
def test_it_goes_after_the_days_promised_a_week_after_it_was_said_and_not_much_later(
    end, many, later
):
    said = said_from(end, many) + timedelta(max(later, 0))
    on = goes_on(end, many, said)
    assert end + timedelta(many) <= on
    assert end < on <= end + timedelta(max(many, 1) + LATEST_DAYS)
    late = end + timedelta(max(many, 1) + LATEST_DAYS - SEEN_DAYS)
    assert on >= min(said, late) + timedelta(SEEN_DAYS)
    assert said_from(end, many) <= on
    assert goes_on(end, many, None) == end + timedelta(max(many, 1) + LATEST_DAYS)


def test_sixty_days_after_the_end_of_july():
    end = end_of(date(2026, 11, 27), USUAL_END)
    assert end == date(2027, 7, 31)
    assert goes_on(end, USUAL_DAYS, end + timedelta(31)) == date(2027, 9, 29)


@pytest.mark.parametrize("text", ["", "7-31", "02-30", "13-01", "31-07", "0731", "07-31-", "٠٧-٣١"])
def test_what_is_no_month_and_day_is_no_end(text):
    assert not is_end(text)


@given(ends)
def test_every_month_and_day_is_an_end(end):
    assert is_end(end)
