"""A string for connecting: its problems one under another, with answers and what was noticed."""

from collections.abc import Sequence
from dataclasses import dataclass

from waysaid.drawing.fit import Drawn, largest_in, stroke_of
from waysaid.drawing.marks import Form, Span, Spot, StringMark, at_side, in_order, marked
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Shape
from waysaid.drawing.telling import Frame
from waysaid.drawing.words import listed, phrase, sentence
from waysaid.number import (
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Image,
    Language,
    Number,
    Print,
    Problem,
    number_text,
    sides,
    text,
    written,
)


@dataclass(frozen=True, slots=True)
class StringRow:
    """One problem, and the answers the class gave, as they were said.

    `name` stands in place of the problem's own text, where that is not for the class to see.
    """

    problem: Problem
    answers: Sequence[str] = ()
    name: str = ""


Piece = tuple[int | str | None, str]
"""A piece of a row's text with its place, if it can be marked; "" is a blank."""
Line = Sequence[Piece]
Lines = Sequence[Line]
"""One row, on as many lines as it takes."""
_BEFORE = "before-answer"
"""The place of what stands before the answers; nothing marks it."""
_ASKED = " ?"


def draw_string(
    rows: Sequence[StringRow],
    marks: Sequence[StringMark],
    frame: Frame,
    lang: Language = Language.EN,
) -> Scene:
    """Return the string with its marks; spots that are not on it are left out.

    Rows are a quarter larger than the frame's label where they fit (our choice: they are
    problems, not ways). Where even the smallest are too wide, a wide row goes on under itself:
    its answers there, or what follows one of its signs.
    """
    marks = [StringMark(_on(rows, mark.places), mark.join) for mark in marks]
    roomy = Frame(frame.width, frame.height, frame.label * 5 // 4)
    whole = [(_pieces(row),) for row in rows]
    drawn = largest_in(roomy, lambda size, _: _laid(whole, marks, size))
    if drawn.width > frame.width:
        drawn = largest_in(
            roomy, lambda size, _: _laid(_broken(whole, marks, size, frame), marks, size)
        )
    said = (*(_row_text(row) for row in rows), *(_noticed(rows, mark, lang) for mark in marks))
    title = phrase(lang, "string")
    return Scene(drawn.width, drawn.height, title, sentence(said, lang), drawn.shapes)


def _on(rows: Sequence[StringRow], places: Sequence[Spot]) -> tuple[Spot, ...]:
    """Return the spots that are on the string."""
    spots = {(at, place) for at, row in enumerate(rows) for place, _ in _pieces(row)}
    spots |= {(at, "row") for at in range(len(rows))}
    return tuple(spot for spot in places if spot in spots and spot[1] != _BEFORE)


def _form(rows: Sequence[Lines]) -> Form:
    """Return on which line each place of each row stands."""
    starts = tuple(sum(map(len, rows[:at])) for at in range(len(rows)))
    within = tuple(
        {place: at for at, line in enumerate(lines) for place, _ in line if place is not None}
        for lines in rows
    )
    return Form(starts, within)


def _broken(
    rows: Sequence[Lines], marks: Sequence[StringMark], size: int, frame: Frame
) -> Sequence[Lines]:
    """Break the rows that are too wide before a sign; what follows stands under its row."""

    def room(broken: Sequence[Lines], size: int) -> int:
        return frame.width - _margin(marks, size, _form(broken)) - size // 4

    broken = rows
    for _ in range(2):  # Rows apart may need an arc at the side, which leaves them less room.
        most, now = room(broken, frame.least), room(broken, size)
        broken = [_lines(_together(line, frame.least, most), size, now) for (line,) in rows]
    return broken


def _lines(parts: Sequence[Line], size: int, room: int) -> Lines:
    """Fill one line after another with parts that are not broken."""
    lines: list[list[Piece]] = [[]]
    for part in parts:
        lead = _indent(size) if len(lines) > 1 else 0
        if lines[-1] and lead + _length([*lines[-1], *part], size) > room:
            lines.append([each for each in part if not each[1].isspace()])
        else:
            lines[-1].extend(part)
    return tuple(lines)


def _together(pieces: Line, least: int, room: int) -> list[list[Piece]]:
    """Part a row before its answers; where its problem is too long by itself, before each sign.

    The last sign of a question stays with what it asks.
    """
    problem = [piece for piece in pieces if piece[0] not in (_BEFORE, "answer")]
    long = _length(problem, least) > room
    parts: list[list[Piece]] = [[]]
    for place, piece in pieces:
        if place == _BEFORE or (long and piece.startswith(" ") and piece != _ASKED):
            parts.append([])
        parts[-1].append((place, piece))
    return parts


def _length(line: Line, size: int) -> int:
    return sum(_width(piece, size) for _, piece in line)


def _indent(size: int) -> int:
    """Return how far what goes on under its row is set in (our choice)."""
    return size // 2


def _margin(marks: Sequence[StringMark], size: int, form: Form) -> int:
    """Return the room at the left: for the arcs and dots of each noticing that has some there."""
    lanes = sum(at_side(mark, form) for mark in marks)
    return size * 5 // 4 + lanes * (size // 4) if lanes else size // 4


def _laid(rows: Sequence[Lines], marks: Sequence[StringMark], size: int) -> Drawn:
    pad, pitch, form = size // 4, _pitch(size), _form(rows)
    left = _margin(marks, size, form)
    shapes: list[Shape] = []
    spans: dict[Spot, Span] = {}
    width = left
    for place, lines in enumerate(rows):
        y = pad + digit_height(size) + form.starts[place] * pitch
        made, found, right = _row(lines, (left, y), size)
        shapes.extend(made)
        spans.update({(place, spot): span for spot, span in found.items()})
        spans[place, "row"] = Span(left, right, y)
        width = max(width, right)
    shapes.extend(marked(marks, spans, size, form))
    below = max(0, sum(map(len, rows)) - 1) * pitch
    height = 2 * pad + digit_height(size) + below + size // 5
    return Drawn(width + pad, height, tuple(shapes))


def _pitch(size: int) -> int:
    """Return the distance between lines: room for rings and ties between them (our choice)."""
    return size * 14 // 10


def _row(
    lines: Lines, at: tuple[int, int], size: int
) -> tuple[list[Shape], dict[int | str, Span], int]:
    """Return the shapes of a row, where its numbers and answers are, and where it ends."""
    shapes: list[Shape] = []
    spans: dict[int | str, Span] = {}
    right = at[0]
    for under, line in enumerate(lines):
        x, y = at[0] + (_indent(size) if under else 0), at[1] + under * _pitch(size)
        for place, piece in line:
            wide = _width(piece, size)
            shapes.extend(_piece(piece, (x, y), size))
            if place is not None:
                spans[place] = Span(x, x + wide, y)
            x += wide
        right = max(right, x)
    return shapes, spans, right


def _width(piece: str, size: int) -> int:
    return text_width(piece, size) if piece else size


def _piece(piece: str, at: tuple[int, int], size: int) -> list[Shape]:
    """Return a piece of text from its left end on its baseline; an empty box for a blank."""
    x, y = at
    if piece == "":
        side, inset = size * 8 // 10, size // 10
        top = y - (digit_height(size) + side) // 2
        return [Box(x + inset, top, side, side, inset, False, stroke_of(size) * 2 // 3)]
    if not piece.strip():
        return []
    lead = len(piece) - len(piece.lstrip())
    x += text_width(" " * lead, size)
    return [Label(x, y, size, Anchor.START, piece.strip())]


def _pieces(row: StringRow) -> list[Piece]:
    """Return a row's text in pieces, those that can be marked with their place; "" is a blank."""
    whole = row.name or text(row.problem, Print.TRUE)
    pieces: list[Piece] = []
    for place, leaf in enumerate(_written(row.problem)):
        printed = leaf.value if isinstance(leaf, Blank) else number_text(leaf, Print.TRUE)
        before, _, whole = whole.partition(printed)
        if before:
            pieces.append((None, before))
        pieces.append((place, "" if isinstance(leaf, Blank) else printed))
    pieces.append((None, whole))
    if row.answers:
        pieces.append((_BEFORE, answer_joint(row.problem)))
        pieces.append(("answer", ", ".join(row.answers)))
    return [(place, piece) for place, piece in pieces if piece or place is not None]


def answer_joint(problem: Problem) -> str:
    """Return what stands between a problem and the answers to it.

    An equals sign behind an expression only: behind 3/4 ? 5/8 it would say something else.
    """
    if isinstance(problem, Claim | Compare | About | Image):
        return ": "
    return "    " if isinstance(problem, Equation) else " = "


def _written(problem: Problem) -> tuple[Number | Blank, ...]:
    return tuple(leaf for side in sides(problem) for leaf in written(side))


def _row_text(row: StringRow) -> str:
    return "".join(piece or "_" for _, piece in _pieces(row)).strip()


def _noticed(rows: Sequence[StringRow], mark: StringMark, lang: Language) -> str:
    """Return one noticing in words."""
    said: list[str] = []
    for row, spot in in_order(mark.places):
        if spot == "row":
            said.append(phrase(lang, "row", row=row + 1))
            continue
        shown = next((piece for place, piece in _pieces(rows[row]) if place == spot), None)
        if shown is not None:
            said.append(phrase(lang, "number", text=shown or "_", row=row + 1))
    key = "joined" if mark.join and len(said) > 1 else "ringed"
    return phrase(lang, key, spots=listed(tuple(said), lang)) if said else ""
