"""Count what it costs to take down an explanation by each route, and model the time.

Thirty sentences of those used in building, chosen by a fixed hash and not by hand. The times are a
model, the keystroke-level model, and nobody's fingers were timed. `hear_report.py` puts the table
into docs/reference/hearing.md; run alone, this prints it.
"""

import hashlib
import os
import statistics
import sys
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "waysaid.site.settings")

import django  # noqa: E402

django.setup()

from tests.hearing.said import WRITTEN, Sentence, sentences  # noqa: E402
from waysaid.hearing import read  # noqa: E402
from waysaid.hearing.turned import turned  # noqa: E402
from waysaid.number import (  # noqa: E402
    Equation,
    Language,
    Operation,
    number_text,
    parse,
    sign_text,
    text,
)
from waysaid.site.chips import MOST, foreseen, ordered  # noqa: E402

MANY = 30
SHOWN = 6
"""Chips that a desk shows before `more` is tapped: as in chips.js."""
SUGGESTED = 3
"""Lines offered under the words as typed so far. Our choice."""

# Card, Moran & Newell 1980, The keystroke-level model for user performance time with interactive
# systems, Communications of the ACM 23 (7): the operators and seconds of its table, taken here from
# a later page that lists them; the paper itself was not at hand.
K_WORDS = 0.28
"""A key of plain words: an average non-secretary typist, 40 words a minute."""
K_SIGNS = 0.50
"""A key of shorthand, SHIFT among them: random letters, as digits and signs are no words."""
P = 1.10
"""To point at something on a screen."""
H = 0.40
"""To move a hand between the pointer and the keys."""
M = 1.35
"""To prepare in the head."""
B = 0.28
"""To press, once pointed: a key like any other."""
TAP = M + P + B
SHIFTED = frozenset('+?:"<>()_%|*')
"""Signs that take SHIFT, on a keyboard of the United States."""
GOAL = 8.0
"""Seconds, for the median of the best route: the project's own goal."""


@dataclass(frozen=True, slots=True)
class Route:
    """What a route takes: keys, taps, and seconds by the model. The child's name is one tap."""

    keys: int
    taps: int
    seconds: float


def chosen() -> list[Sentence]:
    """Return the thirty: with steps, not kept aside, by the order of a hash of the words."""
    every = [one for path in WRITTEN for one in sentences(path) if one.must and not one.aside]
    return sorted(every, key=lambda one: hashlib.sha256(f"typing {one.said}".encode()).digest())[
        :MANY
    ]


def heard_so(one: Sentence, line: str, language: Language) -> bool:
    """Tell whether a line is read as the very steps that were said, in order, and the answer."""
    reading = read(parse(one.problem), line, language)
    steps = [turned(told.step.equation) for told in reading.told]
    return steps == list(one.must) and reading.answer_text == one.answer


def by_chip(one: Sentence) -> Route | None:
    """Return the cost where a chip says the very steps; a class without history."""
    if not one.right:
        return None
    known = foreseen(one.problem)
    for place, index in enumerate(ordered(known, {}, {})[:MOST]):
        steps = [turned(step.equation) for step in known[index].steps]
        if steps == list(one.must) and one.answer is not None:
            more = place >= SHOWN
            return Route(0, 2 + more, 2 * TAP + more * (P + B))
    return None


def by_shorthand(one: Sentence) -> Route | None:
    """Return the cost of the shortest shorthand that is read as the steps said."""
    lines = [line for line in shorthands(one) if heard_so(one, line, one.language)]
    if not lines:
        return None
    keys = min(len(line) + sum(sign in SHIFTED for sign in line) for line in lines) + 1
    return Route(keys, 1, TAP + H + M + keys * K_SIGNS)


def shorthands(one: Sentence) -> Iterable[str]:
    """Yield ways to write the steps: run on, one by one, each with its answer or without."""
    pairs = [(left_of(step), text(step.right)) for step in one.must]
    plain = [f"{left}={right}" for left, right in pairs]
    ends = ["", f" {one.answer}"] if one.answer else [""]
    for end in ends:
        yield run_on(one.must, first=True) + end
        yield run_on(one.must, first=False) + end
        yield " ".join(plain) + end
        yield ", ".join(plain) + end
        yield " ".join([*(left for left, _ in pairs[:-1]), plain[-1]]) + end
        yield " ".join(left for left, _ in pairs) + end


def left_of(step: Equation) -> str:
    """Return the left side without spaces, where it can do without."""
    return text(step.left).replace(" ", "") if "/" not in text(step.left) else text(step.left)


def run_on(steps: tuple[Equation, ...], *, first: bool) -> str:
    """Return steps that go on from one another as one line: 37+3=40+22=62, or +3 40 +22 62."""
    line, reached = "", None
    for step in steps:
        side, result = step.left, text(step.right)
        if isinstance(side, Operation) and not isinstance(side.right, Operation):
            hop = f"{sign_text(side.sign)}{number_text(side.right)}"  # type: ignore[arg-type]
            hops = side.left == reached or (not first and reached is None)
        else:
            hop, hops = "", False
        if hops:
            line += f"{hop}={result}" if first else f" {hop} {result}"
        else:
            line += f" {left_of(step)}={result}"
        reached = step.right
    return line.strip()


def by_words(one: Sentence) -> Route | None:
    """Return the cost of the child's words as they were said, where they are read rightly."""
    if not heard_so(one, one.said, one.language):
        return None
    keys = len(one.said) + 1
    return Route(keys, 1, TAP + H + M + keys * K_WORDS)


def by_suggestion(one: Sentence) -> Route | None:
    """Return the cost of the fewest words after which the way is among three lines to tap."""
    words = one.said.split()
    for many in range(1, len(words)):
        start = " ".join(words[:many])
        if list(one.must) in suggestions(one, start):
            return Route(len(start), 2, TAP + H + M + len(start) * K_WORDS + H + TAP)
    return None


def suggestions(one: Sentence, start: str) -> list[list[Equation]]:
    """Return the steps of the first ways that go on from what the words so far say."""
    if not one.right or one.answer is None:
        return []
    reading = read(parse(one.problem), start, one.language)
    said = [turned(told.step.equation) for told in reading.told]
    if not said:
        return []
    known = foreseen(one.problem)
    told = [[turned(step.equation) for step in known[at].steps] for at in ordered(known, {}, {})]
    return [steps for steps in told if steps[: len(said)] == said][:SUGGESTED]


ROUTES: dict[str, Callable[[Sentence], Route | None]] = {
    "chip": by_chip,
    "shorthand": by_shorthand,
    "words": by_words,
    "words, suggested line": by_suggestion,
}


def section() -> str:
    """Return the part of the page: a row a sentence, and the middle of every route."""
    lines, best = [], []
    listed = chosen()
    found = {name: [route(one) for one in listed] for name, route in ROUTES.items()}
    for place, one in enumerate(listed):
        costs = [found[name][place] for name in ROUTES]
        times = [cost.seconds for cost in costs if cost]
        best.append(min(times) if times else None)
        shown = f"{best[-1]:.1f}" if best[-1] is not None else "none"
        cells = " | ".join(cell(cost) for cost in costs)
        words = len(one.said.split())
        lines.append(f"| `{one.problem}`, {one.families[0]}, {words} | {cells} | {shown} |")
    return HEAD + "\n".join(lines) + "\n" + middle(found, best)


def cell(cost: Route | None) -> str:
    """Return a cell: keys + taps, and the seconds."""
    return f"{cost.keys}+{cost.taps} · {cost.seconds:.1f}" if cost else ""


def middle(found: dict[str, list[Route | None]], best: list[float | None]) -> str:
    """Return what the table comes to."""
    cells = []
    for costs in found.values():
        there = [cost.seconds for cost in costs if cost]
        cells.append(f"{statistics.median(there):.1f} in {len(there)}" if there else "")
    times = [one for one in best if one is not None]
    at_best = statistics.median(times)
    met = "met" if at_best <= GOAL else "not met"
    return (
        f"| **median, and in how many** | {' | '.join(cells)} | {at_best:.1f} in {len(times)} |\n\n"
        f"Goal: the median of the best route at most {GOAL:.0f} s: {met}. Some route takes down "
        f"{len(times)} of {len(best)} rightly.\n"
    )


HEAD = f"""
## What it costs to type

Thirty sentences of those used in building, chosen by a fixed hash. A cell is keys + taps · seconds;
an empty one is a route that does not give the very steps and the answer that were said. Every route
begins with a tap on the child's name. SHIFT is a key of its own, as is Enter.

- **chip**: one of the {MOST} ways foreseen, for a class without history.
- **shorthand**: the shortest line that is read as the steps said.
- **words**: the child's own words, typed whole. (Dictated, they cost no keys; not modelled.)
- **words, suggested line**: words until the way is one of {SUGGESTED} lines that go on from what
  was heard, then a tap. The desk does not offer these yet: the column is what they would save.

Seconds are the keystroke-level model (Card, Moran and Newell 1980), not a measurement:
{K_WORDS} s for a key of plain words (an average non-secretary typist, 40 words a minute),
{K_SIGNS:.2f} s for a key of shorthand (as random letters),
{P:.2f} s to point and {B} s to press, {H:.2f} s for a hand to the keys, {M} s to get ready.
The constants come from a later page that lists those of the paper, which was not at hand.

| problem, family, words said | chip | shorthand | words | words, suggested line | best, s |
|---|---|---|---|---|--:|
"""

if __name__ == "__main__":
    print(section())
