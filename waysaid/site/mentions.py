"""A child's name where somebody wrote it: in words, noticings, titles, questions that are kept."""

import re
import unicodedata
from collections.abc import Collection, Iterable, Iterator, Mapping
from typing import Any

WRITTEN = frozenset({"words", "word", "title", "why"})
"""The parts of what is kept, in JSON, that somebody may have written a name in."""


def pattern(name: str) -> re.Pattern[str]:
    """Return what finds a name as a whole word, in any case."""
    return re.compile(rf"(?<!\w){re.escape(_composed(name))}(?!\w)", re.IGNORECASE)


def any_of(names: Iterable[str]) -> re.Pattern[str] | None:
    """Return what finds any of some names, the longest first; None for no names."""
    written = sorted({re.escape(_composed(name)) for name in names}, key=len, reverse=True)
    return re.compile(rf"(?<!\w)(?:{'|'.join(written)})(?!\w)", re.IGNORECASE) if written else None


def without(found: re.Pattern[str], text: str, instead: str) -> str:
    """Return a text with other words in the place of a name; as it was where it is not there."""
    composed = _composed(text)
    return found.sub(lambda _name: instead, composed) if found.search(composed) else text


def without_in(
    found: re.Pattern[str],
    value: Any,
    instead: str,
    *,
    here: bool = False,
    always: Collection[str] = (),
) -> Any:
    """Return a JSON value with the name replaced in its written parts, and nowhere else.

    With `here` the value itself is such a part; `always` names more of them.
    """
    if isinstance(value, str):
        return without(found, value, instead) if here else value
    if isinstance(value, Mapping):
        return {
            key: without_in(found, each, instead, here=key in WRITTEN or key in always)
            for key, each in value.items()
        }
    if isinstance(value, list):
        return [without_in(found, each, instead, here=here) for each in value]
    return value


def written_in(value: Any, *, here: bool = False) -> Iterator[str]:
    """Yield what is written in a JSON value."""
    if isinstance(value, str) and here and value:
        yield value
    elif isinstance(value, Mapping):
        for key, each in value.items():
            yield from written_in(each, here=key in WRITTEN)
    elif isinstance(value, list):
        for each in value:
            yield from written_in(each, here=here)


def _composed(text: str) -> str:
    """Return letters and their marks as one sign each, as names on a list are kept (NFC)."""
    return unicodedata.normalize("NFC", text)
