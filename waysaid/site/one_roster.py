"""A school's OneRoster file (1EdTech, versions 1.1 and 1.2): a zip of tables in CSV.

Three of its tables are read, row by row, and of each row only the columns named here: classes,
enrollments and users. The field names are the standard's, from memory. Nothing is unpacked.
"""

import csv
import io
import struct
import zipfile
import zlib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import IO

from waysaid.site.names import clean

LARGEST_ZIP = 5_000_000
"""Bytes of the zip: some 50,000 rows, and what one request may have (our choice, as all below)."""
LARGEST_TABLE = 100_000_000
MOST_PARTS = 200
SQUEEZED = 200
"""How many times smaller a table may be in the zip: text is some ten times smaller."""
MOST_CLASSES = 5_000
_GONE = ("tobedeleted", "inactive")
_LINE = 1_000_000
_BROKEN = (zipfile.BadZipFile, EOFError, OSError, struct.error, zlib.error)
"""What the standard library says of a broken zip; also a `ValueError` or a `RuntimeError`."""


class OneRosterError(ValueError):
    """Raised for a zip that is no such file; `what` is the table at fault, if it is one."""

    def __init__(self, what: str = "") -> None:
        super().__init__(what)
        self.what = what


@dataclass(frozen=True, slots=True)
class Section:
    """A class of the file: its title, and its students as (given name, family name)."""

    title: str
    students: tuple[tuple[str, str], ...]


def is_zip(content: bytes) -> bool:
    """Tell whether a file is a zip."""
    return content[:4] in (b"PK\x03\x04", b"PK\x05\x06")


def read_one_roster(content: bytes) -> tuple[Section, ...]:
    """Return the classes that have students, by title: those enrolled and not switched off.

    A name is the preferred one (1.2), else the given one. Raises `OneRosterError`.
    """
    if len(content) > LARGEST_ZIP:
        raise OneRosterError
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as parts:
            tables = _tables(parts)
            enrolled = _enrolled(_rows(parts, tables, "enrollments.csv"))
            titles = _titles(_rows(parts, tables, "classes.csv"), enrolled)
            wanted = {user for key in titles for user in enrolled[key]}
            users = _users(_rows(parts, tables, "users.csv"), wanted)
    except OneRosterError:
        raise
    except (*_BROKEN, ValueError, RuntimeError):
        raise OneRosterError from None
    found = [
        Section(title, students)
        for key, title in titles.items()
        if (students := tuple(users[user] for user in enrolled[key] if user in users))
    ]
    if not found or len(found) > MOST_CLASSES:
        raise OneRosterError("classes.csv")
    return tuple(sorted(found, key=lambda each: each.title.casefold()))


def _tables(parts: zipfile.ZipFile) -> dict[str, zipfile.ZipInfo]:
    """Return the tables by the last part of their names, in small letters."""
    listed = parts.infolist()
    if len(listed) > MOST_PARTS:
        raise OneRosterError
    found: dict[str, zipfile.ZipInfo] = {}
    for each in listed:
        name = each.filename.replace("\\", "/").rpartition("/")[2].casefold()
        if name in found and name.endswith(".csv"):
            raise OneRosterError(name)
        found[name] = each
    return found


def _rows(
    parts: zipfile.ZipFile, tables: dict[str, zipfile.ZipInfo], name: str
) -> Iterator[dict[str, str]]:
    """Yield the rows of a table with the columns that are read, and none of the others."""
    table = tables.get(name)
    if table is None or table.flag_bits & 1 or _bomb(table):
        raise OneRosterError(name)
    try:
        with parts.open(table) as file:
            lines = _Lines(file)
            read = csv.reader(lines)
            headings = [heading.strip().lstrip("\ufeff") for heading in next(read, [])]
            places = {each: headings.index(each) for each in _COLUMNS[name] if each in headings}
            if not set(_NEEDED[name]) <= set(places):
                raise OneRosterError(name)
            for cells in read:
                yield {each: cells[at].strip() for each, at in places.items() if at < len(cells)}
    except (csv.Error, UnicodeDecodeError, RuntimeError):
        raise OneRosterError(name) from None


def _bomb(table: zipfile.ZipInfo) -> bool:
    return table.file_size > min(LARGEST_TABLE, SQUEEZED * max(table.compress_size, 1_000))


class _Lines:
    """The lines of a table as text, counted: a zip may say that it holds less than it does."""

    def __init__(self, file: IO[bytes]) -> None:
        self.file = file
        self.left = LARGEST_TABLE

    def __iter__(self) -> Iterator[str]:
        while line := self.file.readline(_LINE):
            self.left -= len(line)
            if self.left < 0 or len(line) == _LINE:
                raise csv.Error
            yield line.decode()


_COLUMNS = {
    "classes.csv": ("sourcedId", "status", "title", "classCode"),
    "enrollments.csv": ("status", "classSourcedId", "userSourcedId", "role"),
    "users.csv": (
        *("sourcedId", "status", "enabledUser", "role"),
        *("givenName", "familyName", "preferredGivenName"),
    ),
}
_NEEDED = {
    "classes.csv": ("sourcedId", "title"),
    "enrollments.csv": ("classSourcedId", "userSourcedId", "role"),
    "users.csv": ("sourcedId", "givenName", "familyName"),
}


def _stands(row: dict[str, str]) -> bool:
    return row.get("status", "").casefold() not in _GONE


def _enrolled(rows: Iterator[dict[str, str]]) -> dict[str, list[str]]:
    """Return the students of each class, by their ids, each once."""
    found: dict[str, dict[str, None]] = {}
    for row in rows:
        if _stands(row) and row.get("role", "").casefold() == "student":
            students = found.setdefault(row.get("classSourcedId", ""), {})
            students[row.get("userSourcedId", "")] = None
    return {key: list(students) for key, students in found.items()}


def _titles(rows: Iterator[dict[str, str]], enrolled: dict[str, list[str]]) -> dict[str, str]:
    found: dict[str, str] = {}
    for row in rows:
        key = row.get("sourcedId", "")
        if _stands(row) and key in enrolled:
            code = clean(row.get("classCode", ""))
            title = clean(row.get("title", ""))
            found[key] = f"{title} ({code})" if title and code and code != title else title or code
    return found


def _users(rows: Iterator[dict[str, str]], wanted: set[str]) -> dict[str, tuple[str, str]]:
    """Return the names of those wanted; of 1.1 a role of its own says who is a student."""
    found: dict[str, tuple[str, str]] = {}
    for row in rows:
        key = row.get("sourcedId", "")
        student = row.get("role", "student").casefold() in ("student", "")
        on = row.get("enabledUser", "true").casefold() != "false"
        if key in wanted and student and on and _stands(row):
            given = clean(row.get("preferredGivenName", "")) or clean(row.get("givenName", ""))
            if given:
                found[key] = (given, clean(row.get("familyName", "")))
    return found


def titles_of(sections: Sequence[Section]) -> list[tuple[int, str, int]]:
    """Return place, title and number of students of each class."""
    return [(at, each.title, len(each.students)) for at, each in enumerate(sections)]
