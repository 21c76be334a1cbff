"""Turn the JUnit file of a sweep into a table: each property, its cases, its exceptions.

Run as `sweep_report.py build/sweep.xml docs/reference/sweep.md`.
"""

import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

NOTE = "waysaid-sweep"
EXAMPLES = "waysaid-sweep-examples"
HEAD = """# What the last sweep tried

`make sweep` writes this page: every property with all its cases. *Cases* is what the test counted;
"up to" marks the examples that a generator may draw. *Exceptions* are cases that the test names
and lets through.

{total} properties, {cases} cases, {failed} failed.

| property | test | cases | exceptions | held |
|---|---|--:|--:|---|
"""


@dataclass(frozen=True, slots=True)
class Row:
    """One property of the table."""

    what: str
    test: str
    cases: int
    drawn: bool
    exceptions: int
    held: bool

    def line(self) -> str:
        """Return the row as Markdown."""
        cases = f"{'up to ' if self.drawn else ''}{self.cases:,}"
        held = "yes" if self.held else "**no**"
        return f"| {self.what} | `{self.test}` | {cases} | {self.exceptions:,} | {held} |"


def properties(case: ET.Element, name: str) -> list[str]:
    """Return the values of a test's properties of one name."""
    found = case.iterfind("properties/property")
    return [one.get("value", "") for one in found if one.get("name") == name]


def rows_of(case: ET.Element) -> Iterator[Row]:
    """Yield the rows of one test: its own notes, or what its generator may draw."""
    test = (case.get("classname") or "").removeprefix("tests.").replace(".", "/")
    name = (case.get("name") or "").replace("|", "/")
    held = case.find("failure") is None and case.find("error") is None
    notes = properties(case, NOTE)
    for note in notes:
        count, exceptions, what = note.split("|", 2)
        yield Row(what.replace("|", "/"), test, int(count), False, int(exceptions), held)
    if not notes:
        for count in properties(case, EXAMPLES)[:1]:
            what = name.removeprefix("test_").replace("_", " ")
            yield Row(what, test, int(count), True, 0, held)


def table(junit: Path) -> str:
    """Return the whole page for a JUnit file."""
    rows = [row for case in ET.parse(junit).iter("testcase") for row in rows_of(case)]
    rows.sort(key=lambda row: (row.test, row.what))
    failed = sum(not row.held for row in rows)
    cases = sum(row.cases for row in rows)
    head = HEAD.format(total=f"{len(rows):,}", cases=f"{cases:,}", failed=failed or "none")
    return head + "".join(f"{row.line()}\n" for row in rows)


def main(arguments: list[str]) -> int:
    """Write the page; return 2 with one sentence when the two paths are not given."""
    if len(arguments) != 2 or not Path(arguments[0]).is_file():
        print("Give the JUnit file of a sweep and the page to write.", file=sys.stderr)
        return 2
    target = Path(arguments[1])
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_text(table(Path(arguments[0])), encoding="utf-8")
    print(f"Wrote {target}.")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
