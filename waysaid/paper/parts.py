"""A paper as a row of parts, one below the other, and the PDF they make.

All but the chart are made of these. The words come in ready, in the paper's language.
"""

from dataclasses import asdict, dataclass

from waysaid.paper.press import MILLIMETRES, Sheet, pressed


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drawing as SVG, its words for who does not see it, and its width in 100 of a column."""

    svg: str
    alt: str
    width: int = 100


@dataclass(frozen=True, slots=True)
class Heading:
    """The name of what follows; `level` 2 to 4, none left out on the way down."""

    text: str
    level: int = 2


@dataclass(frozen=True, slots=True)
class Words:
    """A paragraph."""

    text: str


@dataclass(frozen=True, slots=True)
class Caution:
    """A paragraph in a frame, to be read before the rest is used."""

    text: str


@dataclass(frozen=True, slots=True)
class Points:
    """Short sentences, one a line."""

    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Problem:
    """A problem large on a line of its own, a quick image drawn; why it is there below it."""

    text: str
    why: str = ""
    drawing: Drawing | None = None


@dataclass(frozen=True, slots=True)
class Problems:
    """Problems beside each other, three abreast."""

    problems: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class Way:
    """A way that one may hear: what it is called, its lines, a drawing if one suits it."""

    name: str
    lines: tuple[str, ...]
    drawing: Drawing | None = None


@dataclass(frozen=True, slots=True)
class Ways:
    """Ways beside each other, two abreast."""

    ways: tuple[Way, ...]


@dataclass(frozen=True, slots=True)
class Room:
    """A problem with room to write: a line above, then a table of empty rows below its heads.

    `widths` are the columns' shares of the width. It stays whole on its page.
    """

    problem: Problem
    line: str
    heads: tuple[str, ...]
    widths: tuple[int, ...]
    rows: int


@dataclass(frozen=True, slots=True)
class Table:
    """Rows of texts below the columns' heads; `widths` are their shares of the width."""

    heads: tuple[str, ...]
    widths: tuple[int, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Lines:
    """So many lines to write on."""

    many: int


@dataclass(frozen=True, slots=True)
class Names:
    """Names in columns; with a box before each where they are to be ticked."""

    names: tuple[str, ...]
    boxes: bool = False


Part = Heading | Words | Caution | Points | Problem | Problems | Ways | Room | Table | Lines | Names


@dataclass(frozen=True, slots=True)
class Paper:
    """A whole paper in one language: its title, what is below it, and its parts."""

    title: str
    under: str
    language: str
    parts: tuple[Part, ...]


def paper_pdf(paper: Paper, sheet: Sheet) -> bytes:
    """Return the paper as a tagged PDF on such sheets."""
    width, height = MILLIMETRES[sheet]
    parts = [{"kind": type(part).__name__.lower(), **asdict(part)} for part in paper.parts]
    about = {"title": paper.title, "under": paper.under, "language": paper.language}
    return pressed("page.typ", {**about, "parts": parts, "width": width, "height": height})
