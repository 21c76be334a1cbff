"""A class list as a teacher has it: pasted, or a file that another program wrote.

`waysaid.site.names` cleans one name; this reads a whole list and says what it took for what, so
that a person can look before anything is kept.
"""

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass

from waysaid.site.decoding import BadListError
from waysaid.site.names import LONGEST_NAME, MOST_NAMES, BadNamesError, clean

EVERY_PART = -1
"""The choice of part by which each cell is a child of its own."""
GIVEN = frozenset(
    {
        "alumna",
        "alumno",
        "child",
        "estudiante",
        "first",
        "first name",
        "firstname",
        "given name",
        "givenname",
        "name",
        "nombre",
        "nombres",
        "student",
    }
)
"""Headings, in any case, over the names a class calls its children by (our choice)."""
PREFERRED = frozenset(
    {
        "apodo",
        "goes by",
        "known as",
        "nickname",
        "nombre de uso",
        "nombre preferido",
        "preferred",
        "preferred first name",
        "preferred given name",
        "preferred name",
        "preferredgivenname",
    }
)
"""Headings over the names that some children go by instead; an empty one leaves the given name."""
FAMILY = frozenset(
    {
        "apellido",
        "apellido paterno",
        "apellidos",
        "family name",
        "familyname",
        "last",
        "last name",
        "lastname",
        "primer apellido",
        "surname",
    }
)
"""Headings over family names."""


@dataclass(frozen=True, slots=True)
class Roster:
    """Names in order, told apart. `changed` are the places of those given a mark to do so.

    `parts` shows what each part of a line holds, by example, where there is a choice; `part` is
    the one taken, or `EVERY_PART`.
    """

    names: tuple[str, ...]
    changed: frozenset[int] = frozenset()
    parts: tuple[str, ...] = ()
    part: int = 0


def read_roster(text: str, part: int | None = None) -> Roster:
    """Return the names of a list; `part` says which part of each line is the name, if not plain.

    Lines of several parts, with commas, semicolons or tabs between, are a table; a first line of
    headings is left out, and ‘García, Ana’ is read as family name first. Raises `BadNamesError`
    for more than `MOST_NAMES`.
    """
    lines = [line for line in text.replace("\ufeff", "").splitlines() if line.strip()]
    mark = _mark(lines)
    rows = [_cells(line, mark) for line in lines]
    headings = {cell.casefold() for cell in rows[0]} if rows else set()
    headed = len(rows) > 1 and bool(headings & (GIVEN | FAMILY | PREFERRED))
    body = rows[1:] if headed else rows
    if mark and len(body) + headed > 1 and max(map(len, rows)) > 1:
        return _table(rows[0] if headed else [], body, mark, part)
    return told_apart_by_family([(cell, "") for row in body for cell in row])


def names_alone(text: str) -> str:
    """Return a list with nothing in it but what may be names: the rest of a table is left out.

    Of a table with headings those columns stay whose headings are known, of any other those with
    no digit and no @ in them; where that would leave nothing, all of it stays.
    """
    lines = [line for line in text.replace("\ufeff", "").splitlines() if line.strip()]
    mark = _mark(lines)
    if not mark:
        return text
    rows = _whole_rows(text, mark) or [_cells(line, mark) for line in lines]
    width = range(max(map(len, rows)))
    kept = [at for at in width if _cell(rows[0], at).casefold() in GIVEN | FAMILY | PREFERRED]
    if not kept:
        kept = [at for at in width if not any(_no_name(_cell(row, at)) for row in rows)]
    if not kept or len(kept) == len(width):
        return text
    written = io.StringIO(newline="")
    table = csv.writer(written, delimiter=mark, lineterminator="\n")
    table.writerows([[_cell(row, at) for at in kept] for row in rows])
    return written.getvalue()


def _whole_rows(text: str, mark: str) -> list[list[str]]:
    """Return the rows of a table whose cells may have line ends in them; none if it is not whole.

    Where a quote is not closed, each line is a row by itself.
    """
    if text.count('"') % 2:
        return []
    try:
        read = list(csv.reader(io.StringIO(text.lstrip("\ufeff"), newline=""), delimiter=mark))
    except csv.Error:
        raise BadListError from None
    return [[" ".join(cell.split()) for cell in row] for row in read if any(map(str.strip, row))]


def _no_name(cell: str) -> bool:
    return "@" in cell or any(one.isdigit() for one in cell)


def _mark(lines: Sequence[str]) -> str:
    """Return what parts the cells, if most lines have it."""
    for mark in "\t;,":
        if sum(mark in line for line in lines) * 2 > len(lines):
            return mark
    return ""


def _cells(line: str, mark: str) -> list[str]:
    if not mark:
        return [line]
    try:
        cells = [cell.strip() for cell in next(csv.reader([line], delimiter=mark))]
    except csv.Error:
        raise BadListError from None
    while len(cells) > 1 and not cells[-1]:
        cells.pop()
    return cells


def _table(headings: list[str], body: list[list[str]], mark: str, part: int | None) -> Roster:
    width = max(map(len, body))
    given, family = _places(headings, body, mark)
    chosen = given if part is None or part >= width else part
    if chosen == EVERY_PART:
        pairs = [(cell, "") for row in body for cell in row]
    else:
        surname = family if family != chosen else None
        called = _under(headings, PREFERRED) if chosen == given else None
        pairs = [(_cell(row, called) or _cell(row, chosen), _cell(row, surname)) for row in body]
    parts = tuple(clean(_cell(body[0], place)) for place in range(width))
    read = told_apart_by_family(pairs)
    return Roster(read.names, read.changed, parts, chosen)


def _places(headings: list[str], body: list[list[str]], mark: str) -> tuple[int, int | None]:
    """Return where the names are, and the family names if they are known."""
    given, family = _under(headings, GIVEN), _under(headings, FAMILY)
    if given is None:
        given = _under(headings, PREFERRED)
    if given is not None:
        return given, family
    if family is not None:
        return (1 if family == 0 else 0), family
    widths = {len(row) for row in body}
    words = [place for place in range(max(widths)) if not _has_digits(body, place)]
    if mark == "," and widths == {2}:
        return 1, 0
    if mark == "," and (min(widths) != max(widths) or len(words) == max(widths) > 2):
        return EVERY_PART, None
    return (words[0] if words else 0), None


def _under(headings: Sequence[str], wanted: frozenset[str]) -> int | None:
    """Return the place of the first heading that is one of those wanted, in any case."""
    known = [" ".join(heading.casefold().split()) for heading in headings]
    return next((place for place, each in enumerate(known) if each in wanted), None)


def _has_digits(body: list[list[str]], place: int) -> bool:
    return any(one.isdigit() for row in body for one in _cell(row, place))


def _cell(row: list[str], place: int | None) -> str:
    return row[place] if place is not None and 0 <= place < len(row) else ""


def told_apart_by_family(pairs: Sequence[tuple[str, str]]) -> Roster:
    """Give those of one name the first letters of their family names, or else a number."""
    bare = [(clean(given), clean(family)) for given, family in pairs if _is_name(given)]
    if len(bare) > MOST_NAMES:
        raise BadNamesError(len(bare))
    together: dict[str, list[int]] = {}
    for place, (name, _family) in enumerate(bare):
        together.setdefault(name.casefold(), []).append(place)
    names = [name for name, _family in bare]
    for places in together.values():
        if len(places) > 1:
            for place, ending in zip(places, _endings([bare[at][1] for at in places]), strict=True):
                names[place] = _ended(names[place], ending)
    _number_the_rest(names)
    changed = frozenset(at for at, name in enumerate(names) if name != bare[at][0])
    return Roster(tuple(names), changed)


def _is_name(given: str) -> bool:
    return any(one.isalnum() for one in clean(given))


def _endings(families: list[str]) -> list[str]:
    """Return the fewest letters of each family name that tell them all apart, or no letters."""
    for letters in range(1, 1 + max(map(len, families))):
        cut = [family[:letters].strip() for family in families]
        if all(cut) and len({each.casefold() for each in cut}) == len(cut):
            whole = [each == family for each, family in zip(cut, families, strict=True)]
            return [
                each if all_of_it else f"{each}."
                for each, all_of_it in zip(cut, whole, strict=True)
            ]
    return [""] * len(families)


def _ended(name: str, ending: str) -> str:
    if not ending:
        return name
    return f"{name[: LONGEST_NAME - len(ending) - 1]} {ending}"


def _number_the_rest(names: list[str]) -> None:
    used: set[str] = set()
    every = {name.casefold() for name in names}
    for place, name in enumerate(names):
        given, nth = name, 1
        while given.casefold() in used or (nth > 1 and given.casefold() in every):
            nth += 1
            given = _ended(name, str(nth))
        used.add(given.casefold())
        names[place] = given


def same_twice(names: Sequence[str]) -> str:
    """Return a name that is there twice, whatever its capitals; nothing if all differ."""
    used: set[str] = set()
    for name in names:
        if name.casefold() in used:
            return name
        used.add(name.casefold())
    return ""
