"""A school's calendar read from iCalendar (RFC 5545): the first and last day, and the days off.

Whole-day events count; those with a time of day do not. An event named as the first day of school,
or the last, sets it; every other is time off, each time that it repeats. What the names may be is
our choice, in English and Spanish.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from enum import Enum
from itertools import islice

from dateutil.rrule import rrulestr
from icalendar import vDDDTypes
from icalendar.parser import Contentline

from waysaid.number import Language

LONGEST_BREAK = 366
"""More days than an event may last, and than a calendar may hold: our choice."""
LONGEST_RULE = 400
"""Characters of a rule by which an event repeats: our choice."""
_ANY = frozenset({"FREQ", "INTERVAL", "COUNT", "UNTIL", "WKST", "BYDAY"})
_MONTHLY = _ANY | {"BYMONTHDAY", "BYSETPOS"}
_RULED = {
    "DAILY": _ANY,
    "WEEKLY": _ANY,
    "MONTHLY": _MONTHLY,
    "YEARLY": _MONTHLY | {"BYMONTH", "BYYEARDAY", "BYWEEKNO"},
}
"""The parts of a rule (RFC 5545, 3.3.10) by how often: those that a school's days off need."""
_FIRST = re.compile(
    r"\bfirst day (of|back to) (the )?(school|class(es)?|term|year)|^\W*first day\W*$"
    r"|\bprimer día (de |del )?(la |las )?(clases?|escuela|colegio|curso)|^\W*primer día\W*$",
    re.IGNORECASE,
)
_LAST = re.compile(
    r"\blast day of (the )?(school|class(es)?|term|year)|^\W*last day\W*$"
    r"|\búltimo día (de |del )?(la |las )?(clases?|escuela|colegio|curso)|^\W*último día\W*$",
    re.IGNORECASE,
)


class Trouble(Enum):
    """What may be wrong with a calendar."""

    NO_TEXT = "no text"
    NO_LINE = "no line"
    NO_CALENDAR = "no calendar"
    NOT_CLOSED = "not closed"
    NO_DATE = "no date"
    NO_START = "no start"
    ENDS_BEFORE = "ends before"
    NO_RULE = "no rule"
    NO_FIRST = "no first"
    NO_LAST = "no last"
    TOO_LONG = "too long"


class CalendarError(ValueError):
    """Raised for a calendar that cannot be used; `line` counts from 1."""

    def __init__(self, trouble: Trouble, line: int = 1, shown: str = "") -> None:
        super().__init__(trouble, line, shown)
        self.trouble = trouble
        self.line = line
        self.shown = shown

    def sentence(self, language: Language) -> str:
        """Return one sentence: the line, what is wrong with it, and what would fit."""
        return _SAID[language][self.trouble].format(self.line, self.shown)

    def __str__(self) -> str:
        """Return the sentence in English."""
        return self.sentence(Language.EN)


@dataclass(frozen=True, slots=True)
class SchoolCalendar:
    """The first and the last day of school, and the days off between them."""

    first: date
    last: date
    off: frozenset[date]


@dataclass(slots=True)
class _Event:
    """An event as it is read; each value with the number of its line."""

    line: int
    values: dict[str, tuple[int, str]] = field(default_factory=dict)
    skipped: list[tuple[int, str]] = field(default_factory=list)


def read_calendar(
    content: bytes, first: date | None = None, last: date | None = None
) -> SchoolCalendar:
    """Return what a calendar says; a first or last day that is given goes before its own.

    Raises `CalendarError`, which names the line.
    """
    events = _events(_lines(content))
    off: set[date] = set()
    line = 1
    for event in events:
        line = event.line
        start, days = _when(event)
        if days == 0:
            continue
        name = event.values.get("SUMMARY", (0, ""))[1]
        if _FIRST.search(name):
            first = first or start
        elif _LAST.search(name):
            last = last or start + timedelta(days=days - 1)
        else:
            starts = _repeats(event, start)
            off |= {one + timedelta(days=more) for one in starts for more in range(days)}
    if first is None:
        raise CalendarError(Trouble.NO_FIRST, line)
    if last is None:
        raise CalendarError(Trouble.NO_LAST, line)
    if not 0 <= (last - first).days < LONGEST_BREAK:
        raise CalendarError(Trouble.TOO_LONG, line, f"{first} – {last}")
    return SchoolCalendar(first, last, frozenset(day for day in off if first <= day <= last))


def _lines(content: bytes) -> Iterator[tuple[int, str]]:
    """Yield the lines that are not empty, folded ones put together, each with its number."""
    held: tuple[int, str] | None = None
    for number, raw in enumerate(content.removeprefix(b"\xef\xbb\xbf").splitlines(), start=1):
        try:
            line = raw.decode()
        except UnicodeDecodeError:
            raise CalendarError(Trouble.NO_TEXT, number) from None
        if line[:1] in (" ", "\t") and held is not None:
            held = (held[0], held[1] + line[1:])
            continue
        if held is not None:
            yield held
        held = (number, line) if line.strip() else None
    if held is not None:
        yield held


def _events(lines: Iterator[tuple[int, str]]) -> list[_Event]:
    """Return the events of a calendar, what stands inside others left out."""
    events: list[_Event] = []
    opened: list[tuple[int, str]] = []
    for number, line in lines:
        name, value = _parts(number, line)
        if not opened and (name, value) != ("BEGIN", "VCALENDAR"):
            raise CalendarError(Trouble.NO_CALENDAR, number, _short(line))
        match name:
            case "BEGIN":
                opened.append((number, value))
                if value == "VEVENT":
                    events.append(_Event(number))
            case "END":
                begun = opened.pop()
                if begun[1] != value:
                    raise CalendarError(Trouble.NOT_CLOSED, begun[0], begun[1])
            case "EXDATE" if opened[-1][1] == "VEVENT":
                events[-1].skipped += [(number, one) for one in value.split(",")]
            case _ if opened[-1][1] == "VEVENT":
                events[-1].values.setdefault(name, (number, value))
    if opened:
        raise CalendarError(Trouble.NOT_CLOSED, *opened[-1])
    return events


def _parts(number: int, line: str) -> tuple[str, str]:
    try:
        name, _, value = Contentline(line).parts()
    except ValueError:
        raise CalendarError(Trouble.NO_LINE, number, _short(line)) from None
    return str(name).upper(), str(value).strip()


def _short(line: str) -> str:
    return line if len(line) <= 40 else f"{line[:39]}…"


def _when(event: _Event) -> tuple[date, int]:
    """Return the first day of an event and how many days it lasts: 0 where it has a time of day."""
    if "DTSTART" not in event.values:
        raise CalendarError(Trouble.NO_START, event.line)
    start = _date(*event.values["DTSTART"])
    if start is None:
        return date.min, 0
    if "DTEND" in event.values:
        end = _date(*event.values["DTEND"])
        days = (end - start).days if end is not None else 1
    else:
        days = _lasting(*event.values.get("DURATION", (0, "P1D")))
    if not 0 < days < LONGEST_BREAK:
        line = event.values.get("DTEND", event.values.get("DURATION", (event.line, "")))
        raise CalendarError(Trouble.ENDS_BEFORE, line[0], line[1])
    return start, days


def _date(line: int, value: str) -> date | None:
    """Return a date; None for one with a time of day."""
    try:
        found = vDDDTypes.from_ical(value)
    except (ValueError, OverflowError):
        found = None
    if isinstance(found, datetime):
        return None
    if isinstance(found, date):
        return found
    raise CalendarError(Trouble.NO_DATE, line, _short(value))


def _lasting(line: int, value: str) -> int:
    try:
        found = vDDDTypes.from_ical(value)
    except (ValueError, OverflowError):
        found = None
    if isinstance(found, timedelta):
        return found.days
    raise CalendarError(Trouble.NO_DATE, line, _short(value))


def _repeats(event: _Event, start: date) -> list[date]:
    """Return each first day of an event, over two years at most where it repeats.

    A rule by which it never comes is refused: looking for a next time would take long.
    """
    if "RRULE" not in event.values:
        return [start]
    line, rule = event.values["RRULE"]
    begin = datetime(start.year, start.month, start.day)
    try:
        plain, most = _bounded(rule, start)
        found: Iterator[datetime] = iter(rrulestr(plain, dtstart=begin))
        times = list(islice(found, most))
    except (ValueError, TypeError, OverflowError):
        times = []
    if not times:
        raise CalendarError(Trouble.NO_RULE, line, _short(rule))
    skipped = {_date(*one) for one in event.skipped}
    return [one.date() for one in times if one.date() not in skipped]


def _bounded(rule: str, start: date) -> tuple[str, int]:
    """Return a rule that comes to an end soon, and how many times it may come.

    Raises `ValueError` for one of hours or minutes, or that goes on by nothing: it would never end.
    """
    parts = dict(part.split("=", 1) for part in rule.upper().split(";"))
    known = _RULED.get(parts.get("FREQ", ""), frozenset[str]())
    if len(rule) > LONGEST_RULE or set(parts) - known:
        raise ValueError(rule)
    if not 1 <= int(parts.get("INTERVAL", "1")) <= LONGEST_BREAK:
        raise ValueError(rule)
    most = min(int(parts.pop("COUNT", str(2 * LONGEST_BREAK))), 2 * LONGEST_BREAK)
    end = start + timedelta(days=2 * LONGEST_BREAK)
    if "UNTIL" in parts:
        until = parts["UNTIL"][:8]
        end = min(end, date(int(until[:4]), int(until[4:6]), int(until[6:])))
    parts["UNTIL"] = f"{end:%Y%m%d}"
    return ";".join(f"{name}={value}" for name, value in parts.items()), max(most, 0)


_SAID: Mapping[Language, Mapping[Trouble, str]] = {
    Language.EN: {
        Trouble.NO_TEXT: "Line {0} of the calendar is no UTF-8 text: a file that a calendar "
        "program exports as iCalendar would fit.",
        Trouble.NO_LINE: "Line {0} of the calendar, ‘{1}’, has no name and value: a line such as "
        "SUMMARY:Winter break would fit.",
        Trouble.NO_CALENDAR: "Line {0} of the calendar is ‘{1}’: BEGIN:VCALENDAR would fit there.",
        Trouble.NOT_CLOSED: "What begins in line {0} of the calendar is not closed: END:{1} would "
        "fit after it.",
        Trouble.NO_DATE: "Line {0} of the calendar says ‘{1}’, which is no date: one such as "
        "20260901 would fit.",
        Trouble.NO_START: "The event of line {0} of the calendar has no start: a line such as "
        "DTSTART;VALUE=DATE:20260901 would fit in it.",
        Trouble.ENDS_BEFORE: "Line {0} of the calendar says ‘{1}’, which is not after its start, "
        "or more than a year: a later day within a year would fit.",
        Trouble.NO_RULE: "Line {0} of the calendar repeats by ‘{1}’, which is no rule: one such "
        "as FREQ=WEEKLY;BYDAY=FR would fit.",
        Trouble.NO_FIRST: "Up to line {0} the calendar has no first day of school: an event named "
        "‘First day of school’ would fit, or the day by itself.",
        Trouble.NO_LAST: "Up to line {0} the calendar has no last day of school: an event named "
        "‘Last day of school’ would fit, or the day by itself.",
        Trouble.TOO_LONG: "Up to line {0} the calendar runs {1}: a last day behind the first, "
        "within a year, would fit.",
    },
    Language.ES: {
        Trouble.NO_TEXT: "La línea {0} del calendario no es texto UTF-8: valdría un archivo que un "
        "programa de calendarios exporte como iCalendar.",
        Trouble.NO_LINE: "La línea {0} del calendario, ‘{1}’, no tiene nombre y valor: valdría una "
        "línea como SUMMARY:Vacaciones de invierno.",
        Trouble.NO_CALENDAR: "La línea {0} del calendario es ‘{1}’: ahí valdría BEGIN:VCALENDAR.",
        Trouble.NOT_CLOSED: "Lo que empieza en la línea {0} del calendario no se cierra: después "
        "valdría END:{1}.",
        Trouble.NO_DATE: "La línea {0} del calendario dice ‘{1}’, que no es una fecha: valdría una "
        "como 20260901.",
        Trouble.NO_START: "El evento de la línea {0} del calendario no tiene comienzo: valdría "
        "una línea como DTSTART;VALUE=DATE:20260901.",
        Trouble.ENDS_BEFORE: "La línea {0} del calendario dice ‘{1}’, que no es después del "
        "comienzo, o más de un año: valdría un día posterior dentro de un año.",
        Trouble.NO_RULE: "La línea {0} del calendario se repite por ‘{1}’, que no es una regla: "
        "valdría una como FREQ=WEEKLY;BYDAY=FR.",
        Trouble.NO_FIRST: "Hasta la línea {0} el calendario no tiene primer día de clases: valdría "
        "un evento llamado ‘Primer día de clases’, o el día por sí solo.",
        Trouble.NO_LAST: "Hasta la línea {0} el calendario no tiene último día de clases: valdría "
        "un evento llamado ‘Último día de clases’, o el día por sí solo.",
        Trouble.TOO_LONG: "Hasta la línea {0} el calendario va de {1}: valdría un último día "
        "después del primero, dentro de un año.",
    },
}
