"""What children showed, as a table for other programs: CSV (RFC 4180), and Parquet by DuckDB.

A row is one piece of evidence and its columns are those of `waysaid.growth.Shown`; they are
described in docs/reference/evidence.md. Reading what was written gives the same pieces.
"""

import csv
import io
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import fields
from datetime import date
from enum import Enum, auto
from pathlib import Path
from typing import Any

from waysaid.drawing import Picture as Drawing
from waysaid.growth import How, Shown
from waysaid.number import Language
from waysaid.ways import Family

COLUMNS = tuple(field.name for field in fields(Shown))
LARGEST_TABLE = 50_000_000
"""Bytes of a CSV file that is read: some 500,000 pieces (our choice)."""
LONGEST_CELL = 2_000
"""Characters in one cell: what one text of an event may have."""
HARMFUL = "=+-@\t\r\n＝＋－＠"
"""A cell that begins so is a formula to some spreadsheet (common practice, no source)."""
MARK = "'"
"""Stands before such a cell, and before one that begins with it, so that both are read back."""
_ORDER = re.compile(r"\d{1,9}")


class TableFault(Enum):
    """What may be wrong with a table."""

    TOO_LARGE = auto()
    NO_TEXT = auto()
    NO_TABLE = auto()
    NO_COLUMNS = auto()
    NO_ROW = auto()
    NO_CELL = auto()
    NO_PARQUET = auto()
    NO_FOLDER = auto()
    NO_DUCKDB = auto()


class TableError(ValueError):
    """Raised for a table that cannot be used; `line` counts from 1."""

    def __init__(self, fault: TableFault, line: int = 1, column: str = "") -> None:
        super().__init__(fault, line, column)
        self.fault = fault
        self.line = line
        self.column = column

    def sentence(self, language: Language) -> str:
        """Return one sentence: where, what is wrong there, and what would fit."""
        columns = ", ".join(COLUMNS)
        return _SAID[language][self.fault].format(self.line, self.column, columns)

    def __str__(self) -> str:
        """Return the sentence in English."""
        return self.sentence(Language.EN)


def evidence_csv(shown: Sequence[Shown]) -> bytes:
    """Return the table as CSV in UTF-8 with its mark, which spreadsheets ask for."""
    written = io.StringIO(newline="")
    table = csv.writer(written)
    table.writerow(COLUMNS)
    for piece in shown:
        table.writerow([_harmless(_said(getattr(piece, name))) for name in COLUMNS])
    return written.getvalue().encode("utf-8-sig")


def read_evidence_csv(content: bytes) -> tuple[Shown, ...]:
    """Return the pieces of a CSV table. Raises `TableError`."""
    if len(content) > LARGEST_TABLE:
        raise TableError(TableFault.TOO_LARGE)
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise TableError(TableFault.NO_TEXT) from None
    return tuple(_pieces(csv.reader(io.StringIO(text, newline=""), strict=True)))


def _pieces(table: Any) -> Iterator[Shown]:
    """Yield the pieces of a table's rows, its headings first."""
    try:
        if tuple(next(table, ())) != COLUMNS:
            raise TableError(TableFault.NO_COLUMNS)
        for cells in table:
            if len(cells) != len(COLUMNS):
                raise TableError(TableFault.NO_ROW, table.line_num)
            yield _piece([_bare(cell) for cell in cells], table.line_num)
    except csv.Error:
        raise TableError(TableFault.NO_TABLE, table.line_num) from None


def _harmless(cell: str) -> str:
    return f"{MARK}{cell}" if cell[:1] in (*HARMFUL, MARK) else cell


def _bare(cell: str) -> str:
    return cell.removeprefix(MARK)


def _said(value: object) -> str:
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case date():
            return value.isoformat()
    return str(value)


def _piece(cells: Sequence[str], line: int) -> Shown:
    values = {}
    for name, cell in zip(COLUMNS, cells, strict=True):
        try:
            values[name] = _READERS[name](cell)
        except ValueError:
            raise TableError(TableFault.NO_CELL, line, name) from None
    return Shown(**values)


def _text(cell: str) -> str:
    if len(cell) > LONGEST_CELL:
        raise ValueError(cell)
    return cell


def _some_text(cell: str) -> str:
    if not cell:
        raise ValueError(cell)
    return _text(cell)


def _whole(cell: str) -> int:
    if not _ORDER.fullmatch(cell) or not cell.isascii():
        raise ValueError(cell)
    return int(cell)


def _day(cell: str) -> date:
    read = date.fromisoformat(cell)
    if read.isoformat() != cell:
        raise ValueError(cell)
    return read


def _yes_or_no(cell: str) -> bool:
    if cell not in ("yes", "no"):
        raise ValueError(cell)
    return cell == "yes"


def _language(cell: str) -> str:
    return Language(cell).value


def _or_none(reader: Callable[[str], Any]) -> Callable[[str], Any]:
    return lambda cell: reader(cell) if cell else None


_READERS: Mapping[str, Callable[[str], Any]] = {
    "talk": _some_text,
    "day": _day,
    "order": _whole,
    "child": _or_none(_text),
    "how": How,
    "problem": _text,
    "family": _or_none(Family),
    "way": _text,
    "picture": _or_none(Drawing),
    "right": _or_none(_yes_or_no),
    "language": _language,
    "planned": _yes_or_no,
}
_TYPES = {"day": "DATE", "order": "INTEGER", "right": "BOOLEAN", "planned": "BOOLEAN"}
"""The columns of a Parquet table that are no text."""


def write_evidence_parquet(shown: Sequence[Shown], file: Path) -> None:
    """Write the table as Parquet. Raises `TableError` where DuckDB is not installed."""
    columns = [[_plain(getattr(piece, name)) for piece in shown] for name in COLUMNS]
    cast = ", ".join(f'unnest(?::{_type(name)}[]) AS "{name}"' for name in COLUMNS)
    with database(duckdb_package()) as table:
        table.execute(f"CREATE TABLE shown AS SELECT {cast}", columns)
        table.execute(f"COPY shown TO {quoted(file)} (FORMAT parquet)")


def read_evidence_parquet(file: Path) -> tuple[Shown, ...]:
    """Return the pieces of a Parquet table. Raises `TableError`."""
    duckdb = duckdb_package()
    with database(duckdb) as table:
        try:
            read = table.execute(f"SELECT * FROM read_parquet({quoted(file)})")
            names = tuple(each[0] for each in read.description)
            rows = read.fetchall()
        except (duckdb.Error, UnicodeDecodeError):
            raise TableError(TableFault.NO_PARQUET) from None
    if names != COLUMNS:
        raise TableError(TableFault.NO_COLUMNS)
    return tuple(
        _piece([_said(value) for value in row], line) for line, row in enumerate(rows, start=1)
    )


def duckdb_package() -> Any:
    """Return the package, which only Parquet needs. Raises `TableError` where it is not there."""
    try:
        import duckdb  # noqa: PLC0415  what is not installed everywhere
    except ImportError:
        raise TableError(TableFault.NO_DUCKDB) from None
    return duckdb


def database(duckdb: Any, **limits: Any) -> Any:
    """Return an empty database in memory, which fetches nothing from anywhere.

    `limits` are settings of DuckDB; with none it has little memory and one thread.
    """
    limits = limits or {"memory_limit": "500MB", "threads": 1}
    made = duckdb.connect(":memory:", config=limits)
    for setting in ("autoinstall_known_extensions", "autoload_known_extensions"):
        made.execute(f"SET {setting} = false")
    return made


def _type(name: str) -> str:
    return _TYPES.get(name, "VARCHAR")


def _plain(value: object) -> object:
    return value.value if isinstance(value, Enum) else value


def quoted(file: Path) -> str:
    """Return a file's name as a text of SQL."""
    name = str(file).replace("'", "''")
    return f"'{name}'"


_SAID: Mapping[Language, Mapping[TableFault, str]] = {
    Language.EN: {
        TableFault.TOO_LARGE: "The table is larger than 50 MB; a smaller one would fit.",
        TableFault.NO_TEXT: "The table is no UTF-8 text; one as Waysaid writes it would fit.",
        TableFault.NO_TABLE: "Line {0} is no row of a table with commas; one as Waysaid writes "
        "it would fit.",
        TableFault.NO_COLUMNS: "The table has other columns; these would fit, in this order: {2}.",
        TableFault.NO_ROW: "The row that ends in line {0} has more or fewer cells than there are "
        "columns; one for each of {2} would fit.",
        TableFault.NO_CELL: "In row {0} the cell “{1}” is nothing that fits there; "
        "docs/reference/evidence.md says what would.",
        TableFault.NO_PARQUET: "The file is no Parquet table that can be read; one as Waysaid "
        "writes it would fit.",
        TableFault.NO_FOLDER: "There are no tables; Parquet files in folders named grade=0 to "
        "grade=6 would fit.",
        TableFault.NO_DUCKDB: "Parquet needs DuckDB, which is not installed here: take CSV, or "
        "bring it with “pipx inject waysaid duckdb”.",
    },
    Language.ES: {
        TableFault.TOO_LARGE: "La tabla pasa de 50 MB; valdría una más pequeña.",
        TableFault.NO_TEXT: "La tabla no es texto UTF-8; valdría una como las que escribe Waysaid.",
        TableFault.NO_TABLE: "La línea {0} no es una fila de una tabla con comas; valdría una "
        "como las que escribe Waysaid.",
        TableFault.NO_COLUMNS: "La tabla tiene otras columnas; valdrían estas, en este orden: {2}.",
        TableFault.NO_ROW: "La fila que acaba en la línea {0} tiene más o menos celdas que "
        "columnas hay; valdría una para cada una de {2}.",
        TableFault.NO_CELL: "En la fila {0}, la celda “{1}” no es nada que valga ahí; "
        "docs/reference/evidence.md dice qué valdría.",
        TableFault.NO_PARQUET: "El archivo no es una tabla Parquet que se pueda leer; valdría "
        "una como las que escribe Waysaid.",
        TableFault.NO_FOLDER: "No hay tablas; valdrían archivos Parquet en carpetas llamadas "
        "grade=0 a grade=6.",
        TableFault.NO_DUCKDB: "Parquet necesita DuckDB, que aquí no está instalado: tome CSV, o "
        "tráigalo con “pipx inject waysaid duckdb”.",
    },
}
