"""Days off as a teacher types them: a day a line, or the first and the last of some."""

import re
from collections.abc import Iterable
from datetime import date, timedelta

_DAY = r"\d{4}-\d{2}-\d{2}"
_LINE = re.compile(rf"({_DAY})(?:\s*(?:to|a|al|-|–|,|\s)\s*({_DAY}))?", re.IGNORECASE)
LONGEST = 366
"""Days in one stretch: no school year has more."""


class DaysOffError(ValueError):
    """Raised for a line that is no day; `line` counts from 1."""

    def __init__(self, line: int, shown: str) -> None:
        super().__init__(line, shown)
        self.line = line
        self.shown = shown


def days_off(typed: str) -> frozenset[date]:
    """Return the days: `2026-12-24`, or `2026-12-24 to 2027-01-03`. Raises `DaysOffError`."""
    found: set[date] = set()
    for number, line in enumerate(typed.splitlines(), start=1):
        said = line.strip()
        if said:
            found |= _stretch(number, said)
    return frozenset(found)


def typed_days(days: Iterable[date]) -> str:
    """Return days as they would be typed: what follows each other, weekends apart, in one line."""
    stretches: list[tuple[date, date]] = []
    for day in sorted(days):
        if stretches and _next_weekday(stretches[-1][1]) >= day:
            stretches[-1] = (stretches[-1][0], day)
        else:
            stretches.append((day, day))
    lines = (f"{one} – {last}" if last > one else str(one) for one, last in stretches)
    return "\n".join(lines)


def _next_weekday(day: date) -> date:
    return day + timedelta(days=max(1, 7 - day.weekday()) if day.weekday() >= 4 else 1)


def _stretch(number: int, said: str) -> set[date]:
    read = _LINE.fullmatch(said)
    if read is None:
        raise DaysOffError(number, said)
    try:
        first = date.fromisoformat(read[1])
        last = date.fromisoformat(read[2] or read[1])
    except ValueError:
        raise DaysOffError(number, said) from None
    if not 0 <= (last - first).days < LONGEST:
        raise DaysOffError(number, said)
    return {first + timedelta(days=more) for more in range((last - first).days + 1)}
