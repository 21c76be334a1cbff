"""Days off as teachers type them."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.days_off import DaysOffError, days_off, typed_days

DATES = st.dates(date(2020, 1, 1), date(2040, 1, 1))


@pytest.mark.parametrize("between", [" to ", " – ", " - ", ", ", " a ", " "])
def test_a_stretch_of_days_is_read_however_it_is_written(between):
    assert days_off(f"2026-12-31{between}2027-01-02") == {
        date(2026, 12, 31),
        date(2027, 1, 1),
        date(2027, 1, 2),
    }


def test_a_day_by_itself_and_empty_lines():
    assert days_off("\n 2026-11-26 \r\n\n2026-11-27") == {date(2026, 11, 26), date(2026, 11, 27)}


@pytest.mark.parametrize(
    "bad",
    ["soon", "2026-13-01", "2026-12-24 to", "2027-01-02 to 2026-12-31", "2020-01-01 2040-01-01"],
)
def test_what_is_no_day_is_named_with_its_line(bad):
    with pytest.raises(DaysOffError) as caught:
        days_off(f"2026-11-26\n{bad}")
    assert (caught.value.line, caught.value.shown) == (2, bad)


@given(DATES, st.integers(0, 365))
def test_a_stretch_has_all_its_days(first, more):
    last = first + timedelta(days=more)
    found = days_off(f"{first} to {last}")
    assert (min(found), max(found), len(found)) == (first, last, more + 1)


@given(st.sets(DATES, max_size=12))
def test_days_are_written_as_they_are_read_apart_from_weekends(days):
    found = days_off(typed_days(days))
    assert days <= found
    assert all(day.weekday() >= 5 for day in found - days)


def test_a_break_is_one_line():
    days = days_off("2026-12-21 to 2026-12-25\n2026-12-28 to 2027-01-01\n2026-11-26")
    assert typed_days(days) == "2026-11-26\n2026-12-21 – 2027-01-01"
