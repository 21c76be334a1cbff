"""Published wrong answers to sums and differences are explained by the slip of their rule."""

from typing import Any

import pytest

from tests.published.rows import label, rows
from waysaid.number import parse
from waysaid.slips import slips

ROWS = rows("wrong_answers.jsonl")


@pytest.mark.parametrize(
    "row", [pytest.param(row, id=label(row, f"{row['wrong']}: {row['rule']}")) for row in ROWS]
)
def test_the_wrong_answer_is_explained(row: dict[str, Any]) -> None:
    found = slips(parse(row["problem"]), int(row["wrong"]))
    assert row["slug"] in {slip.slug.value for slip in found}
    assert {slip.wrong for slip in found} == {int(row["wrong"])}


def test_each_row_names_a_rule_and_a_source() -> None:
    assert all(row["rule"] and row["source"] and "read" in row for row in ROWS)
    assert len(ROWS) == 54
