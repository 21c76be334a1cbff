"""A talk on paper: the problems, the ways with or without names, and what connected them."""

from dataclasses import asdict, dataclass
from enum import StrEnum

from waysaid.paper.press import MILLIMETRES, Sheet, pressed


class Size(StrEnum):
    """The paper: a sheet, a poster whole (A1) or on sheets to glue, or one larger page."""

    A4 = "a4"
    LETTER = "letter"
    A3 = "a3"
    TABLOID = "tabloid"
    POSTER = "poster"
    POSTER_A4 = "poster-a4"
    POSTER_LETTER = "poster-letter"
    POSTER_A3 = "poster-a3"
    POSTER_TABLOID = "poster-tabloid"


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


_GLUE_MM = 10
"""The strip that two sheets of a poster share: our choice."""
_PAPERS = {
    Size.A4: (Sheet.A4, 0),
    Size.LETTER: (Sheet.LETTER, 0),
    Size.A3: (Sheet.A3, 0),
    Size.TABLOID: (Sheet.TABLOID, 0),
    Size.POSTER: (Sheet.A1, 0),
    Size.POSTER_A4: (Sheet.A4, _GLUE_MM),
    Size.POSTER_LETTER: (Sheet.LETTER, _GLUE_MM),
    Size.POSTER_A3: (Sheet.A3, _GLUE_MM),
    Size.POSTER_TABLOID: (Sheet.TABLOID, _GLUE_MM),
}
_GLUED = ((34, 3),)
_USUAL = ((13, 2), (12, 2), (11, 2), (11, 3))
_LARGER = ((28, 2), (24, 2), (20, 2), (18, 3), (16, 3), (14, 3), (13, 4), (12, 4), (11, 4))
_POSTER = ((34, 2), (34, 3), (30, 3), (28, 4))
_LAYOUTS = {
    Size.A4: _USUAL,
    Size.LETTER: _USUAL,
    Size.A3: _LARGER,
    Size.TABLOID: _LARGER,
    Size.POSTER: _POSTER,
}
_ON_MORE_PAGES = {Size.A3: (14, 3), Size.TABLOID: (14, 3), Size.POSTER: (34, 3)}
"""Points, and columns: the first with which the chart fits on one page, or those for more pages, if
none are named the first of all. A poster is read from a few metres (our choice)."""


def chart_pdf(chart: Chart, size: Size) -> bytes:
    """Return the chart as a tagged PDF on the paper asked for."""
    sheet, glue = _PAPERS[size]
    width, height = MILLIMETRES[sheet]
    layouts = _LAYOUTS.get(size, _GLUED)
    more = _ON_MORE_PAGES.get(size, layouts[0])
    layout = {"width": width, "height": height, "layouts": layouts, "more": more}
    poster = {"glue": glue, "poster": _poster_width(width, glue)}
    return pressed("chart.typ", {**asdict(chart), **layout, **poster})


def _poster_width(sheet: int, glue: int) -> int:
    """Return how wide a poster of such sheets is: as near to A1 as whole sheets come, no wider."""
    widest, strip = MILLIMETRES[Sheet.A1][0], sheet - glue
    across = max(1, (2 * widest + strip) // (2 * strip))
    return min(widest, across * strip + glue)
