"""Family by grade by month: one question over the evidence of many classes, answered by DuckDB.

The tables lie in a folder for each grade (`grade=2/any-name.parquet`), as `waysaid evidence` writes
them. It is for whoever may hold the evidence of many classes; the school's rules and local law say
who that is. No child, talk or class is in the answer.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from waysaid.growth import USED
from waysaid.paper.evidence_table import (
    TableError,
    TableFault,
    database,
    duckdb_package,
    quoted,
)
from waysaid.ways import Family

FEWEST = 10
"""A row of fewer ways is left out: so few could be one child's. Our choice."""
_MEMORY = "2GB"
_ASKED = """
SELECT family, grade, year(day) AS y, month(day) AS m, count(*) AS times, count(DISTINCT talk) AS t
FROM read_parquet({files}, hive_partitioning = true, hive_types = {{'grade': INTEGER}})
WHERE family IS NOT NULL AND how IN ({used})
GROUP BY ALL HAVING times >= {fewest} ORDER BY family, grade, y, m
"""


@dataclass(frozen=True, slots=True)
class MonthRow:
    """How often a family was told or agreed with in a grade in a month, and in how many talks."""

    family: Family
    grade: int
    year: int
    month: int
    times: int
    talks: int


def months(folder: Path) -> tuple[MonthRow, ...]:
    """Return the rows of a folder of tables by family, grade and month.

    Raises `TableError` for a folder without tables, for one that cannot be read, and where DuckDB
    is not installed.
    """
    files = sorted(folder.glob("grade=[0-6]/*.parquet"))
    if not files:
        raise TableError(TableFault.NO_FOLDER)
    duckdb = duckdb_package()
    used = ", ".join(f"'{how.value}'" for how in sorted(USED))
    listed = f"[{', '.join(map(quoted, files))}]"
    with database(duckdb, memory_limit=_MEMORY) as table:
        try:
            found = table.execute(_ASKED.format(files=listed, used=used, fewest=FEWEST))
            rows = found.fetchall()
        except (duckdb.Error, UnicodeDecodeError):
            raise TableError(TableFault.NO_PARQUET) from None
    return tuple(_rows(rows))


def _rows(rows: list[tuple[str, int, int, int, int, int]]) -> Iterator[MonthRow]:
    known = {each.value: each for each in Family}
    for family, *rest in rows:
        if family not in known:
            raise TableError(TableFault.NO_COLUMNS)
        yield MonthRow(known[family], *rest)
