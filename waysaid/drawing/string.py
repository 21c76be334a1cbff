"""A string for connecting: its problems one under another, and what the class noticed on them.

A noticing rings its numbers; joined ones are tied by lines, rows by arcs at the side. Where more
than one noticing marks a number, the second underlines it and the third does so twice, so that
each stays legible. Marks say nothing of whether a noticing is true.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from waysaid.drawing.fit import Drawn, largest_in, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Dot, Label, Line, Path, Shape
from waysaid.drawing.telling import Frame
from waysaid.drawing.words import listed, phrase, sentence
from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Language,
    Print,
    Problem,
    leaves,
    number_text,
    text,
)

Spot = tuple[int, int | str]
"""A row of the string, and in it a number (its place among them), "answer" or "row"."""


@dataclass(frozen=True, slots=True)
class StringRow:
    """One problem, and the answers the class gave, as they were said."""

    problem: Problem
    answers: Sequence[str] = ()


@dataclass(frozen=True, slots=True)
class StringMark:
    """One noticing: what it marks, and whether the marks are joined."""

    places: Sequence[Spot]
    join: bool = True


@dataclass(frozen=True, slots=True)
class _Span:
    """Where a number or the answers of a row stand; y is the baseline."""

    left: int
    right: int
    y: int

    @property
    def middle(self) -> int:
        return (self.left + self.right) // 2


_Spans = Mapping[Spot, _Span]


def draw_string(
    rows: Sequence[StringRow],
    marks: Sequence[StringMark],
    frame: Frame,
    lang: Language = Language.EN,
) -> Scene:
    """Return the string with its marks; spots that are not on it are left out.

    Rows are a quarter larger than the frame's label where they fit (our choice: they are
    problems, not ways).
    """
    marks = [StringMark(_on(rows, mark.places), mark.join) for mark in marks]
    roomy = Frame(frame.width, frame.height, frame.label * 5 // 4)
    drawn = largest_in(roomy, lambda size, _: _laid(rows, marks, size))
    said = (*(_row_text(row) for row in rows), *(_marked(rows, mark, lang) for mark in marks))
    title = phrase(lang, "string")
    return Scene(drawn.width, drawn.height, title, sentence(said, lang), drawn.shapes)


def _on(rows: Sequence[StringRow], places: Sequence[Spot]) -> tuple[Spot, ...]:
    """Return the spots that are on the string."""
    spots = {(at, place) for at, row in enumerate(rows) for place, _ in _pieces(row)}
    spots |= {(at, "row") for at in range(len(rows))}
    return tuple(place for place in places if place in spots)


def _laid(rows: Sequence[StringRow], marks: Sequence[StringMark], size: int) -> Drawn:
    pad = size // 4
    arcs = [place for place, mark in enumerate(marks) if _at_side(mark)]
    left = size * 5 // 4 + len(arcs) * (size // 4) if arcs else pad
    shapes: list[Shape] = []
    spans: dict[Spot, _Span] = {}
    width = left
    for place, row in enumerate(rows):
        y = pad + digit_height(size) + place * (size * 14 // 10)
        made, found, right = _row(row, (left, y), size)
        shapes.extend(made)
        spans.update({(place, spot): span for spot, span in found.items()})
        spans[place, "row"] = _Span(left, right, y)
        width = max(width, right)
    shapes.extend(_marks(marks, spans, size))
    height = 2 * pad + digit_height(size) + max(0, len(rows) - 1) * (size * 14 // 10) + size // 5
    return Drawn(width + pad, height, tuple(shapes))


def _row(
    row: StringRow, at: tuple[int, int], size: int
) -> tuple[list[Shape], dict[int | str, _Span], int]:
    """Return the shapes of a row, where its numbers and answers are, and where it ends."""
    x, y = at
    shapes: list[Shape] = []
    spans: dict[int | str, _Span] = {}
    for place, piece in _pieces(row):
        wide = size if piece == "" else text_width(piece, size)
        if piece == "":
            high = size * 9 // 10
            top = y - (digit_height(size) + high) // 2
            shapes.append(Box(x, top, wide, high, size // 10, False, stroke_of(size) * 2 // 3))
        elif piece.strip():
            lead = len(piece) - len(piece.lstrip())
            shapes.append(
                Label(x + text_width(" " * lead, size), y, size, Anchor.START, piece.strip())
            )
        if place is not None:
            spans[place] = _Span(x, x + wide, y)
        x += wide
    return shapes, spans, x


def _pieces(row: StringRow) -> list[tuple[int | str | None, str]]:
    """Return a row's text in pieces, those that can be marked with their place; "" is a blank."""
    whole = text(row.problem, Print.TRUE)
    pieces: list[tuple[int | str | None, str]] = []
    for place, leaf in enumerate(_leaves(row.problem)):
        printed = leaf.value if isinstance(leaf, Blank) else number_text(leaf, Print.TRUE)
        before, _, whole = whole.partition(printed)
        if before:
            pieces.append((None, before))
        pieces.append((place, "" if isinstance(leaf, Blank) else printed))
    pieces.append((None, whole))
    if row.answers:
        pieces.append((None, "    " if isinstance(row.problem, Equation) else " = "))
        pieces.append(("answer", ", ".join(row.answers)))
    return [(place, piece) for place, piece in pieces if piece or place is not None]


def _leaves(problem: Problem) -> tuple[Exact | Blank, ...]:
    if isinstance(problem, Equation):
        return (*leaves(problem.left), *leaves(problem.right))
    return tuple(leaves(problem))


def _row_text(row: StringRow) -> str:
    return "".join(piece or "_" for _, piece in _pieces(row)).strip()


def _at_side(mark: StringMark) -> bool:
    """Tell whether a noticing has something at the left side: a row's dot, or an arc."""
    whole = any(spot == "row" for _, spot in mark.places)
    far = any(abs(one[0] - other[0]) > 1 for one, other in pairwise(_in_order(mark.places)))
    return whole or (mark.join and far)


def _in_order(places: Sequence[Spot]) -> list[Spot]:
    """Return spots by row, and in a row the whole row first, then numbers, then the answer."""
    rank = {"row": -1, "answer": 10**6}

    def order(spot: Spot) -> tuple[int, int]:
        row, place = spot
        return row, place if isinstance(place, int) else rank.get(place, 0)

    return sorted(set(places), key=order)


def _marks(marks: Sequence[StringMark], spans: _Spans, size: int) -> list[Shape]:
    """Return the marks of all noticings, in the order noticed."""
    shapes: list[Shape] = []
    seen: dict[Spot, int] = {}
    lanes = 0
    for place, mark in enumerate(marks):
        spots = _in_order(mark.places)
        for spot in spots:
            if spot[1] != "row":
                shapes.extend(_number(spans[spot], seen.get(spot, 0) % 3, size))
            seen[spot] = seen.get(spot, 0) + 1
        shapes.extend(_joins(mark, spots, spans, (place, lanes, size)))
        lanes += _at_side(mark)
    return shapes


def _number(span: _Span, layer: int, size: int) -> list[Shape]:
    """Return a ring round a number; for a second noticing a line under it, for a third two."""
    stroke, pad = stroke_of(size), size // 7
    if layer == 0:
        top = span.y - digit_height(size) - pad
        wide, high = span.right - span.left + 2 * pad, digit_height(size) + 2 * pad
        return [Box(span.left - pad, top, wide, high, high // 3, False, stroke)]
    first = span.y + pad + 2 * stroke
    return [
        Line(span.left, first + at * 2 * stroke, span.right, first + at * 2 * stroke, stroke)
        for at in range(layer)
    ]


def _joins(
    mark: StringMark, spots: list[Spot], spans: _Spans, layer: tuple[int, int, int]
) -> list[Shape]:
    """Return the ties between the spots of one noticing, and the dots of its rows."""
    place, lane, size = layer
    pad, shift = size // 7, (place % 3 - 1) * (size // 10)
    shapes: list[Shape] = []
    side = {row for row, spot in spots if spot == "row"}
    for one, other in pairwise(spots) if mark.join else ():
        first, second = spans[one], spans[other]
        if "row" in (one[1], other[1]) or other[0] - one[0] > 1:
            if one[0] != other[0]:
                side |= {one[0], other[0]}
                shapes.append(_arc(spans, (one[0], other[0]), lane, size))
        elif one[0] == other[0]:
            low = first.y + pad
            deep = low + size // 4
            ends = first.middle + shift, second.middle + shift
            path = f"M{ends[0]} {low}Q{ends[0]} {deep} {ends[0] + pad} {deep}H{ends[1] - pad}"
            shapes.append(Path(f"{path}Q{ends[1]} {deep} {ends[1]} {low}", stroke_of(size)))
        else:
            top, bottom = first.y + pad, second.y - digit_height(size) - pad
            ends = first.middle + shift, second.middle + shift
            shapes.append(Line(ends[0], top, ends[1], bottom, stroke_of(size)))
    points = (_side_point(spans[row, "row"], lane, size) for row in sorted(side))
    shapes.extend(Dot(*point, size // 12) for point in points)
    return shapes


def _side_point(row: _Span, lane: int, size: int) -> tuple[int, int]:
    """Return where a noticing touches a row at its left; each noticing has a lane of its own."""
    up = digit_height(size) * (4 + lane % 3 * 2) // 12
    return row.left - size // 4 - lane * (size // 4), row.y - up


def _arc(spans: _Spans, rows: tuple[int, int], lane: int, size: int) -> Path:
    x1, y1 = _side_point(spans[rows[0], "row"], lane, size)
    x2, y2 = _side_point(spans[rows[1], "row"], lane, size)
    out = x1 - size
    return Path(f"M{x1} {y1}C{out} {y1} {out} {y2} {x2} {y2}", stroke_of(size))


def _marked(rows: Sequence[StringRow], mark: StringMark, lang: Language) -> str:
    """Return one noticing in words."""
    said: list[str] = []
    for row, spot in _in_order(mark.places):
        if spot == "row":
            said.append(phrase(lang, "row", row=row + 1))
            continue
        shown = next((piece for place, piece in _pieces(rows[row]) if place == spot), None)
        if shown is not None:
            said.append(phrase(lang, "number", text=shown or "_", row=row + 1))
    key = "joined" if mark.join and len(said) > 1 else "ringed"
    return phrase(lang, key, spots=listed(tuple(said), lang)) if said else ""
