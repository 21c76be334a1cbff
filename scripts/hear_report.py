"""Measure how the sentences of the tests are heard, and write docs/reference/hearing.md."""

import sys
from collections import defaultdict
from collections.abc import Iterable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from tests.hearing.said import (  # noqa: E402
    EXAMPLES,
    WRITTEN,
    Measure,
    Sentence,
    heard,
    measured,
    sentences,
)

PAGE = ROOT / "docs" / "reference" / "hearing.md"
BARS = {"family": 92, "found": 92, "unsaid": 8, "answer": 97, "right": 98}
HEAD = """# How well words are heard

`scripts/hear_report.py` writes this page from the sentences in `tests/hearing/sentences`. They were
written for Waysaid without looking at the code that hears them. A third of them, chosen by a fixed
hash, is kept aside: nobody looks at those while building, only at their totals here. Shares are in
100. *Steps not said* are those given as said that no child said; the fewer the better.

| sentences | how many | family right | steps found | not said | answer | right or wrong |
|---|--:|--:|--:|--:|--:|--:|
"""
SURE = """
## How sure

What is said to be sure, and how often the family is then right, by tenths of sureness.

| sure | used in building | right | kept aside | right |
|---|--:|--:|--:|--:|
"""


def row(name: str, number: int, measure: Measure) -> str:
    """Return a line of the table."""
    return f"| {name} | {number} | {' | '.join(f'{measure.share(one):.1f}' for one in BARS)} |"


def calibration(listed: Iterable[Sentence]) -> dict[int, tuple[int, int]]:
    """Return how many families were right of how many, by tenths of sureness."""
    found: dict[int, list[bool]] = defaultdict(list)
    for one in listed:
        reading = heard(one)
        family = reading.family.value if reading.family else "unclear"
        found[min(reading.sure // 10, 9)].append(family in one.families)
    return {tenth: (sum(rights), len(rights)) for tenth, rights in found.items()}


def main() -> None:
    """Write the page."""
    lines = [HEAD.rstrip("\n")]
    examples = sentences(EXAMPLES)
    lines.append(row("examples, from the issue", len(examples), measured(examples)))
    every = [one for path in WRITTEN for one in sentences(path)]
    splits = {name: [one for one in every if one.aside is aside] for name, aside in SPLITS.items()}
    for name, listed in splits.items():
        lines.append(row(f"**{name}**", len(listed), measured(listed)))
        for path in WRITTEN:
            part = [one for one in sentences(path) if one.aside is SPLITS[name]]
            lines.append(row(f"{name}: {path.stem}", len(part), measured(part)))
    bars = " | ".join(str(bar) for bar in BARS.values())
    lines.append(f"| the bars that were set | | {bars} |")
    lines.append("\n" + SURE.strip("\n"))
    tables = [calibration(listed) for listed in splits.values()]
    for tenth in range(10):
        cells = []
        for table in tables:
            right, number = table.get(tenth, (0, 0))
            cells.append(f"{number} | {100 * right / number:.0f}" if number else "0 | ")
        lines.append(f"| {10 * tenth} to {10 * tenth + 9 + (tenth == 9)} | {' | '.join(cells)} |")
    PAGE.write_text("\n".join(lines) + "\n", encoding="utf-8")
    print(PAGE.read_text(encoding="utf-8"))


SPLITS = {"used in building": False, "kept aside": True}

if __name__ == "__main__":
    main()
