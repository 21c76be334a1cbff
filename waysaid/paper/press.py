"""Turn data and one of our typst sources into a tagged PDF: sheets, fonts, and no date of its own.

Every paper is written as PDF/UA-1 (ISO 14289-1): tagged, with its language, and with words for
each drawing. What is shown comes in as data, so that nobody's words are ever read as markup.
"""

import json
from collections.abc import Mapping
from datetime import UTC, datetime
from enum import StrEnum
from importlib.resources import as_file, files
from typing import Any

import typst


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


def pressed(source: str, data: Mapping[str, Any]) -> bytes:
    """Return the PDF of one of our sources (its file's name); it reads `data` as JSON."""
    package = files("waysaid.paper")
    with as_file(package / "fonts") as fonts:
        pdf: bytes = typst.compile(
            (package / source).read_bytes(),
            font_paths=typst.Fonts(False, False, [str(fonts)]),
            sys_inputs={"data": json.dumps(data)},
            pdf_standards=["ua-1"],
            timestamp=_FIXED_DATE,
        )
    return pdf
