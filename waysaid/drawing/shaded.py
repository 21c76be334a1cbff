"""Bars, circles and hundred grids: one whole after another, shaded as far as a number goes.

Amounts stand one after another with their sign and number at the left; amounts that are compared
stand apart, so that the sketch does not settle which is larger.
"""

from collections.abc import Callable
from dataclasses import dataclass
from math import cos, pi, sin

from waysaid.drawing.amounts import Amount, Amounts
from waysaid.drawing.area import noted
from waysaid.drawing.equations import lines
from waysaid.drawing.fit import Drawn, largest, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Line, Path, Shape
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language


@dataclass(frozen=True, slots=True)
class Whole:
    """One whole to draw: how many of its parts are shaded, how many more outlined."""

    bottom: int
    shaded: int
    added: int


@dataclass(frozen=True, slots=True)
class Style:
    """How a whole is drawn: its width and height in tenths of the label size, and its shapes."""

    width: int
    height: int
    shapes: Callable[[Whole, tuple[int, int], tuple[int, int]], list[Shape]]


def draw_bars(found: Amounts, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return each number as bars cut into its parts."""
    return _drawn(found, (Picture.FRACTION_BAR, Style(40, 11, _bar)), telling, frame, lang)


def draw_circles(found: Amounts, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return each number as circles cut into its parts."""
    return _drawn(found, (Picture.FRACTION_CIRCLE, Style(18, 18, _circle)), telling, frame, lang)


def draw_grids(found: Amounts, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return each number as grids of a hundred, shaded column by column."""
    return _drawn(found, (Picture.HUNDRED_GRID, Style(24, 24, _grid)), telling, frame, lang)


def _drawn(
    found: Amounts, kind: tuple[Picture, Style], telling: Telling, frame: Frame, lang: Language
) -> Scene:
    picture, style = kind
    notes = lines(telling, lang)
    drawn = largest(frame, lambda size, room: _laid((found, notes), style, size, room.width))
    said = [
        phrase(lang, "shaded", number=one.label) + (phrase(lang, "filled") if one.added else "")
        for one in found.amounts
    ]
    title = title_of(picture, telling.problem, lang)
    words = sentence((*said, *notes), lang)
    return Scene(drawn.width, drawn.height, title, words, drawn.shapes)


def _laid(told: tuple[Amounts, tuple[str, ...]], style: Style, size: int, width: int) -> Drawn:
    """Lay out the amounts along rows, and the equations under them."""
    found, under = told
    gap = size * 12 // 10 if found.apart else size * 4 // 10
    tall = max(style.height * size // 10, digit_height(size))
    pitch = tall + size * 4 // 10
    shapes: list[Shape] = []
    x = y = wide = 0
    for place, one in enumerate(found.amounts):
        needs = _width(one, style, size)
        if place and x + gap + needs > width and not found.apart:
            x, y = 0, y + pitch
        elif place:
            x += gap
        shapes += _amount(one, style, (x, y), size)
        x += needs
        wide = max(wide, x)
    notes = noted(under, size, max(width, wide), y + tall + stroke_of(size))
    return Drawn(max(wide, notes.width), notes.height, (*shapes, *notes.shapes))


def _width(one: Amount, style: Style, size: int) -> int:
    label = text_width(_label(one), size) + size * 3 // 10
    return label + one.wholes * (style.width * size // 10 + size // 4)


def _label(one: Amount) -> str:
    return f"{one.sign} {one.label}".strip()


def _amount(one: Amount, style: Style, at: tuple[int, int], size: int) -> list[Shape]:
    """Draw one number: its label, then its wholes one after another."""
    x, y = at
    stroke = stroke_of(size)
    wide, tall = style.width * size // 10, style.height * size // 10
    room = (wide - 2 * stroke, tall - 2 * stroke)
    made: list[Shape] = []
    base = y + (tall + digit_height(size)) // 2
    made.append(Label(x, base, size, Anchor.START, _label(one)))
    x += text_width(_label(one), size) + size * 3 // 10
    for place in range(one.wholes):
        before = place * one.bottom
        shaded = min(max(one.top - before, 0), one.bottom)
        added = min(max(one.top + one.added - before, 0), one.bottom) - shaded
        whole = Whole(one.bottom, shaded, added)
        made += style.shapes(whole, (x + stroke, y + stroke), room)
        x += wide + size // 4
    return made


def _bar(whole: Whole, at: tuple[int, int], room: tuple[int, int]) -> list[Shape]:
    """Return a bar of equal parts; the shaded ones hold a filled box, added ones are hatched."""
    (x, y), (wide, tall) = at, room
    stroke = max(2, tall // 16)
    made: list[Shape] = [Box(x, y, wide, tall, 0, False, stroke)]
    edges = [x + wide * part // whole.bottom for part in range(whole.bottom + 1)]
    for part in range(whole.bottom):
        left, right = edges[part], edges[part + 1]
        if part < whole.shaded:
            inner = right - left - 4 * stroke
            made.append(
                Box(left + 2 * stroke, y + 2 * stroke, inner, tall - 4 * stroke, 0, True, stroke)
                if inner > 0
                else Line((left + right) // 2, y, (left + right) // 2, y + tall, stroke)
            )
        elif part < whole.shaded + whole.added:
            made += _hatched(left, right, (y, tall), stroke)
        if part:
            made.append(Line(left, y, left, y + tall, stroke))
    return made


def _hatched(left: int, right: int, rows: tuple[int, int], stroke: int) -> list[Shape]:
    """Return slanting lines over a part that was filled up."""
    y, tall = rows
    wide = right - left
    step = max(3 * stroke, wide // 3)
    return [
        Line(left + at, y + tall, min(right, left + at + step), y, stroke)
        for at in range(0, max(1, wide - step // 2), step)
    ]


def _grid(whole: Whole, at: tuple[int, int], room: tuple[int, int]) -> list[Shape]:
    """Return ten by ten cells, shaded down one column after another by broad lines."""
    (x, y), (wide, tall) = at, room
    stroke = max(1, tall // 90)
    xs = [x + wide * part // 10 for part in range(11)]
    ys = [y + tall * part // 10 for part in range(11)]
    made: list[Shape] = []
    columns, cells = divmod(whole.shaded, 10)
    broad = max(stroke, tall // 17)
    for row in range(10):
        end = columns + (row < cells)
        if end:
            middle = (ys[row] + ys[row + 1]) // 2
            ends = (x + broad // 2 + stroke, xs[end] - broad // 2 - stroke)
            made.append(Line(ends[0], middle, max(ends), middle, broad))
    made.append(Box(x, y, wide, tall, 0, False, 2 * stroke))
    made += [Line(across, y, across, y + tall, stroke) for across in xs[1:-1]]
    made += [Line(x, down, x + wide, down, stroke) for down in ys[1:-1]]
    return made


def _circle(whole: Whole, at: tuple[int, int], room: tuple[int, int]) -> list[Shape]:
    """Return a circle cut into equal parts from the top; shaded ones are hatched all over."""
    (left, top), (wide, _) = at, room
    r = wide // 2
    x, y = left + r, top + r
    stroke = max(2, r // 20)
    made: list[Shape] = [Box(x - r, y - r, 2 * r, 2 * r, r, False, stroke)]
    if whole.bottom > 1:
        rims = [_rim((x, y), r, part, whole.bottom) for part in range(whole.bottom)]
        made += [Line(x, y, *rim, stroke) for rim in rims]
    for part in range(whole.shaded + whole.added):
        made += _wedge((x, y), r, (part, whole.bottom), part < whole.shaded)
    return made


def _rim(middle: tuple[int, int], r: int, part: int, bottom: int) -> tuple[int, int]:
    turn = 2 * pi * part / bottom
    return middle[0] + round(r * sin(turn)), middle[1] - round(r * cos(turn))


def _wedge(middle: tuple[int, int], r: int, part: tuple[int, int], shaded: bool) -> list[Shape]:
    """Return arcs inside one part, close together for a shaded one, two for one filled up."""
    place, bottom = part
    stroke = max(2, r // 20)
    step = max(2 * stroke, r // 9) if shaded else r // 3
    made: list[Shape] = []
    for far in range(r - step, step // 2, -step):
        spare = min(pi / bottom * 0.8, 1.5 * stroke / far)
        first, last = 2 * pi * place / bottom + spare, 2 * pi * (place + 1) / bottom - spare
        made.append(Path(_arc(middle, far, first, last), stroke))
    return made


def _arc(middle: tuple[int, int], r: int, first: float, last: float) -> str:
    """Return an arc as a line of short pieces, so that whole numbers describe it."""
    count = max(2, int((last - first) * 8))
    turns = [first + (last - first) * at / count for at in range(count + 1)]
    points = [
        f"{middle[0] + round(r * sin(turn))} {middle[1] - round(r * cos(turn))}" for turn in turns
    ]
    return "M" + "L".join(points)
