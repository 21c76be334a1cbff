"""The links a teacher would hope for in the 56 strings, written down before any was looked for.

A hope is met by a link of its kind between its problems; where a number, an answer or a rule goes
through several problems, also by one that goes through more.
"""

import json
from pathlib import Path

import pytest

from waysaid.number import parse
from waysaid.strings import Link, LinkKind, links

ROWS = [
    json.loads(line)
    for line in Path(__file__).with_name("hoped.jsonl").read_text(encoding="utf-8").splitlines()
]
THROUGH = {LinkKind.SAME_NUMBER, LinkKind.SAME_TOTAL, LinkKind.PATTERN}


def met(hope: dict[str, object], found: tuple[Link, ...]) -> bool:
    kind, between = LinkKind(hope["kind"]), set(hope["between"])
    return any(
        link.kind is kind
        and (between <= set(link.between) if kind in THROUGH else between == set(link.between))
        for link in found
    )


def ids(row: dict[str, object]) -> str:
    return ", ".join(row["problems"])


@pytest.mark.parametrize("row", ROWS, ids=ids)
def test_every_link_hoped_for_is_found(row):
    found = links([parse(one) for one in row["problems"]], every=True)
    assert [hope for hope in row["hoped"] if not met(hope, found)] == []


def test_the_hopes_are_those_of_the_strings_in_order():
    lines = Path(__file__).with_name("strings.jsonl").read_text(encoding="utf-8").splitlines()
    assert [row["problems"] for row in ROWS] == [json.loads(line)["problems"] for line in lines]
    assert all(2 <= len(row["hoped"]) <= 5 for row in ROWS)


def test_a_hope_that_is_not_true_is_not_met():
    found = links([parse(one) for one in ("30 + 15", "29 + 16")], every=True)
    assert met({"kind": "both-change", "between": [0, 1]}, found)
    assert not met({"kind": "one-changes", "between": [0, 1]}, found)
    assert not met({"kind": "both-change", "between": [0]}, found)
