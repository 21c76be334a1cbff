"""The array: rows of dots for a small product, with a gap where the child cut it.

Dots are those of the sides that were said, never of a result, so that a wrong answer has the same
dots; a strip that goes off again is of open dots.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from waysaid.drawing.area import cell_text, noted, rectangle_told
from waysaid.drawing.fit import Drawn, largest, open_dot, stroke_of
from waysaid.drawing.groups import groups_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.rectangle import Rectangle, rectangles_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Dot, Label, Line, Shape
from waysaid.drawing.story import Mark
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language, exact

MOST_ROWS, MOST_COLUMNS, MOST_DOTS = 10, 24, 200
"""No more dots than the back of a room can still see as rows (our choice)."""
LEAST_PITCH = 16
"""From one dot to the next on the board at least, in units: 1.6 % of the screen's height."""


@dataclass(frozen=True, slots=True)
class Block:
    """Columns of dots that stand together, with what is written over and under them."""

    columns: int
    side: Mark
    made: Mark
    taken: bool


@dataclass(frozen=True, slots=True)
class Array:
    """Rows that run through all the blocks, and the equations under them.

    `turned` tells that the cut is across, so that the blocks stand one under another.
    """

    rows: int
    side: Mark
    blocks: tuple[Block, ...]
    notes: tuple[str, ...]
    whole: Rectangle

    @property
    def columns(self) -> int:
        """How many columns all blocks have."""
        return sum(block.columns for block in self.blocks)


def array_of(telling: Telling) -> Array | None:
    """Return the dots of a small product; None where it is none, or too large to be seen."""
    found = rectangles_of(telling)
    if found is None or len(found) != 1 or len(found[0].rows) != 1 or found[0].shared:
        return None
    one = found[0]
    blocks = _blocks(telling, one)
    rows = one.rows[0].value
    if blocks is None or not isinstance(rows, int):
        return None
    made = Array(rows, one.rows[0], blocks, one.notes, one)
    small = 1 <= rows <= MOST_ROWS and made.columns <= MOST_COLUMNS
    return made if small and rows * made.columns <= MOST_DOTS else None


def _blocks(telling: Telling, one: Rectangle) -> tuple[Block, ...] | None:
    """Return a block for each column; one whose side nobody said has what is left of the side."""
    full = _full(telling, one)
    blocks: list[Block] = []
    sides = [column for column in one.columns if not column.apart]
    if full is None and any(not column.side.value for column in sides):
        return None
    for place, column in enumerate(sides):
        count = column.side.value
        if not count and full is not None:
            rest = [other.side.value for other in sides if other is not column]
            open_sides = sum(not other.side.value for other in sides)
            if one.whole is not None:
                count = full if place == 0 else one.whole.value - full
            else:
                count = full - sum(rest)
            if open_sides > (1 if one.whole is None else 2):
                return None
        if not isinstance(count, int) or count < 1:
            return None
        blocks.append(Block(count, column.side, one.cells[0][place], column.taken))
    return tuple(blocks)


def _full(telling: Telling, one: Rectangle) -> int | None:
    """Return the side of the problem that the columns are parts of; None for a division."""
    groups = groups_of(telling.problem)
    if groups is None or groups.product is not None:
        return None
    side = groups.one if one.first else groups.other
    value = None if side is None else exact(side)
    return value if isinstance(value, int) else None


def draw_array(array: Array, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the rows of dots, their sides, and the sums under them."""
    drawn = largest(frame, lambda size, room: _laid(array, size, room))
    dots = phrase(lang, "dots")
    said = (dots, *rectangle_told(array.whole, lang), *array.notes)
    title = title_of(Picture.ARRAY, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, sentence(said, lang), drawn.shapes)


def _laid(array: Array, size: int, room: Frame) -> Drawn:
    """Lay out the labels over the dots, the dots, and what is written under them."""
    line = digit_height(size) + size // 5
    whole = line + size // 5 if array.whole.whole is not None else 0
    over = whole + (line if any(one.side.said for one in array.blocks) else 0)
    under = line + size // 20 if any(_under(array)) else 0
    foot = noted(array.notes, size, room.width, 0).height
    spare = (room.height - over - under - foot) // array.rows
    least = LEAST_PITCH if not room.thumbnail else 4
    pitch = max(least, min(size * 4 // 10, spare))
    high = pitch * array.rows
    tall = max(high, digit_height(size)) if array.side.said else high
    shapes, left = _side(array.side, over + (tall + digit_height(size)) // 2, size)
    heights = (over - size // 5, over + (tall - high) // 2, over + tall + line)
    blocks = _blocked(array, (left, heights), pitch, size)
    made = [*shapes, *_named(array, (left, blocks.width), whole, size), *blocks.shapes]
    notes = noted(array.notes, size, max(room.width, blocks.width), over + tall + under)
    return Drawn(max(blocks.width, notes.width), notes.height, (*made, *notes.shapes))


def _blocked(array: Array, at: tuple[int, tuple[int, int, int]], pitch: int, size: int) -> Drawn:
    """Draw the blocks side by side: the sides over them, the dots, and what they make under."""
    x, (above, top, below) = at
    shapes: list[Shape] = []
    for block, words in zip(array.blocks, _under(array), strict=True):
        wide = _wide(block, words, pitch, size)
        shapes += _dots(block, array.rows, (x, top), (wide, pitch))
        for text, base in ((block.side.text, above), (words, below)):
            if text:
                shapes.append(Label(x + wide // 2, base, size, Anchor.MIDDLE, text))
        x += wide + _gap(size, pitch)
    return Drawn(x - _gap(size, pitch), below, tuple(shapes))


def _named(array: Array, ends: tuple[int, int], over: int, size: int) -> list[Shape]:
    """Return the side before a strip went off, over all the dots."""
    whole, (left, right) = array.whole.whole, ends
    if whole is None:
        return []
    stroke, foot = stroke_of(size), over - size // 12
    made: list[Shape] = [
        Line(left + stroke, foot - size // 10, right - stroke, foot - size // 10, stroke)
    ]
    if whole.said:
        middle = (left + right) // 2
        made.append(Label(middle, digit_height(size), size, Anchor.MIDDLE, whole.text))
    return made


def _side(side: Mark, base: int, size: int) -> tuple[list[Shape], int]:
    """Return the label of the rows, and where the dots begin beside it."""
    if not side.said:
        return [], 0
    wide = text_width(side.text, size)
    return [Label(wide, base, size, Anchor.END, side.text)], wide + size * 3 // 10


def _gap(size: int, pitch: int) -> int:
    return max(size * 3 // 10, pitch)


def _under(array: Array) -> Sequence[str]:
    """Return what each block makes; nothing where the notes say it all."""
    shown = [cell_text(block.made, block.taken) for block in array.blocks]
    told = " ".join(array.notes).split()
    return [""] * len(shown) if all(text.lstrip("−") in told for text in shown) else shown


def _wide(block: Block, words: str, pitch: int, size: int) -> int:
    labels = max(text_width(block.side.text, size), text_width(words, size))
    return max(block.columns * pitch, labels)


def _dots(block: Block, rows: int, at: tuple[int, int], room: tuple[int, int]) -> list[Shape]:
    """Return the dots of a block in the middle of its room; open ones where it goes off again."""
    (left, top), (wide, pitch) = at, room
    left += (wide - block.columns * pitch) // 2
    r = max(2, pitch * 32 // 100)
    stroke = max(1, min(stroke_of(pitch * 3), r // 2))
    made: list[Shape] = []
    for row in range(rows):
        y = top + row * pitch + pitch // 2
        for column in range(block.columns):
            x = left + column * pitch + pitch // 2
            made.append(open_dot(x, y, r - stroke // 2, stroke) if block.taken else Dot(x, y, r))
    return made
