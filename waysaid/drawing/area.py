"""The area model: a rectangle cut into the parts the child said, a sketch and never to scale.

Columns are as wide and rows as high as their labels need, so that only the lengths of the numbers
show; what a strip takes off is marked by a dashed line and a minus sign.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from waysaid.drawing.equations import equation_rows, row_gap, row_pitch
from waysaid.drawing.fit import Drawn, arrow, largest, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.rectangle import Rectangle
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Line, Shape
from waysaid.drawing.story import Mark
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language, Print, Sign, sign_text

SHARE = {0: 2, 1: 2, 2: 7}
"""A column's share of the spare room, by the signs of its side (our choice); else `MOST_SHARE`."""
MOST_SHARE = 9


def draw_area(
    found: tuple[Rectangle, ...], telling: Telling, frame: Frame, lang: Language
) -> Scene:
    """Return the rectangles side by side, an arrow between them, and the sums under them."""
    drawn = largest(frame, lambda size, room: _laid(found, size, room.width))
    said = [part for one in found for part in rectangle_told(one, lang)]
    said += [note for one in found for note in one.notes]
    title = title_of(Picture.AREA, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, sentence(tuple(said), lang), drawn.shapes)


def rectangle_told(one: Rectangle, lang: Language) -> list[str]:
    """Return a rectangle in words, piece by piece."""
    blank = phrase(lang, "blank")
    said: list[str] = []
    if one.whole is not None:
        high = one.rows[0].text or blank
        said.append(phrase(lang, "rectangle", wide=one.whole.text or blank, high=high))
    for row, cells in zip(one.rows, one.cells, strict=True):
        for column, cell in zip(one.columns, cells, strict=True):
            key = "strip" if column.taken else "rest" if column.apart else "piece"
            if one.whole is not None and key == "piece" and column is one.columns[0]:
                key = "holds"
            parts = {"wide": column.side.text or blank, "high": row.text or blank}
            said.append(phrase(lang, key, number=cell.text or blank, **parts))
    return said


def _laid(found: tuple[Rectangle, ...], size: int, width: int) -> Drawn:
    """Lay out the rectangles along a row, and their notes under it."""
    gap = size * 12 // 10
    room = (width - gap * (len(found) - 1)) // len(found)
    parts = [_one(one, size, room) for one in found]
    high = max(part.height for part in parts)
    shapes: list[Shape] = []
    x = 0
    for place, part in enumerate(parts):
        if place:
            ends = (x + size // 4, x + gap - size // 4)
            shapes.append(arrow(*ends, high - size * 8 // 10, stroke_of(size)))
            x += gap
        shapes.extend(_moved(part.shapes, x, high - part.height))
        x += part.width
    notes = noted([note for one in found for note in one.notes], size, max(width, x), high)
    return Drawn(max(x, notes.width), notes.height, (*shapes, *notes.shapes))


def _moved(shapes: Sequence[Shape], right: int, down: int) -> list[Shape]:
    """Return boxes, lines and labels moved; a rectangle has no other shapes."""
    return [_shifted(shape, right, down) for shape in shapes]


def _shifted(shape: Shape, x: int, y: int) -> Shape:
    match shape:
        case Box(left, top, wide, high, radius, filled, stroke):
            return Box(left + x, top + y, wide, high, radius, filled, stroke)
        case Line(x1, y1, x2, y2, stroke):
            return Line(x1 + x, y1 + y, x2 + x, y2 + y, stroke)
        case Label(left, base, size, anchor, text):
            return Label(left + x, base + y, size, anchor, text)
        case _:
            return shape


def noted(notes: Sequence[str], size: int, width: int, down: int) -> Drawn:
    """Return notes flowing in rows under what is `down` high; the height counts from the top."""
    rows = equation_rows(notes, width, size)
    shapes: list[Shape] = []
    wide = 0
    y = down + size // 4 + digit_height(size)
    for row in rows:
        x = 0
        for piece in row:
            shapes.append(Label(x, y, size, Anchor.START, piece))
            x += text_width(piece, size)
            wide = max(wide, x)
            x += row_gap(size)
        y += row_pitch(size)
    bottom = y - row_pitch(size) + size // 4 if rows else down
    return Drawn(wide, bottom, tuple(shapes))


@dataclass(frozen=True, slots=True)
class _Sides:
    """Where columns and rows begin and end, and the label size."""

    xs: tuple[tuple[int, int], ...]
    ys: tuple[int, ...]
    size: int

    @property
    def stroke(self) -> int:
        return stroke_of(self.size)


def _one(one: Rectangle, size: int, room: int) -> Drawn:
    """Draw one rectangle: sides at the left and on top, and what each cell holds."""
    left = max(text_width(row.text, size) for row in one.rows)
    left += size * 3 // 10 if left else 0
    sides = _Sides(_columns(one, size, left, room), _rows(one, size), size)
    shapes = [*_braced(one, sides), *_top(one, sides), *_left(one, sides)]
    shapes += _cells(one, sides)
    stroke = sides.stroke
    return Drawn(sides.xs[-1][1] + stroke, sides.ys[-1] + stroke, tuple(shapes))


def _columns(one: Rectangle, size: int, left: int, room: int) -> tuple[tuple[int, int], ...]:
    """Return where each column begins and ends; spare room is shared as the labels are long."""
    needs = _needs(one, size, size * 6 // 10)
    if sum(needs) + left > room:
        needs = _needs(one, size, size * 3 // 10)
    if one.whole is not None:
        needs[0] = max(needs[0], text_width(one.whole.text, size) + size - sum(needs[1:]))
    gaps = sum(size * 4 // 10 for column in one.columns if column.apart)
    total = sum(needs)
    spare = max(0, min(room - left - gaps - total - 3 * stroke_of(size), total * 3 // 4))
    shares = [SHARE.get(len(column.side.text), MOST_SHARE) for column in one.columns]
    shares[0] = shares[0] if one.whole is None else MOST_SHARE
    ends: list[tuple[int, int]] = []
    x = left + stroke_of(size)
    for column, need, share in zip(one.columns, needs, shares, strict=True):
        x += size * 4 // 10 if column.apart else 0
        wide = need + spare * share // sum(shares)
        ends.append((x, x + wide))
        x += wide
    return tuple(ends)


def _needs(one: Rectangle, size: int, pad: int) -> list[int]:
    """Return the room that each column's labels need, `pad` more than they are wide."""
    made: list[int] = []
    for at, column in enumerate(one.columns):
        texts = [column.side.text, *(cell_text(row[at], column.taken) for row in one.cells)]
        widest = max(text_width(text, size) for text in texts)
        made.append(max(size * 13 // 10, widest + pad))
    return made


def _rows(one: Rectangle, size: int) -> tuple[int, ...]:
    """Return the y of every line across, from the top one."""
    top = stroke_of(size)
    if any(column.side.said for column in one.columns):
        top += digit_height(size) + size // 5
    if one.whole is not None:
        top += size * 3 // 10 + (digit_height(size) + size // 6 if one.whole.said else 0)
    high = size * (16 if len(one.rows) == 1 else 13) // 10
    return tuple(top + high * at for at in range(len(one.rows) + 1))


def _braced(one: Rectangle, sides: _Sides) -> list[Shape]:
    """Return the side before a strip was taken off, over the whole top."""
    if one.whole is None:
        return []
    size, stroke = sides.size, sides.stroke
    ends = [x for column, x in zip(one.columns, sides.xs, strict=True) if not column.apart]
    left, right = ends[0][0], ends[-1][1]
    y = digit_height(size) + size // 6 if one.whole.said else stroke
    foot = y + size // 6
    made: list[Shape] = [
        Line(left, foot, left, y, stroke),
        Line(left, y, right, y, stroke),
        Line(right, y, right, foot, stroke),
    ]
    if one.whole.said:
        at = ((left + right) // 2, digit_height(size))
        made.append(Label(*at, size, Anchor.MIDDLE, one.whole.text))
    return made


def _top(one: Rectangle, sides: _Sides) -> list[Shape]:
    y = sides.ys[0] - sides.size // 5
    return [
        Label((left + right) // 2, y, sides.size, Anchor.MIDDLE, column.side.text)
        for column, (left, right) in zip(one.columns, sides.xs, strict=True)
        if column.side.said
    ]


def _left(one: Rectangle, sides: _Sides) -> list[Shape]:
    size = sides.size
    right = sides.xs[0][0] - sides.stroke - size * 3 // 10
    return [
        Label(right, (top + bottom + digit_height(size)) // 2, size, Anchor.END, row.text)
        for row, top, bottom in zip(one.rows, sides.ys, sides.ys[1:], strict=False)
        if row.said
    ]


def _cells(one: Rectangle, sides: _Sides) -> list[Shape]:
    """Return the outlines, the dashed edge of what is taken off, and the numbers inside."""
    shapes: list[Shape] = []
    size, stroke = sides.size, sides.stroke
    bands = list(zip(one.rows, one.cells, sides.ys, sides.ys[1:], strict=False))
    for at, (column, (left, right)) in enumerate(zip(one.columns, sides.xs, strict=True)):
        for _, cells, top, bottom in bands:
            if column.taken:
                shapes += _open(left, right, (top, bottom), size)
            else:
                shapes.append(Box(left, top, right - left, bottom - top, 0, False, stroke))
            shown = cell_text(cells[at], column.taken)
            if shown:
                base = (top + bottom + digit_height(size)) // 2
                shapes.append(Label((left + right) // 2, base, size, Anchor.MIDDLE, shown))
    return shapes


def _open(left: int, right: int, rows: tuple[int, int], size: int) -> list[Shape]:
    """Return the dashed outline of a strip, whose left edge is its neighbour's right one."""
    top, bottom = rows
    stroke, dash = stroke_of(size), max(4, size // 5)
    made: list[Shape] = []
    for x in range(left, right - dash // 2, dash * 2):
        far = min(right, x + dash)
        made += [Line(x, top, far, top, stroke), Line(x, bottom, far, bottom, stroke)]
    for y in range(top, bottom - dash // 2, dash * 2):
        made.append(Line(right, y, right, min(bottom, y + dash), stroke))
    return made


def cell_text(cell: Mark, taken: bool) -> str:
    """Return what is written in a cell: a strip that goes off with a minus sign."""
    return f"{sign_text(Sign.MINUS, Print.TRUE)}{cell.text}" if taken and cell.said else cell.text
