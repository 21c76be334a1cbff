"""Bars: the whole over its parts, as long as their labels need and never to scale."""

from collections.abc import Sequence

from waysaid.drawing.fit import Drawn, largest, stroke_of
from waysaid.drawing.groups import Groups, groups_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.problem import Whole, answer_mark, whole_of
from waysaid.drawing.rectangle import rectangles_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Shape
from waysaid.drawing.story import Mark, mark_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language, exact

MOST_BOXES = 10
"""Equal parts of a bar are no more than this (our choice: more are not seen as a number)."""


def bar_of(telling: Telling) -> Whole | None:
    """Return the whole and its parts: of a sum, or of groups, as the child cut them or all alike.

    A product is as many equal parts as its smaller side where that is small enough; a number
    shared out has as many parts as it is shared into, each with the answer if it was told.
    """
    groups = groups_of(telling.problem)
    if groups is None:
        return whole_of(telling)
    answer = answer_mark(telling)
    whole = answer if groups.product is None else mark_of(groups.product, True)
    return _cut(telling, whole) or _equal(groups, whole, answer)


def _cut(telling: Telling, whole: Mark) -> Whole | None:
    """Return the pieces the child said as parts of the whole; None where they are no parts."""
    found = rectangles_of(telling)
    if found is None or len(found) > 1 or found[0].whole is not None:
        return None
    cells = [cell for row in found[0].cells for cell in row]
    return Whole(whole, tuple(cells)) if 1 < len(cells) <= MOST_BOXES else None


def _equal(groups: Groups, whole: Mark, answer: Mark) -> Whole | None:
    """Return equal parts; None where there would be too many."""
    if groups.known is not None:
        sides = [(groups.known, answer)]
    elif groups.one is None or groups.other is None or groups.product is not None:
        return None
    else:
        one, other = mark_of(groups.one, True), mark_of(groups.other, True)
        sides = [(exact(groups.one), other), (exact(groups.other), one)]
    for count, part in sides:
        if isinstance(count, int) and 1 < count <= MOST_BOXES:
            return Whole(whole, (part,) * count, True)
    return None


def draw_bar(whole: Whole, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the whole as one bar over the bar of its parts; a number not said stays empty."""
    drawn = largest(frame, lambda size, room: _laid(whole, size, room.width))
    blank = phrase(lang, "blank")
    said = [phrase(lang, "whole", number=whole.whole.text or blank)] if not whole.over else []
    said += [phrase(lang, "over", number=part.text or blank) for part in whole.over]
    if whole.equal:
        part = whole.parts[0].text or blank
        said.append(phrase(lang, "equal", count=len(whole.parts), number=part))
    else:
        said += [phrase(lang, "part", number=part.text or blank) for part in whole.parts]
    title = title_of(Picture.BAR, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, sentence(tuple(said), lang), drawn.shapes)


def _laid(whole: Whole, size: int, width: int) -> Drawn:
    """Lay out both bars, equally long; a number that was not said stays empty."""
    stroke = stroke_of(size)
    parts = [part.text for part in whole.parts]
    over = [part.text for part in whole.over] or [whole.whole.text]
    needs = _needs(parts, size)
    if sum(needs) > width - 2 * stroke:
        needs = [max(size, text_width(part, size) + size * 3 // 10) for part in parts]
    above = [text_width(over[0], size) + size] if not whole.over else _needs(over, size)
    natural = max(sum(needs), sum(above))
    full = max(natural, min(width - 2 * stroke, natural * 2))
    high = size * 14 // 10
    shapes = _row(over, above, (stroke, full, high), size)
    shapes += _row(parts, needs, (stroke + high, full, high), size)
    return Drawn(full + 2 * stroke, 2 * high + 2 * stroke, tuple(shapes))


def _needs(parts: Sequence[str], size: int) -> list[int]:
    return [max(size * 2, text_width(part, size) + size) for part in parts]


def _row(
    parts: Sequence[str], needs: Sequence[int], room: tuple[int, int, int], size: int
) -> list[Shape]:
    """Draw one bar of parts; the spare room is shared by the parts as their labels are long."""
    y, full, high = room
    x = start = stroke_of(size)
    spare, total = full - sum(needs), sum(needs)
    shapes: list[Shape] = []
    for place, (part, need) in enumerate(zip(parts, needs, strict=True)):
        wide = need + spare * need // total
        if place == len(parts) - 1:
            wide = start + full - x
        shapes += _bar(part, (x, y), (wide, high), size)
        x += wide
    return shapes


def _bar(label: str, at: tuple[int, int], room: tuple[int, int], size: int) -> list[Shape]:
    (x, y), (wide, high) = at, room
    made: list[Shape] = [Box(x, y, wide, high, 0, False, stroke_of(size))]
    if label:
        baseline = y + (high + digit_height(size)) // 2
        made.append(Label(x + wide // 2, baseline, size, Anchor.MIDDLE, label))
    return made
