"""Days off as teachers type them."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.days_off import DaysOffError, days_off

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
