"""A talk on paper: the problems, the ways with or without names, and what connected them."""

import json
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from enum import StrEnum
from importlib.resources import as_file, files

import typst


class Size(StrEnum):
    """The paper: a sheet, or a poster whole (A1) or on sheets to glue."""

    A4 = "a4"
    LETTER = "letter"
    POSTER = "poster"
    POSTER_A4 = "poster-a4"
    POSTER_LETTER = "poster-letter"


@dataclass(frozen=True, slots=True)
class ToldOnPaper:
    """A way: a name or none, and a drawing, lines or words. `width` is in tenths of a percent."""

    name: str = ""
    also: str = ""
    lines: tuple[str, ...] = ()
    words: str = ""
    svg: str = ""
    alt: str = ""
    width: int = 600


@dataclass(frozen=True, slots=True)
class ProblemOnPaper:
    """A problem with the answers given, as one line, and its ways in the order heard."""

    text: str
    ways: tuple[ToldOnPaper, ...] = ()


@dataclass(frozen=True, slots=True)
class Connection:
    """What a child noticed, in her words; `about` says which problems it was about."""

    words: str
    name: str = ""
    about: str = ""


@dataclass(frozen=True, slots=True)
class Chart:
    """Everything on the paper, already in the language of the class."""

    title: str
    subtitle: str
    language: str
    problems: tuple[ProblemOnPaper, ...]
    connections_title: str
    connections: tuple[Connection, ...] = ()


_MM = {Size.A4: (210, 297), Size.LETTER: (216, 279), Size.POSTER: (594, 841)}
"""Millimetres: A4 and A1 by ISO 216, US letter rounded to whole millimetres."""
_GLUE_MM = 10
"""The strip that two sheets of a poster share: our choice."""
_PAPERS = {
    Size.A4: (Size.A4, 0),
    Size.LETTER: (Size.LETTER, 0),
    Size.POSTER: (Size.POSTER, 0),
    Size.POSTER_A4: (Size.A4, _GLUE_MM),
    Size.POSTER_LETTER: (Size.LETTER, _GLUE_MM),
}
_SHEET_LETTERS = 13
_POSTER_LETTERS = 34
"""Points: a poster is read from a few metres (our choice)."""
_FIXED_DATE = datetime(2026, 1, 1, tzinfo=UTC)
"""The date inside the file, fixed so that the same talk makes the same bytes."""


def chart_pdf(chart: Chart, size: Size) -> bytes:
    """Return the chart as a tagged PDF on the paper asked for."""
    sheet, glue = _PAPERS[size]
    unit = _SHEET_LETTERS if size in (Size.A4, Size.LETTER) else _POSTER_LETTERS
    width, height = _MM[sheet]
    layout = {"width": width, "height": height, "unit": unit, "columns": 2}
    poster = {"glue": glue, "poster": _MM[Size.POSTER][0]}
    return _compiled(json.dumps({**asdict(chart), **layout, **poster}))


def _compiled(chart: str) -> bytes:
    """Return the chart, given as JSON, as a tagged PDF."""
    package = files("waysaid.paper")
    with as_file(package / "fonts") as fonts:
        source: bytes = (package / "chart.typ").read_bytes()
        pdf: bytes = typst.compile(
            source,
            font_paths=typst.Fonts(False, False, [str(fonts)]),
            sys_inputs={"chart": chart},
            pdf_standards=["ua-1"],
            timestamp=_FIXED_DATE,
        )
    return pdf
