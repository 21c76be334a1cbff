"""When a year ends, and the day on which what is kept of it goes."""

from datetime import date, timedelta

USUAL_DAYS = 60
"""Days after the year's end (promised)."""
USUAL_END = "07-31"
"""The year's end where nothing says otherwise (our choice: the end of July)."""
NOTICE_DAYS = 30
"""How long before it goes it is first said (our choice)."""
SEEN_DAYS = 7
"""Days between its being seen and its going (our choice: a school week)."""
LATEST_DAYS = 30
"""Days after which it goes though nobody looked (our choice): what families were told counts."""


def end_of(day: date, ends: str, year: tuple[date, date] | None = None) -> date:
    """Return the end of the school year that a day is in.

    It is the end of the year laid out, as first and last day, where the day is in it; else the
    next `ends` (month and day, MM-DD) on or after it.
    """
    if year is not None and year[0] <= day <= year[1]:
        return year[1]
    this = _in(day.year, ends)
    return this if day <= this else _in(day.year + 1, ends)


def _in(year: int, ends: str) -> date:
    month, day = (int(each) for each in ends.split("-"))
    # 29 February counts as the 28th where there is none.
    return date(year, month, min(day, 28)) if month == 2 else date(year, month, day)


def said_from(end: date, days: int) -> date:
    """Return the first day on which it is said that what is kept of the year is about to go."""
    return max(end + timedelta(1), end + timedelta(days - NOTICE_DAYS))


def goes_on(end: date, days: int, said_on: date | None) -> date:
    """Return the day on which it goes: never before it was seen a week, unless nobody looks."""
    due = end + timedelta(max(days, 1))
    if said_on is None:
        return due + timedelta(LATEST_DAYS)
    return max(due, min(said_on + timedelta(SEEN_DAYS), due + timedelta(LATEST_DAYS)))


def is_end(text: str) -> bool:
    """Tell whether a text is a month and a day, MM-DD."""
    try:
        date.fromisoformat(f"2028-{text}")
    except ValueError:
        return False
    return len(text) == 5
