"""Every source that the code or the data names is listed, and nothing is listed for nothing."""

import re
from pathlib import Path

from tests.published.rows import HERE, rows
from tests.ways.test_effort import ORDERINGS
from waysaid.number import parse
from waysaid.slips import foresee
from waysaid.slips.catalogue import RULES
from waysaid.slips.shares import SHARES
from waysaid.slips.slip import OUR_GUESS
from waysaid.ways import FAMILY_NOTES, Family, published_names
from waysaid.ways.costs import COSTS, OUR_CHOICE

README = Path(HERE / "README.md").read_text(encoding="utf-8")
LISTED = {
    name
    for line in README.splitlines()
    if line.startswith("| `")
    for name in re.findall(r"`([^`]+)`", line.split("|")[1])
}


def _named() -> set[str]:
    data = (*rows("worked_examples.jsonl"), *rows("wrong_answers.jsonl"))
    named = {row["source"] for row in data}
    named |= {cost.source for cost in COSTS} | {row[1] for row in ORDERINGS}
    named |= {rule.source for rule in RULES} | {share.source for share in SHARES.values()}
    named |= {slip.source for slip in foresee(parse("8 + 4 = _ + 5"))}
    named |= {note.source for note in FAMILY_NOTES.values()}
    named |= {each.source for family in Family for each in published_names(family).values()}
    return named - {OUR_CHOICE, OUR_GUESS}


def test_every_named_source_is_listed() -> None:
    assert _named() <= LISTED


def test_every_listed_source_is_named() -> None:
    assert LISTED - _named() == {"eng-map2015"}
