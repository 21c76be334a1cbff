"""Files that were damaged on the way, or by somebody who means harm: seeded, of every kind."""

import io
import json
import random
import zipfile
from datetime import date

from tests.paper.test_calendar import ENDS, calendar, event
from tests.paper.test_talk_file import WHOLE
from tests.site.rosters import enrolled, people, school_file, table, undated
from waysaid.growth import How, Shown
from waysaid.paper import evidence_csv
from waysaid.ways import Family

FORMULAS = (
    '=HYPERLINK("http://example.org";"x")',
    "+cmd|' /C calc'!A0",
    "-2+3",
    "@SUM(1+1)",
    "\t=1",
)
HUGE = 150_000
"""Characters of a field that is larger than any table's."""

ROSTER = (
    "Last Name,First Name,Preferred Name,Born\r\n"
    "Adler,Wren,,2018-01-02\r\nPaz,José,Pepe,2018-03-04\r\nSen,Ravi,,2018-05-06\r\n"
).encode()
CALENDAR = calendar(
    *ENDS,
    event("Break", date(2026, 12, 21), date(2027, 1, 4)),
    event("Friday", date(2026, 9, 4), more=("RRULE:FREQ=WEEKLY;BYDAY=FR;COUNT=5",)),
)
TALK = json.dumps(WHOLE, indent=1).encode()
SHOWN = tuple(
    Shown("7", date(2026, 9, 14), order, "Noor", How.SAID, "-3 + 5", Family.BRIDGE)
    for order in range(4)
)
TABLE = evidence_csv(SHOWN)
NESTED = school_file(users=school_file())


def cut(content, chance):
    """The file up to somewhere in it."""
    return content[: chance.randrange(len(content))]


def flipped(content, chance):
    """Some of its bytes are others."""
    damaged = bytearray(content)
    for _ in range(chance.randrange(1, 12)):
        damaged[chance.randrange(len(damaged))] = chance.randrange(256)
    return bytes(damaged)


def stuffed(content, chance):
    """Bytes that no text has stand somewhere in it."""
    at = chance.randrange(len(content))
    return content[:at] + chance.choice((b"\0", b"\x1b[2J", b"\xff\xfe", b"\xc3")) + content[at:]


def repeated(content, chance):
    """A part of it is there twice."""
    at, long = chance.randrange(len(content)), chance.randrange(1, len(content))
    return content[: at + long] + content[at:]


def other_signs(content, chance):
    """It is written in another set of signs, with a mark or without."""
    text = content.decode("utf-8", "replace")
    names = ("utf-16", "utf-16-le", "utf-16-be", "utf-32", "utf-7", "cp037", "mac-roman")
    return text.encode(chance.choice(names), "replace")


def harmful(content, chance):
    """A field is a formula to a spreadsheet."""
    fields = content.split(b",")
    fields[chance.randrange(len(fields))] = chance.choice(FORMULAS).encode()
    return b",".join(fields)


def huge(content, chance):
    """A field is larger than any."""
    fields = content.split(b",")
    fields[chance.randrange(len(fields))] = b"x" * HUGE
    return b",".join(fields)


def other_columns(content, chance):
    """A line has more or fewer fields, or the first line is gone."""
    lines = content.splitlines(keepends=True)
    at = chance.randrange(len(lines))
    lines[at] = chance.choice((b"", b"," * 40 + lines[at], lines[at].replace(b",", b";")))
    return b"".join(lines)


def open_quote(content, chance):
    """A quote is opened and never closed."""
    at = chance.randrange(len(content))
    return content[:at] + b'"' + content[at:]


def another_kind(content, chance):
    """It is a file of quite another kind."""
    return chance.choice(
        (b"", b"PK\x03\x04" + content, b"\x89PNG\r\n\x1a\n\0", NESTED, b"{}", b"[1")
    )


TEXTS = (cut, flipped, stuffed, repeated, other_signs, harmful, huge, other_columns, open_quote)


def text_file(whole, chance):
    """A file of text, damaged in one or two ways."""
    damaged = chance.choice((*TEXTS, another_kind))(whole, chance)
    return chance.choice(TEXTS)(damaged, chance) if damaged and chance.random() < 0.3 else damaged


STRANGE = (None, True, -1, 10**30, "x" * 5_000, [], {}, [[]], {"a": 1}, "\ud800", "a\0b", 1.5)


def talk_file(chance):
    """A talk file with strange values, or damaged as a text."""
    if chance.random() < 0.4:
        return text_file(TALK, chance)
    given = json.loads(TALK)
    inside = [given, given["board"], *given["events"], *given["problems"], *given["children"]]
    place = chance.choice(inside)
    key = chance.choice(list(place))
    match chance.randrange(5):
        case 0:
            del place[key]
        case 1:
            place[f"{key}-more"] = place[key]
        case 2:
            place[key] = _deep(chance.randrange(1, 5_000))
        case _:
            place[key] = chance.choice(STRANGE)
    return json.dumps(given).encode()


def _deep(levels):
    made = "x"
    for _ in range(min(levels, 900)):
        made = [made]
    return made


def one_roster(chance):
    """A school's file: cut, with damaged tables, a bomb, a lock, paths that lead elsewhere."""
    name = chance.choice(("users", "classes", "enrollments"))
    match chance.randrange(8):
        case 0:
            return cut(school_file(), chance)
        case 1:
            return flipped(school_file(), chance)
        case 2:
            return school_file(**{name: b"sourcedId,title\r\n" + b"0,0\r\n" * 600_000})
        case 3:
            return school_file(folder="../../", **{name: None})
        case 4:
            return school_file(**{name: school_file()})
        case 5:
            return _twice(name)
        case 6:
            return school_file(**{name: chance.choice((b"", b"a,b\r\n1,2", b"\xff\xfe\0"))})
    tables = {"users": people("1.2"), "enrollments": enrolled()}
    rows = tables.get(name) or [{"sourcedId": "k1", "title": "2B"}]
    return school_file(**{name: chance.choice(TEXTS)(table(rows), chance)})


def _twice(name):
    written = io.BytesIO(school_file())
    with zipfile.ZipFile(written, "a") as parts:
        parts.writestr(undated(f"x/{name}.csv"), b"")
    return written.getvalue()


RULES = (
    "FREQ=SECONDLY",
    "FREQ=DAILY;INTERVAL=0",
    "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
    "FREQ=DAILY;BYHOUR=1",
    "FREQ",
    "COUNT=3",
    "FREQ=WEEKLY;UNTIL=nothing",
    "FREQ=WEEKLY;BYDAY=" + "MO," * 400,
)


def calendar_file(chance):
    """A calendar that repeats without end, or damaged as a text."""
    if chance.random() < 0.4:
        return CALENDAR.replace(b"FREQ=WEEKLY;BYDAY=FR;COUNT=5", chance.choice(RULES).encode())
    return text_file(CALENDAR, chance)


def several(make, many, seed=7):
    """So many files that a maker makes, the same ones in every run."""
    chance = random.Random(seed)
    return [make(chance) for _ in range(many)]
