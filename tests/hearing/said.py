"""Children's sentences with what is to be heard in them, and how a reading is measured."""

import hashlib
import json
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from waysaid.hearing import Reading, read
from waysaid.hearing.turned import turned
from waysaid.number import Equation, Language, fits, parse, parse_equation

HERE = Path(__file__).parent
EXAMPLES = HERE / "heard_examples.jsonl"
WRITTEN = sorted((HERE / "sentences").glob("*.jsonl"))
READ_WHOLE = frozenset(
    {"market", "morning", "slices", "garden", "tables", "yard", "porch", "orchard", "river"}
    | {"meadow", "harbour", "bakery", "fair", "island", "library", "winter"}
    | {"brook", "tower", "lantern", "cedar", "quarry"}
)
"""Files that were measured whole before anybody read them, and all read while building since."""


@dataclass(frozen=True, slots=True)
class Sentence:
    """What a child said of a problem: the steps in it, those that may be heard too, the answer."""

    problem: str
    said: str
    language: Language
    must: tuple[Equation, ...]
    may: tuple[Equation, ...]
    answer: str | None
    families: tuple[str, ...]
    right: bool
    aside: bool
    """Whether it is kept aside while the engine is built: a third of a file, by a fixed hash."""


def sentences(path: Path) -> list[Sentence]:
    """Return the sentences of a file."""
    kept = path.stem not in READ_WHOLE
    lines = path.read_text("utf-8").splitlines()
    return [_sentence(json.loads(line), kept) for line in lines if line]


def _third(problem: str, said: str) -> bool:
    return hashlib.sha256(f"{problem}|{said}".encode()).digest()[0] % 3 == 0


def _sentence(row: dict, kept: bool) -> Sentence:
    def steps(name: str) -> tuple[Equation, ...]:
        return tuple(turned(parse_equation(step)) for step in row.get(name, []))

    language = Language(row.get("lang", "en"))
    said = (steps("must"), steps("may"), row["answer"], tuple(row["family"]))
    aside = kept and _third(row["problem"], row["said"])
    return Sentence(row["problem"], row["said"], language, *said, row.get("right", True), aside)


@dataclass(frozen=True, slots=True)
class Measure:
    """How many of how many: families, steps said and found, steps not said, answers, verdicts."""

    family: tuple[int, int]
    found: tuple[int, int]
    unsaid: tuple[int, int]
    answer: tuple[int, int]
    right: tuple[int, int]

    def share(self, name: str) -> float:
        """Return a measure in 100."""
        part, whole = getattr(self, name)
        return 100 * part / whole if whole else 100.0


@cache
def heard(sentence: Sentence) -> Reading:
    """Return the reading of a sentence; each is heard once."""
    return read(parse(sentence.problem), sentence.said, sentence.language)


def _stands(wanted: Equation, steps: list[Equation], may: tuple[Equation, ...]) -> bool:
    """Tell whether a step was found: as it is, or in a second writing with the same result."""
    return any(step == wanted or (step in may and step.right == wanted.right) for step in steps)


def measured(listed: Iterable[Sentence]) -> Measure:
    """Return the measures of the readings of some sentences."""
    family = found = must = given = unsaid = answer = right = wanted = number = 0
    for one in listed:
        number += 1
        reading = heard(one)
        steps = [turned(told.step.equation) for told in reading.told]
        family += (reading.family.value if reading.family else "unclear") in one.families
        found += sum(_stands(step, steps, one.may) for step in one.must)
        must += len(one.must)
        given += len(steps)
        unsaid += sum(step not in one.must and step not in one.may for step in steps)
        answer += reading.answer_text == one.answer
        if one.answer is not None:
            wanted += 1
            text = reading.answer_text
            right += text is not None and fits(parse(one.problem), text) is one.right
    return Measure(
        (family, number), (found, must), (unsaid, given), (answer, number), (right, wanted)
    )
