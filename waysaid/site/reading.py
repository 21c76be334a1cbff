"""A line as typed, read: for the desk's preview, and for the record of the one screen."""

from functools import lru_cache
from typing import Any

from waysaid.drawing import Telling, lines
from waysaid.hearing import Reading, read
from waysaid.number import Language, parse
from waysaid.site.answer_view import in_words
from waysaid.site.chips import pictures_of, thumbnail
from waysaid.site.image_view import seen_view
from waysaid.site.wording import Wording


@lru_cache(maxsize=512)
def _read(problem_text: str, line: str, language: str) -> Reading:
    return read(parse(problem_text), line, Language(language))


def way_from_line(problem_text: str, line: str, board_language: str) -> dict[str, Any]:
    """Return what a line says as the parts of a `way-shared` event."""
    reading = _read(problem_text, line, board_language)
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
        "answer": in_words(reading.answer_text, board_language),
    }


def usual_picture(problem_text: str, line: str, board_language: str) -> str:
    """Return how what a line says is drawn when nobody asks for a picture."""
    return str(
        pictures_of(_telling(problem_text, _read(problem_text, line, board_language)))["picture"]
    )


def _telling(problem_text: str, reading: Reading) -> Telling:
    hidden = tuple(frozenset(part.value for part in told.unsaid) for told in reading.told)
    steps = tuple(told.step for told in reading.told)
    return Telling(parse(problem_text), steps, hidden, reading.number)


def preview(problem_text: str, line: str, wording: Wording, board_language: str) -> dict[str, Any]:
    """Return what the desk shows of a line while it is typed; it corrects nothing."""
    reading = _read(problem_text, line, board_language)
    telling = _telling(problem_text, reading)
    family = reading.family
    return {
        **way_from_line(problem_text, line, board_language),
        "lines": list(lines(telling, wording.language)) if telling.steps else [],
        "family_name": wording.name(family) if family else None,
        "scene": thumbnail(telling, wording.language.value),
        **pictures_of(telling),
        **seen_view(telling, wording.language.value),
    }
