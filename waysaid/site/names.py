"""A class list as a teacher has it: pasted, typed, or a small table from elsewhere."""

import csv
import re
from collections.abc import Collection, Iterable

MOST_NAMES = 60
LONGEST_NAME = 60
HEADINGS = ("name", "first name", "first", "child", "nombre", "nombres", "alumno", "alumna")
"""Column headings (in any case) that say where the names are (our choice)."""


class BadNamesError(ValueError):
    """Raised when a list holds too many names; its text is the number found."""


def read_names(text: str) -> tuple[str, ...]:
    """Return the names in a pasted list or a CSV, in order, duplicates told apart.

    One name a line, or names parted by commas, semicolons or tabs. Where every one of several
    lines has the same number of cells it is a table, and the column headed as names (or the
    first) is taken. Raises `BadNamesError` for more than `MOST_NAMES`.
    """
    lines = [line for line in text.replace("\ufeff", "").splitlines() if line.strip()]
    rows = [_cells(line) for line in lines]
    found = _column(rows) if _is_table(rows) else [cell for row in rows for cell in row]
    names = [name for name in map(clean, found) if name]
    if len(names) > MOST_NAMES:
        raise BadNamesError(len(names))
    return told_apart(names)


def clean(name: str) -> str:
    """Return a name without odd spaces, bullets or numbering, at most `LONGEST_NAME` long."""
    printable = "".join(each if each.isprintable() else " " for each in name)
    bare = re.sub(r"^\s*(?:[-*•·]|\d{1,3}[.)])\s+", "", printable)
    return " ".join(bare.split())[:LONGEST_NAME].strip()


def told_apart(names: Iterable[str], taken: Collection[str] = ()) -> tuple[str, ...]:
    """Return the names with a number behind each that is there already: Noor, Noor (2)."""
    used = {name.casefold() for name in taken}
    apart = []
    for name in names:
        given, nth = name, 1
        while given.casefold() in used:
            nth += 1
            mark = f" ({nth})"
            given = name[: LONGEST_NAME - len(mark)] + mark
        used.add(given.casefold())
        apart.append(given)
    return tuple(apart)


def _cells(line: str) -> list[str]:
    mark = next((each for each in "\t;," if each in line), ",")
    return [cell.strip() for cell in next(csv.reader([line], delimiter=mark))]


def _is_table(rows: list[list[str]]) -> bool:
    return len(rows) > 1 and len(rows[0]) > 1 and len({len(row) for row in rows}) == 1


def _column(rows: list[list[str]]) -> list[str]:
    headings = [cell.casefold() for cell in rows[0]]
    for heading in HEADINGS:
        if heading in headings:
            return [row[headings.index(heading)] for row in rows[1:]]
    return [row[0] for row in rows]
