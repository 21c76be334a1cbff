"""Measure how the sentences of the tests are heard, and write docs/reference/hearing.md."""

import sys
from collections import Counter, defaultdict
from collections.abc import Iterable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from scripts.typing_cost import section as typing_cost  # noqa: E402
from tests.hearing.lies import Fault, faults, heard_of  # noqa: E402
from tests.hearing.said import (  # noqa: E402
    EXAMPLES,
    WRITTEN,
    Measure,
    Sentence,
    heard,
    measured,
    sentences,
)
from tests.hearing.speaker import Utterance, utterances  # noqa: E402
from waysaid.hearing import Reading  # noqa: E402
from waysaid.number import Language  # noqa: E402

PAGE = ROOT / "docs" / "reference" / "hearing.md"
BARS = {"family": 92, "found": 92, "unsaid": 8, "answer": 97, "right": 98}
SPLITS = {"used in building": False, "kept aside": True}
GENERATED = (1_000, 4_000)
"""The seed and the number of the generated utterances; the tests use other seeds."""
ENOUGH = 30
"""Fewer readings than these in a tenth say little: our choice."""
HEAD = """# How well words are heard

`scripts/hear_report.py` writes this page from the sentences in `tests/hearing/sentences`. They were
written for Waysaid without looking at the code that hears them. A third of them, chosen by a fixed
hash, is kept aside: nobody looks at those while building, only at their totals here. Other files
were written and labelled before they were heard, then heard whole, and are used in building since;
how they were heard first stands below. Shares are in 100. *Steps not said* are those given as said
that no child said; the fewer the better. A step is found where it stands as it was said, its sum or
product turned or not, or in a second writing that is listed with the sentence.

"""
COLUMNS = """\
| sentences | how many | family right | steps found | not said | answer | right or wrong |
|---|--:|--:|--:|--:|--:|--:|
"""
FIRST = f"""
Heard for the first time, as they were labelled first, before anything was changed for them
(the figures of that day, not measured again; from yard to fair they are of 2026-11-27 and those
behind of 2026-11-28, in this order, each after the engine was mended for what the one before had
shown; garden is of groups, fractions, decimals, percents and comparisons alone, orchard of
products, quotients and arrays, river of fractions, decimals, percents, comparisons, estimates and
missing numbers, meadow of sums, differences, three addends and missing numbers, harbour of products
and sharings, bakery, heard by the same engine as harbour, of fractions, decimals, percents and
comparisons, fair of every kind, after what harbour and bakery had shown, island of every kind, and
library, before anything was mended for island, half of products and sharings and half of fractions,
decimals, percents and comparisons, winter of every kind, after both;
brook, of every kind, and tower, a quarter of it pictures, before anything was mended for either;
lantern, of every kind, cedar, of the kinds and lengths of the first examples, and quarry, of every
kind, after both, before anything was mended for any of the three):

{COLUMNS}\
| morning | 185 | 91.4 | 94.9 | 2.8 | 94.1 | 93.9 |
| slices | 149 | 92.6 | 86.9 | 5.0 | 94.6 | 96.5 |
| tables | 173 | 91.9 | 91.7 | 2.8 | 94.2 | 95.7 |
| yard | 171 | 91.8 | 90.3 | 3.3 | 94.7 | 97.5 |
| porch | 137 | 92.0 | 94.3 | 3.6 | 98.5 | 98.4 |
| garden | 101 | 91.1 | 89.9 | 5.8 | 97.0 | 96.9 |
| orchard | 130 | 92.3 | 93.0 | 6.1 | 96.2 | 97.4 |
| river | 130 | 88.5 | 92.4 | 6.7 | 96.9 | 97.4 |
| meadow | 140 | 93.6 | 96.0 | 1.9 | 96.4 | 99.1 |
| harbour | 150 | 95.3 | 95.6 | 2.1 | 97.3 | 98.5 |
| bakery | 150 | 88.0 | 88.9 | 8.9 | 97.3 | 98.5 |
| fair | 200 | 92.5 | 93.9 | 2.5 | 96.5 | 96.1 |
| island | 200 | 91.0 | 91.8 | 5.3 | 94.5 | 95.5 |
| library | 200 | 85.5 | 83.7 | 9.6 | 89.0 | 90.1 |
| winter | 200 | 93.0 | 91.7 | 4.6 | 95.0 | 97.5 |
| brook | 200 | 93.0 | 95.6 | 2.6 | 97.5 | 97.6 |
| tower | 200 | 86.5 | 91.8 | 5.4 | 96.0 | 96.6 |
| lantern | 160 | 95.6 | 96.0 | 2.7 | 96.9 | 96.6 |
| cedar | 160 | 96.2 | 95.6 | 1.6 | 99.4 | 100.0 |
| quarry | 200 | 94.5 | 93.7 | 3.3 | 94.5 | 94.1 |
"""
SURE = """
## How sure

What is said to be sure, and how often the family is then right, by tenths of sureness: how many
readings, how sure they were on average, how many were right in 100. In generated talk the truth is
known from the way that was spoken; wrong work is left out of it, as a slip has no family.

| sure | used in building | sure | right | kept aside | sure | right | generated | sure | right |
|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|
"""
LIES = """
## What must never happen

A noisy speaker (`tests/hearing/speaker.py`) says the ways and the slips of problems of nine kinds,
in English and Spanish by turns: results left out, "add three to that", results first, false starts
taken back, fillers, homophones. {number} utterances that no test uses; how many had each fault. The
aim is none.

| fault | utterances | in 1,000 |
|---|--:|--:|
"""

Judged = tuple[int, bool]
"""How sure a reading was, and whether its family was right."""


def row(name: str, listed: list[Sentence]) -> str:
    """Return a line of the table of sentences."""
    measure: Measure = measured(listed)
    shares = " | ".join(f"{measure.share(one):.1f}" for one in BARS)
    return f"| {name} | {len(listed)} | {shares} |"


def told() -> list[str]:
    """Return the table of the sentences: each split by file and by language."""
    lines = [(HEAD + COLUMNS).rstrip("\n"), row("examples, from the issue", sentences(EXAMPLES))]
    for name, aside in SPLITS.items():
        listed = split(aside)
        lines.append(row(f"**{name}**", listed))
        for path in WRITTEN:
            part = [one for one in sentences(path) if one.aside is aside]
            lines += [row(f"{name}: {path.stem}", part)] if part else []
        for language in Language:
            part = [one for one in listed if one.language is language]
            lines.append(row(f"{name}: in {language.value}", part))
    bars = " | ".join(str(bar) for bar in BARS.values())
    return [*lines, f"| the bars that were set | | {bars} |", *FIRST.rstrip("\n").split("\n")]


def split(aside: bool) -> list[Sentence]:
    """Return the sentences of one split."""
    return [one for path in WRITTEN for one in sentences(path) if one.aside is aside]


def judged(reading: Reading, families: Iterable[str]) -> Judged:
    """Return how sure a reading is, and whether its family is one of those."""
    return reading.sure, (reading.family.value if reading.family else "unclear") in families


def calibration(tables: list[list[Judged]]) -> list[str]:
    """Return the table of sureness, and in how many tenths it is more than five points off."""
    lines, off = [SURE.rstrip("\n")], Counter[int]()
    for tenth in range(10):
        cells = []
        for place, table in enumerate(tables):
            here = [one for one in table if min(one[0] // 10, 9) == tenth]
            cells.append(_cell(here))
            off[place] += len(here) >= ENOUGH and abs(_mean(here, 0) - 100 * _mean(here, 1)) > 5
        lines.append(f"| {10 * tenth} to {10 * tenth + 9 + (tenth == 9)} | {' | '.join(cells)} |")
    names = (*SPLITS, "generated")
    said = ", ".join(f"{off[place]} ({name})" for place, name in enumerate(names))
    end = f"Tenths with {ENOUGH} readings or more that are over five points off: {said}."
    return [*lines, "", end]


def _cell(here: list[Judged]) -> str:
    return f"{len(here)} | {_mean(here, 0):.0f} | {100 * _mean(here, 1):.0f}" if here else "0 | |"


def _mean(here: list[Judged], part: int) -> float:
    return sum(one[part] for one in here) / len(here)


def lies(listed: list[tuple[Utterance, Reading]]) -> list[str]:
    """Return the table of faults in generated talk."""
    found: dict[Fault, int] = defaultdict(int)
    for said, reading in listed:
        for fault in faults(said, reading):
            found[fault] += 1
    head = LIES.format(number=f"{len(listed):,}").rstrip("\n")
    rows = [
        f"| {one.value} | {found[one]} | {1000 * found[one] / len(listed):.1f} |" for one in Fault
    ]
    return [head, *rows]


def main() -> None:
    """Write the page."""
    generated = [(one, heard_of(one)) for one in utterances(*GENERATED)]
    tables = [
        [judged(heard(one), one.families) for one in split(aside)] for aside in SPLITS.values()
    ]
    tables.append([judged(reading, said.families) for said, reading in generated if said.right])
    lines = [*told(), *calibration(tables), *lies(generated), typing_cost().rstrip("\n")]
    PAGE.write_text("\n".join(lines) + "\n", encoding="utf-8")
    print(PAGE.read_text(encoding="utf-8"))


if __name__ == "__main__":
    main()
