"""A school's calendar in, and a year of talks out; a bad one names the line and what would fit."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar

from waysaid.number import Language
from waysaid.paper import CalendarError, Trouble, read_calendar, year_calendar
from waysaid.strings import idea_name, lay_out_year, numbered_days, school_days

FIRST, LAST = date(2026, 8, 31), date(2027, 6, 11)


def event(name, start, end=None, more=()):
    """Return an event of whole days; `end` is the day after its last."""
    rows = ["BEGIN:VEVENT", f"SUMMARY:{name}", f"DTSTART;VALUE=DATE:{start:%Y%m%d}"]
    rows += [f"DTEND;VALUE=DATE:{end:%Y%m%d}"] if end else []
    return [*rows, *more, "END:VEVENT"]


def calendar(*events):
    """Return a calendar as a program exports it."""
    rows = ["BEGIN:VCALENDAR", "VERSION:2.0", *(row for one in events for row in one)]
    return "\r\n".join([*rows, "END:VCALENDAR", ""]).encode()


ENDS = (event("First day of school", FIRST), event("Last day of school", LAST))
DAYS = st.dates(FIRST - timedelta(days=20), LAST + timedelta(days=20))


@given(st.lists(st.tuples(DAYS, st.integers(1, 20)), max_size=6))
def test_each_day_of_each_event_is_off(breaks):
    events = [event("Break", day, day + timedelta(days=many)) for day, many in breaks]
    read = read_calendar(calendar(*events, *ENDS))
    off = {day + timedelta(days=more) for day, many in breaks for more in range(many)}
    assert (read.first, read.last) == (FIRST, LAST)
    assert read.off == {day for day in off if FIRST <= day <= LAST}


def test_spanish_names_and_an_event_that_lasts_a_day_when_it_says_no_end():
    read = read_calendar(
        calendar(
            event("Primer día de clases", FIRST),
            event("Último día de clases", LAST),
            event("Fiesta", date(2026, 10, 12)),
        )
    )
    assert read == read_calendar(calendar(*ENDS, event("Holiday", date(2026, 10, 12))))
    assert read.off == {date(2026, 10, 12)}


def test_the_first_day_of_a_break_is_not_that_of_school():
    fall = event("First day of spring break", date(2027, 3, 15))
    assert date(2027, 3, 15) in read_calendar(calendar(*ENDS, fall)).off


def test_an_event_repeats_apart_from_the_days_it_leaves_out():
    rule = ["RRULE:FREQ=WEEKLY;BYDAY=WE;UNTIL=20261001T000000Z", "EXDATE;VALUE=DATE:20260916"]
    read = read_calendar(calendar(*ENDS, event("Meeting", date(2026, 9, 2), more=rule)))
    assert read.off == {date(2026, 9, day) for day in (2, 9, 23, 30)}


def test_what_has_a_time_of_day_is_no_day_off_and_folded_lines_are_one():
    rows = ["BEGIN:VEVENT", "SUMMARY:Even", " ing concert", "DTSTART:20261012T180000Z"]
    assert read_calendar(calendar(*ENDS, [*rows, "END:VEVENT"])).off == frozenset()
    ends = (event("First day of\r\n  school", FIRST), ENDS[1])
    assert read_calendar(calendar(*ends)).first == FIRST


def test_days_that_are_given_go_before_those_of_the_calendar():
    read = read_calendar(calendar(*ENDS), first=date(2026, 9, 7))
    assert (read.first, read.last) == (date(2026, 9, 7), LAST)
    assert read_calendar(calendar(), FIRST, LAST).first == FIRST


@pytest.mark.parametrize(
    ("content", "trouble", "line"),
    [
        (b"hello", Trouble.NO_LINE, 1),
        (b"SUMMARY:hello", Trouble.NO_CALENDAR, 1),
        (b"BEGIN:VCALENDAR\n\nno colon\n", Trouble.NO_LINE, 3),
        (b"BEGIN:VCALENDAR\nSUMMARY:\xff\n", Trouble.NO_TEXT, 2),
        (b"BEGIN:VCALENDAR\nBEGIN:VEVENT\nEND:VCALENDAR\n", Trouble.NOT_CLOSED, 2),
        (b"BEGIN:VCALENDAR\nVERSION:2.0\n", Trouble.NOT_CLOSED, 1),
        (b"BEGIN:VCALENDAR\nEND:VCALENDAR\nBEGIN:VEVENT\n", Trouble.NO_CALENDAR, 3),
        (calendar(["BEGIN:VEVENT", "DTSTART:20261301", "END:VEVENT"]), Trouble.NO_DATE, 4),
        (calendar(["BEGIN:VEVENT", "SUMMARY:Break", "END:VEVENT"]), Trouble.NO_START, 3),
        (calendar(event("Break", FIRST, FIRST)), Trouble.ENDS_BEFORE, 6),
        (calendar(event("Break", FIRST, more=["DURATION:long"])), Trouble.NO_DATE, 6),
        (calendar(event("Break", FIRST, more=["RRULE:FREQ=OFTEN"])), Trouble.NO_RULE, 6),
        (calendar(ENDS[1]), Trouble.NO_FIRST, 3),
        (calendar(ENDS[0]), Trouble.NO_LAST, 3),
        (calendar(), Trouble.NO_FIRST, 1),
        (calendar(event("First day", LAST), event("Last day", FIRST)), Trouble.TOO_LONG, 7),
    ],
)
def test_a_bad_calendar_is_one_sentence_that_names_the_line(content, trouble, line):
    with pytest.raises(CalendarError) as raised:
        read_calendar(content)
    assert (raised.value.trouble, raised.value.line) == (trouble, line)
    for language, word in ((Language.EN, "fit"), (Language.ES, "valdría")):
        said = raised.value.sentence(language)
        assert f" {line}" in said
        assert word in said
        assert said.count(". ") == 0


@given(st.binary(max_size=200) | st.text(max_size=200).map(str.encode))
def test_whatever_a_file_holds_it_is_read_or_refused(content):
    for body in (
        content,
        b"BEGIN:VCALENDAR\n" + content,
        b"BEGIN:VCALENDAR\nBEGIN:VEVENT\n" + content,
    ):
        with pytest.raises(CalendarError):
            read_calendar(body)


def test_a_year_out_has_an_event_for_each_talk_and_comes_back_as_its_days():
    days = school_days(date(2026, 9, 1), date(2026, 10, 30), {date(2026, 9, 7)})
    year = lay_out_year(0, days)
    written = year_calendar(year, Language.EN)
    events = Calendar.from_ical(written).walk("VEVENT")
    assert [one.decoded("dtstart") for one in events] == [day.date for day in days]
    assert len({str(one["uid"]) for one in events}) == len(days)
    assert events[0].decoded("summary") == idea_name(year.talks[0].idea, Language.EN)
    assert year_calendar(year, Language.EN) == written
    read = read_calendar(written, days[0].date, days[-1].date)
    assert read.off == {day.date for day in days}


def test_talks_without_dates_are_in_no_calendar():
    year = lay_out_year(0, numbered_days(10))
    assert Calendar.from_ical(year_calendar(year, Language.ES)).walk("VEVENT") == []


@pytest.mark.parametrize(
    "rule",
    [
        "FREQ=DAILY;INTERVAL=0",
        "FREQ=SECONDLY",
        "FREQ=DAILY;BYHOUR=1",
        "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=WEEKLY;UNTIL=20250101",
        "FREQ=WEEKLY;INTERVAL=10000",
        "COUNT=3",
        "FREQ",
        "FREQ=WEEKLY;BYDAY=" + "MO," * 200 + "MO",
    ],
)
def test_a_rule_that_never_ends_or_never_comes_is_refused_at_once(rule):
    with pytest.raises(CalendarError) as refused:
        read_calendar(calendar(*ENDS, event("Off", date(2026, 9, 4), more=(f"RRULE:{rule}",))))
    assert refused.value.trouble is Trouble.NO_RULE


def test_a_rule_without_an_end_goes_on_for_the_year_and_one_with_a_count_stops():
    def off(rule):
        day = event("Off", date(2026, 9, 4), more=(f"RRULE:{rule}",))
        return read_calendar(calendar(*ENDS, day)).off

    fridays = off("FREQ=WEEKLY")
    assert all(day.weekday() == 4 for day in fridays)
    assert max(fridays) == LAST
    assert len(off("FREQ=WEEKLY;COUNT=3")) == len(off("FREQ=WEEKLY;UNTIL=20260918")) == 3
    assert len(off("FREQ=MONTHLY;BYDAY=-1FR")) == 9
