"""Turn data and one of our typst sources into a tagged PDF: sheets, fonts, and no date of its own.

Every paper is written as PDF/UA-1 (ISO 14289-1): tagged, with its language, and with words for
each drawing. What is shown comes in as data, so that nobody's words are ever read as markup.
"""

import json
from collections.abc import Mapping
from contextlib import suppress
from datetime import UTC, datetime
from enum import StrEnum
from importlib.resources import as_file, files
from typing import Any, Literal
from unicodedata import category

import typst

from waysaid.number import BLANK


class Sheet(StrEnum):
    """A sheet of paper, upright."""

    A4 = "a4"
    LETTER = "letter"
    A3 = "a3"
    TABLOID = "tabloid"
    A1 = "a1"


MILLIMETRES = {
    Sheet.A4: (210, 297),
    Sheet.LETTER: (216, 279),
    Sheet.A3: (297, 420),
    Sheet.TABLOID: (279, 432),
    Sheet.A1: (594, 841),
}
"""Width and height: by ISO 216, and US letter and tabloid rounded to whole millimetres."""
_FIXED_DATE = datetime(2026, 1, 1, tzinfo=UTC)
"""The date inside the file, fixed so that the same data makes the same bytes."""


_SPACE = "▢"
"""What stands for a blank on screens; our fonts for paper have no such letter."""
_UNSEEN = frozenset({"Cc", "Cs", "Co", "Cn"})
"""Kinds of signs by Unicode that nobody can print: control, half a letter, private, no sign."""


def pressed(source: str, data: Mapping[str, Any]) -> bytes:
    """Return the PDF of one of our sources (its file's name); it reads `data` as JSON.

    Our fonts have no emoji and few scripts, and the standard allows no letter without a shape.
    Where one is missing the machine's fonts may have it; else the standard gives way, and the
    letter is an empty box. The file is tagged in any case. What nobody can print is left out.
    """
    content = (files("waysaid.paper") / source).read_bytes()
    text = json.dumps(_printable(data))
    for system_fonts in (False, True):
        with suppress(typst.TypstError):
            return _compiled(content, text, system_fonts=system_fonts, standard="ua-1")
    return _compiled(content, text, system_fonts=True, standard=None)


def _compiled(
    content: bytes, data: str, *, system_fonts: bool, standard: Literal["ua-1"] | None
) -> bytes:
    with as_file(files("waysaid.paper") / "fonts") as fonts:
        pdf: bytes = typst.compile(
            content,
            font_paths=typst.Fonts(system_fonts, False, [str(fonts)]),
            sys_inputs={"data": data},
            pdf_standards=standard,
            timestamp=_FIXED_DATE,
        )
    return pdf


def _printable(value: Any) -> Any:
    """Return data without signs for control, private use or half of a letter."""
    match value:
        case str():
            shown = value.replace(_SPACE, BLANK.value)
            return "".join(one for one in shown if one in "\n\t" or category(one) not in _UNSEEN)
        case Mapping():
            return {key: _printable(each) for key, each in value.items()}
        case list() | tuple():
            return [_printable(each) for each in value]
    return value
