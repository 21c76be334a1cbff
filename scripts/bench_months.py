"""Measure "family by grade by month" over ten million pieces: DuckDB on Parquet, and plain SQL.

Pieces are drawn at random, evenly over families, grades and ten months, as `waysaid evidence` has
them; the same rows are put in an SQLite table with an index that covers the question. Seconds, the
time of one asking after one that is not counted; loading is told apart. Print one JSON object.
"""

import sqlite3
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

import duckdb  # noqa: E402

from scripts.bench_size import sized, tell  # noqa: E402
from waysaid.paper import months  # noqa: E402
from waysaid.ways import Family  # noqa: E402

PIECES = sized(10_000_000, 70_000)
GRADES, FILES = 7, 10
PLAIN = """
SELECT family, grade, substr(day, 1, 4), substr(day, 6, 2), count(*) AS times, count(DISTINCT talk)
FROM shown WHERE family IS NOT NULL AND how IN ('said', 'added', 'changed', 'agreed')
GROUP BY 1, 2, 3, 4 HAVING times >= 10 ORDER BY 1, 2, 3, 4
"""
DRAWN = """
SELECT 't' || (random() * 600000)::INTEGER AS talk,
  DATE '2026-09-01' + (random() * 300)::INTEGER AS day, (random() * 40)::INTEGER AS "order",
  'c' || (random() * 200000)::INTEGER AS child,
  ['said', 'said', 'said', 'agreed', 'answered', 'noticed'][1 + (random() * 5.99)::INTEGER] AS how,
  '37 + 25' AS problem, {families}[1 + floor(random() * {many})::INTEGER] AS family, 'w' AS way,
  'equations' AS picture, random() < 0.9 AS "right", 'en' AS language, false AS planned
FROM range({rows})
"""


def draw(folder: Path) -> None:
    """Write the pieces as Parquet, ten files for each grade."""
    families = [family.value for family in Family]
    rows = PIECES // (GRADES * FILES) + 1
    drawn = DRAWN.format(families=families, many=len(families), rows=rows)
    with duckdb.connect(":memory:") as table:
        table.execute("SELECT setseed(0.5)")
        for grade in range(GRADES):
            (folder / f"grade={grade}").mkdir()
            for number in range(FILES):
                file = folder / f"grade={grade}" / f"{number}.parquet"
                table.execute(f"COPY ({drawn}) TO '{file}' (FORMAT parquet)")


def load(folder: Path, file: Path) -> None:
    """Put the same rows in an SQLite table, with an index that has all the question needs."""
    with duckdb.connect(":memory:") as table, sqlite3.connect(file) as plain:
        plain.execute("CREATE TABLE shown (family, grade, day, how, talk)")
        read = f"read_parquet('{folder}/grade=*/*.parquet', hive_partitioning = true)"
        asked = f"SELECT family, grade::INTEGER, day::VARCHAR, how, talk FROM {read}"
        found = table.execute(asked)
        while rows := found.fetchmany(100_000):
            plain.executemany("INSERT INTO shown VALUES (?, ?, ?, ?, ?)", rows)
        plain.execute("CREATE INDEX all_of_it ON shown (family, grade, day, how, talk)")
        plain.execute("ANALYZE")


def timed(work: Any) -> tuple[float, Any]:
    """Return the seconds some work took, and what came of it."""
    start = time.perf_counter()
    made = work()
    return round(time.perf_counter() - start, 2), made


def main() -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory(prefix="waysaid-bench-") as name:
        folder = Path(name)
        drawn, _none = timed(lambda: draw(folder))
        months(folder)
        ours, rows = timed(lambda: months(folder))
        loaded, _none = timed(lambda: load(folder, folder / "plain.sqlite3"))
        with sqlite3.connect(folder / "plain.sqlite3") as plain:
            plain.execute(PLAIN).fetchall()
            other, said = timed(lambda: plain.execute(PLAIN).fetchall())
        alike = [
            (r.family.value, r.grade, f"{r.year}", f"{r.month:02}", r.times, r.talks) for r in rows
        ]
        told = {
            "pieces": GRADES * FILES * (PIECES // (GRADES * FILES) + 1),
            "rows": len(rows),
            "same_rows": alike == said,
            "duckdb_s": ours,
            "plain_sql_s": other,
            "times_as_fast": round(other / ours, 1),
            "drawn_s": drawn,
            "sqlite_loaded_s": loaded,
        }
        tell({"months": told})


if __name__ == "__main__":
    main()
