"""A line as typed, read: for the desk's preview, and for the record of the one screen."""

from functools import lru_cache
from typing import Any

from waysaid.drawing import Picture, Telling, lines
from waysaid.hearing import Part, Reading, read
from waysaid.number import parse
from waysaid.site.answer_view import in_words
from waysaid.site.chips import picture_of
from waysaid.site.desk_notes import slip_heard
from waysaid.site.ears import Ears
from waysaid.site.heard_view import parts_of, rivals_of, taken_back
from waysaid.site.image_view import seen_view
from waysaid.site.wording import Wording

CLEAR = 60
"""How sure in 100 a reading is that the desk shows without `perhaps`: our choice."""


@lru_cache(maxsize=512)
def _read(problem_text: str, line: str, ears: Ears) -> Reading:
    problem = parse(problem_text)
    return read(problem, line, ears.language, dict(ears.before), dict(ears.leaning))


def way_from_line(problem_text: str, line: str, ears: Ears) -> dict[str, Any]:
    """Return what a line says as the parts of a `way-shared` event."""
    return _told(_read(problem_text, line, ears), ears)


def reading_of(problem_text: str, line: str, ears: Ears) -> Reading:
    """Return how a line is read, for what is said after it."""
    return _read(problem_text, line, ears)


def usual_picture(problem_text: str, line: str, ears: Ears) -> str:
    """Return how what a line says is drawn when nobody asks for a picture."""
    reading = _read(problem_text, line, ears)
    return _picture(_telling(problem_text, reading), reading)


def preview(problem_text: str, line: str, wording: Wording, ears: Ears) -> dict[str, Any]:
    """Return what the desk shows of a line while it is typed; it corrects nothing.

    `told` are the steps in parts, said or implied; `taken_back` the words that no longer stand;
    `rivals` the runners-up, each as it would be recorded; `slip` a note for the teacher alone.
    """
    reading = _read(problem_text, line, ears)
    return {
        **_shown(problem_text, reading, wording, ears),
        "perhaps": reading.sure < CLEAR,
        "told": [parts_of(told, wording.language) for told in reading.told],
        "by_digits": any(told.by_digits for told in reading.told),
        "slip": slip_heard(parse(problem_text), reading.answer_text, wording.language.value),
        "taken_back": taken_back(reading),
        "rivals": [_shown(problem_text, rival, wording, ears) for rival in rivals_of(reading)],
    }


def _shown(problem_text: str, reading: Reading, wording: Wording, ears: Ears) -> dict[str, Any]:
    """Return a reading as it would be recorded, with its lines and its family's name."""
    telling = _telling(problem_text, reading)
    family = reading.family
    return {
        **_told(reading, ears),
        "lines": list(lines(telling, wording.language)) if telling.steps else [],
        "family_name": wording.name(family) if family else None,
        "picture": _picture(telling, reading),
        **seen_view(telling, wording.language.value),
    }


def _told(reading: Reading, ears: Ears) -> dict[str, Any]:
    return {
        "steps": [
            {
                "kind": told.step.kind.value,
                "equation": told.step.text,
                "unsaid": [part.value for part in told.unsaid],
            }
            for told in reading.told
        ],
        "words": reading.words,
        "family": reading.family.value if reading.family else None,
        "answer": in_words(reading.answer_text, ears.language.value),
    }


def _picture(telling: Telling, reading: Reading) -> str:
    """Return the picture it is drawn as; the words where no part of a step was said."""
    if all(set(told.unsaid) == set(Part) for told in reading.told):
        return Picture.WORDS.value
    return picture_of(telling).value


def _telling(problem_text: str, reading: Reading) -> Telling:
    hidden = tuple(frozenset(part.value for part in told.unsaid) for told in reading.told)
    steps = tuple(told.step for told in reading.told)
    return Telling(parse(problem_text), steps, hidden, reading.number)
