"""Bars: the whole over its parts, as long as their labels need and never to scale."""

from waysaid.drawing.fit import Drawn, largest, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.problem import Whole, mark
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Shape
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language


def draw_bar(whole: Whole, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the whole as one bar over the bar of its parts; a number not said stays empty."""
    drawn = largest(frame, lambda size, room: _laid(whole, size, room.width))
    blank = phrase(lang, "blank")
    said = [phrase(lang, "whole", number=mark(whole.whole).text or blank)]
    said += [phrase(lang, "part", number=mark(part).text or blank) for part in whole.parts]
    title = title_of(Picture.BAR, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, sentence(tuple(said), lang), drawn.shapes)


def _laid(whole: Whole, size: int, width: int) -> Drawn:
    """Lay out both bars; the spare room is shared by the parts as their labels are long."""
    stroke = stroke_of(size)
    parts = [mark(part).text for part in whole.parts]
    over = mark(whole.whole).text
    needs = [max(size * 2, text_width(part, size) + size) for part in parts]
    natural = max(sum(needs), text_width(over, size) + size)
    full = max(natural, min(width - 2 * stroke, natural * 2))
    spare, high = full - sum(needs), size * 14 // 10
    shapes: list[Shape] = _bar(over, (stroke, stroke), (full, high), size)
    x = stroke
    for place, (part, need) in enumerate(zip(parts, needs, strict=True)):
        wide = need + spare * need // sum(needs)
        if place == len(parts) - 1:
            wide = stroke + full - x
        shapes += _bar(part, (x, stroke + high), (wide, high), size)
        x += wide
    return Drawn(full + 2 * stroke, 2 * high + 2 * stroke, tuple(shapes))


def _bar(label: str, at: tuple[int, int], room: tuple[int, int], size: int) -> list[Shape]:
    (x, y), (wide, high) = at, room
    made: list[Shape] = [Box(x, y, wide, high, 0, False, stroke_of(size))]
    if label:
        baseline = y + (high + digit_height(size)) // 2
        made.append(Label(x + wide // 2, baseline, size, Anchor.MIDDLE, label))
    return made
