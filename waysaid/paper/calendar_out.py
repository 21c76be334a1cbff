"""A year of talks as iCalendar (RFC 5545): a whole-day event for each talk."""

from datetime import UTC, datetime, timedelta

from icalendar import Calendar, Event

from waysaid.number import Language, Print, text
from waysaid.strings import Talk, Year, idea_name


def year_calendar(year: Year, language: Language) -> bytes:
    """Return the talks that have a date, each as an event; the same for the same year.

    The time stamp that the form asks for is the day itself: there is no clock here.
    """
    calendar = Calendar()
    calendar.add("prodid", "-//Waysaid//year of talks//EN")
    calendar.add("version", "2.0")
    for talk in year.talks:
        event = _event(year, talk, language)
        if event is not None:
            calendar.add_component(event)
    return bytes(calendar.to_ical())


def _event(year: Year, talk: Talk, language: Language) -> Event | None:
    day = talk.day.date
    if day is None:
        return None
    event = Event()
    event.add("uid", f"{year.curriculum}-{year.grade}-{year.seed}-{day.isoformat()}@waysaid")
    event.add("dtstamp", datetime(day.year, day.month, day.day, tzinfo=UTC))
    event.add("dtstart", day)
    event.add("dtend", day + timedelta(days=1))
    event.add("summary", idea_name(talk.idea, language))
    problems = "\n".join(text(problem, Print.TRUE) for problem in talk.given.problems)
    event.add("description", f"{problems}\n{talk.idea.standard(year.curriculum).code}")
    event.add("transp", "TRANSPARENT")
    return event
