"""The page of the sweep: each property, its cases, its exceptions, and on what it held."""

import xml.etree.ElementTree as ET
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Self

NOTE = "waysaid-sweep"
EXAMPLES = "waysaid-sweep-examples"
HEAD = """# What the sweep tried

`make sweep` writes this page: every property with all its cases. *Cases* is what the test counted;
"up to" marks the examples that a generator may draw. *Exceptions* are cases that the test names and
lets through. *At* is the commit that the test ran on. A test runs again when it failed or when a
file changed that it rests on; `make sweep ALL=1` runs all of them again.

{total} properties, {cases} cases, {failed} failed. {tests} tests in {parts} files ran for
{hours} h, one beside another; {stale}.

| property | test | cases | exceptions | held | at |
|---|---|--:|--:|---|---|
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

    def line(self, commit: str) -> str:
        """Return the row as Markdown, with the commit that it was tried on."""
        cases = f"{'up to ' if self.drawn else ''}{self.cases:,}"
        held = "yes" if self.held else "**no**"
        told = f"{cases} | {self.exceptions:,} | {held} | {commit} |"
        return f"| {self.what} | `{self.test}` | {told}"


@dataclass(frozen=True, slots=True)
class Showed:
    """What a part of the sweep showed: its digest then, its minutes, and the tests that failed."""

    path: str
    digest: str
    commit: str
    minutes: float
    tests: int
    failed: list[str]
    rows: list[Row]

    @classmethod
    def read(cls, written: Mapping[str, Any]) -> Self:
        """Return what was written as one line of JSON."""
        return cls(**{**written, "rows": [Row(**row) for row in written["rows"]]})

    def holds(self, digest: str) -> bool:
        """Tell whether the part held, and with the files of this digest."""
        return not self.failed and self.digest == digest

    def ended(self) -> str:
        """Say in a few words how it ended."""
        return f"{len(self.failed)} of {self.tests} failed" if self.failed else "held"


def properties(case: ET.Element, name: str) -> list[str]:
    """Return the values of a test's properties of one name."""
    found = case.iterfind("properties/property")
    return [one.get("value", "") for one in found if one.get("name") == name]


def failed(case: ET.Element) -> bool:
    """Tell whether a test failed, or could not be set up."""
    return case.find("failure") is not None or case.find("error") is not None


def rows_of(case: ET.Element) -> Iterator[Row]:
    """Yield the rows of one test: its own notes, or what its generator may draw."""
    test = (case.get("classname") or "").removeprefix("tests.").replace(".", "/")
    name = (case.get("name") or "").replace("|", "/")
    held = not failed(case)
    notes = properties(case, NOTE)
    for note in notes:
        count, exceptions, what = note.split("|", 2)
        yield Row(what.replace("|", "/"), test, int(count), False, int(exceptions), held)
    if not notes:
        for count in properties(case, EXAMPLES)[:1]:
            what = name.removeprefix("test_").replace("_", " ")
            yield Row(what, test, int(count), True, 0, held)


def page(showed: Sequence[Showed], now: Mapping[str, str]) -> str:
    """Return the whole page, given the digests of the parts as they are now."""
    rows = [(row, one.commit) for one in showed for row in one.rows]
    rows.sort(key=lambda each: (each[0].test, each[0].what))
    stale = sum(one.digest != now[one.path] for one in showed) + len(now) - len(showed)
    lost = sum(not row.held for row, _ in rows)
    head = HEAD.format(
        total=f"{len(rows):,}",
        cases=f"{sum(row.cases for row, _ in rows):,}",
        failed=lost or "none",
        tests=f"{sum(one.tests for one in showed):,}",
        parts=len(showed),
        hours=round(sum(one.minutes for one in showed) / 60, 1),
        stale=f"{stale} of {len(now)} files wait to be run" if stale else "none waits to be run",
    )
    table = "".join(f"{row.line(commit)}\n" for row, commit in rows)
    named = [f"- `{one.path}` ({one.commit}): {name}" for one in showed for name in one.failed]
    return head + table + ("\n## Failed\n\n" + "\n".join(named) + "\n" if named else "")
