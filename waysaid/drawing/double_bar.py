"""The double bar: two bars with the same marks, a pair of numbers at each, and never to scale."""

from itertools import pairwise

from waysaid.drawing.fit import Drawn, largest, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.parts import Pair
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Line, Shape
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language


def draw_double(found: tuple[Pair, ...], telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return both bars; a number not said leaves its place at the mark empty."""
    drawn = largest(frame, lambda size, room: _laid(found, size, room.width))
    blank = phrase(lang, "blank")
    said = tuple(
        phrase(lang, "beside", upper=pair.upper.text or blank, lower=pair.lower.text or blank)
        for pair in found
        if pair.upper.said or pair.lower.said
    )
    title = title_of(Picture.DOUBLE_BAR, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, sentence(said, lang), drawn.shapes)


def _laid(found: tuple[Pair, ...], size: int, width: int) -> Drawn:
    """Lay out the marks, equally far apart where there is room, else as near as labels allow."""
    stroke = stroke_of(size)
    halves = [
        max(size // 2, text_width(pair.upper.text, size), text_width(pair.lower.text, size)) // 2
        for pair in found
    ]
    steps = _steps(halves, size * 4 // 10)
    if sum(steps) + halves[-1] + stroke > width:
        steps = _steps(halves, size // 5)
    if max(steps) * len(steps) + halves[-1] + stroke <= width:
        steps = [max(steps)] * len(steps)
    natural = sum(steps) + halves[-1] + stroke
    spare = max(0, min(width - natural, natural)) // len(steps)
    top = digit_height(size) + size // 4
    high = size * 8 // 10
    xs: list[int] = []
    x = stroke
    for step in steps:
        x += step + spare
        xs.append(x)
    low = top + 2 * high
    made: list[Shape] = [
        Box(stroke, top, x - stroke, high, 0, False, stroke),
        Box(stroke, top + high, x - stroke, high, 0, False, stroke),
    ]
    for place, (pair, at) in enumerate(zip(found, xs, strict=True)):
        if place < len(xs) - 1:
            made.append(Line(at, top, at, low, stroke))
        if pair.upper.said:
            made.append(Label(at, digit_height(size), size, Anchor.MIDDLE, pair.upper.text))
        if pair.lower.said:
            base = low + size // 4 + digit_height(size)
            made.append(Label(at, base, size, Anchor.MIDDLE, pair.lower.text))
    return Drawn(
        x + halves[-1] + stroke, low + size // 4 + digit_height(size) + size // 8, tuple(made)
    )


def _steps(halves: list[int], gap: int) -> list[int]:
    """Return how far each mark is from the one before, so that a gap is between their labels."""
    return [halves[0] + gap, *(one + other + gap for one, other in pairwise(halves))]
