"""Seven days and four weeks: whatever days there are, and day after day."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.backup_days import DAILY, WEEKLY, to_keep

days = st.lists(st.dates(date(2025, 1, 1), date(2027, 12, 31)), max_size=60)


@given(days)
def test_what_stays_was_there_is_no_more_than_promised_and_has_the_newest(there):
    stay = to_keep(there)
    assert stay <= set(there)
    assert len(stay) <= DAILY + WEEKLY
    assert set(sorted(set(there))[-DAILY:]) <= stay
    assert to_keep(stay) == stay


@given(days)
def test_the_older_ones_are_of_different_weeks_and_the_newest_of_their_week(there):
    stay = sorted(to_keep(there), reverse=True)
    older = stay[DAILY:]
    weeks = [day.isocalendar()[:2] for day in older]
    assert len(set(weeks)) == len(weeks)
    for day in older:
        assert not any(
            day < other and other.isocalendar()[:2] == day.isocalendar()[:2] and other not in stay
            for other in there
        )


@given(st.dates(date(2025, 1, 1), date(2026, 12, 31)), st.integers(50, 90))
def test_run_every_day_there_are_seven_days_and_four_weeks_back_to_a_month(first, many):
    there: frozenset[date] = frozenset()
    for day in range(many):
        there = to_keep([*there, first + timedelta(day)])
    today = first + timedelta(many - 1)
    assert len(there) == DAILY + WEEKLY
    assert {today - timedelta(back) for back in range(DAILY)} <= there
    assert timedelta(3 * 7) <= today - min(there) <= timedelta(42)


@given(st.sets(st.dates(date(2026, 1, 1), date(2026, 6, 30)), min_size=1, max_size=60))
def test_days_on_which_nobody_opened_it_take_nothing_away_from_the_others(opened):
    there: frozenset[date] = frozenset()
    for day in sorted(opened):
        there = to_keep([*there, day])
    assert len(there) >= min(len(opened), DAILY)
    assert there == to_keep(there)
