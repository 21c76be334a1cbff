"""Published problems, each worked as its source works it, are among our ways.

The rows and their sources are in this folder; `README.md` says what was read and what is from
memory. Which of two numbers added or multiplied is said first makes no difference.
"""

from typing import Any

import pytest

from tests.published.rows import HERE, label, rows
from waysaid.number import (
    Expression,
    Operation,
    Sign,
    is_true,
    parse,
    parse_equation,
    said_text,
)
from waysaid.ways import Way, ways

ROWS = rows("worked_examples.jsonl")

SCALED_BACK = "scaled and scaled back; in double and halve the product never changes"
DIFFERS = {
    ("il-guide", "14 - 6", "6 + 8 = 14"): ("think-add", "a difference known by its sum"),
    ("sask", "13 - 7", "7 + 6 = 13"): ("think-add", "a difference known by its sum"),
    ("eng-y5-map", "58 x 5", "58 x 10 = 580"): ("adjust", SCALED_BACK),
    ("eng-y5-map", "28 x 50", "28 x 100 = 2800"): ("adjust", SCALED_BACK),
    ("nns1999", "36 x 25", "36 x 100 = 3600"): ("adjust", SCALED_BACK),
    ("nz-ao", "4 x 4", "4 + 4 = 8"): ("factor-steps", "doubling twice is times 2, times 2"),
}
"""Rows that ours does not follow: our family and the reason, by source, problem and first step."""


def _differs(row: dict[str, Any]) -> tuple[str, str] | None:
    return DIFFERS.get((row["source"], row["problem"], row["steps"][0]))


def _case(row: dict[str, Any]) -> Any:
    ours = _differs(row)
    reason = f"the list says {row['family']}; ours is {ours[0]}: {ours[1]}" if ours else ""
    marks = [pytest.mark.xfail(strict=True, reason=reason)] if ours else []
    name = f"{row['source_calls_it']} ({'; '.join(row['steps'])})"
    return pytest.param(row, marks=marks, id=label(row, name))


def _same_steps(row: dict[str, Any]) -> list[Way]:
    steps = [_turned(step) for step in row["steps"]]
    found = ways(parse(row["problem"]))
    return [way for way in found if [_turned(step.text) for step in way.steps] == steps]


def _turned(step: str) -> tuple[object, object]:
    """Return both sides of an equation, with sums and products the same either way round."""
    equation = parse_equation(step)
    return _either_way(equation.left), _either_way(equation.right)


def _either_way(side: Expression) -> object:
    if not isinstance(side, Operation):
        return side
    both = (_either_way(side.left), _either_way(side.right))
    swaps = side.sign in (Sign.PLUS, Sign.TIMES)
    return (side.sign, *(sorted(both, key=repr) if swaps else both))


@pytest.mark.parametrize("row", [_case(row) for row in ROWS])
def test_the_way_is_found_with_the_same_steps_and_family(row: dict[str, Any]) -> None:
    found = _same_steps(row)
    assert row["family"] in {way.family.value for way in found}
    assert {said_text(way.answer, parse(row["problem"])) for way in found} == {row["answer"]}


@pytest.mark.parametrize(
    "row", [row for row in ROWS if _differs(row)], ids=lambda row: row["problem"]
)
def test_a_row_that_differs_has_the_same_steps_in_the_family_of_its_reason(
    row: dict[str, Any],
) -> None:
    ours = _differs(row)
    assert ours is not None
    assert {way.family.value for way in _same_steps(row)} == {ours[0]}


def test_every_reason_belongs_to_a_row() -> None:
    named = {(row["source"], row["problem"], row["steps"][0]) for row in ROWS}
    assert set(DIFFERS) <= named


def test_at_least_eighty_rows_that_were_read_are_found() -> None:
    found = [
        row
        for row in ROWS
        if row["read"] and row["family"] in {way.family.value for way in _same_steps(row)}
    ]
    assert len(found) >= 80


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['source']}: {row['steps']}")
def test_every_published_step_is_true(row: dict[str, Any]) -> None:
    assert all(is_true(parse_equation(step)) for step in row["steps"])


def test_a_published_line_that_is_false_is_shown_false() -> None:
    """eng-map2015, read: it prints 421 + 313 = double 400 + 21 - 13; that is 421 + 387."""
    assert is_true(parse_equation("421 + 313 = 400 + 400 + 21 - 13")) is False
    assert is_true(parse_equation("421 + 387 = 400 + 400 + 21 - 13")) is True
    printed = ["400 + 400 = 800", "800 + 21 = 821", "821 - 13 = 808"]
    assert printed in [[s.text for s in way.steps] for way in ways(parse("421 + 387"))]
    assert printed not in [[s.text for s in way.steps] for way in ways(parse("421 + 313"))]
    assert all(way.answer == 734 for way in ways(parse("421 + 313")))


def _table() -> str:
    """Return what is found, by source and by whether the way was read in it."""
    lines = [
        "# Published worked examples, by source",
        "",
        "How many are among our ways with the same steps, and with the same family too; where the",
        "family differs, the reason follows the table.",
        "",
        "| source | seen | examples | same steps | same family |",
        "|---|---|---|---|---|",
    ]
    groups: dict[tuple[str, str], list[tuple[bool, bool]]] = {}
    for row in ROWS:
        seen = "read" if row["read"] else "from memory"
        families = {way.family.value for way in _same_steps(row)}
        found = (bool(families), row["family"] in families)
        groups.setdefault((row["source"], seen), []).append(found)
    for (source, seen), found in sorted(groups.items()):
        lines.append(f"| `{source}` | {seen} | {_counts(found)} |")
    for seen in ("read", "from memory"):
        all_seen = [each for key, found in groups.items() if key[1] == seen for each in found]
        lines.append(f"| all | {seen} | {_counts(all_seen)} |")
    for (source, problem, first), (ours, reason) in DIFFERS.items():
        lines += ["", f"- `{source}`, {problem} by {first}: ours is {ours}; {reason}."]
    return "\n".join(lines) + "\n"


def _counts(found: list[tuple[bool, bool]]) -> str:
    return f"{len(found)} | {sum(one for one, _ in found)} | {sum(both for _, both in found)}"


def test_the_table_by_source_is_up_to_date() -> None:
    """Kept beside this file; printed whole where it differs, to be copied."""
    print(_table())
    assert (HERE / "worked_examples.md").read_text(encoding="utf-8") == _table()
