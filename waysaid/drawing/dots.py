"""A quick image, and a way to see it: the dots with the groups outlined, what was said under them.

The groups are those the record keeps, or are found from what was put together, never from what it
was said to make, so that right and wrong work look alike. Dots are all alike, and so are the
outlines.
"""

from collections.abc import Callable
from dataclasses import dataclass

from waysaid.drawing.equations import equation_rows, line_of, row_gap, row_pitch, rows_height
from waysaid.drawing.fit import Drawn, largest
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.outline import RADIUS, RING, outline_path, outlines
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Dot, Label, Line, Path, Shape
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import listed, phrase, sentence, title_of
from waysaid.number import PITCH, Equation, Image, Language, Layout, Print, layout_of, say, text
from waysaid.ways import Kind, can_be_seen, groups_seen

Seen = tuple[tuple[int, ...], ...]

_WIDER = 15
"""How much further out an outline goes that has another inside it."""
_EDGE = RING + _WIDER + 3
_LARGEST = 1.6
"""No dot beside what was said is drawn larger than this times the layout's (our choice)."""
_LARGEST_ALONE = 4.0
"""The same for a picture by itself: a die fills the sheet, a single dot does not (our choice)."""
_LEAST = 0.6
"""On the board no dot is smaller: less than 2 % of the screen's height across (our choice)."""
_LINE, _FRAME_LINE = 4, 3
_IN_A_LINE = 7
"""How many numbers of a count stand behind the first of a line (our choice)."""
_ROOM = 3
"""The gap between the picture and what is said: the size of the letters over this."""


@dataclass(frozen=True, slots=True)
class Circled:
    """A picture, the groups seen in it, and what was said in lines."""

    image: Image
    seen: Seen
    said: tuple[str, ...]


def circled_of(telling: Telling) -> Circled | None:
    """Return a picture with the groups that were seen; None for other problems and other ways."""
    seen = seen_in(telling)
    if not isinstance(telling.problem, Image) or seen is None:
        return None
    return Circled(telling.problem, seen, _said(telling))


def seen_in(telling: Telling) -> Seen | None:
    """Return the groups a telling saw: those it names, else those found again from its steps.

    None for other problems, for a telling with no steps, and where no way goes like that.
    """
    image = telling.problem
    if not isinstance(image, Image) or not telling.steps:
        return None
    if can_be_seen(image, telling.seen):
        return telling.seen
    return groups_seen(image, telling.steps)


def _said(telling: Telling) -> tuple[str, ...]:
    """Return the steps as said; counts in one row, and a number seen at once by itself."""
    said: list[str] = []
    counting = False
    for place, step in enumerate(telling.steps):
        equation, unsaid = step.equation, telling.unsaid(place)
        line = line_of(step, unsaid)
        if _names_itself(equation):
            line = text(equation.right, Print.TRUE)
        if step.kind is Kind.COUNT and not unsaid:
            result = text(equation.right, Print.TRUE)
            if counting and said[-1].count(",") < _IN_A_LINE:
                said[-1] += f", {result}"
                continue
            if counting:
                said[-1] += ","
                said.append(result)
                continue
            line = f"{line.split(' ')[0]}, {result}"
        counting = step.kind is Kind.COUNT and not unsaid
        said.append(line)
    return tuple(line for line in said if line)


def _names_itself(equation: Equation) -> bool:
    return equation.left == equation.right


def draw_circled(circled: Circled, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the picture with its groups outlined, and what was said under or beside it."""
    drawn = largest(frame, lambda size, room: _laid(circled, size, room))
    return Scene(
        drawn.width,
        drawn.height,
        title_of(Picture.DOTS, telling.problem, lang),
        sentence((_groups_said(circled.seen, lang), *circled.said), lang),
        drawn.shapes,
    )


def draw_image(
    image: Image, width: int, height: int, lang: Language = Language.EN, seen: Seen = ()
) -> Scene:
    """Return the picture alone in the middle of a room of this size, with any groups given.

    Its words say what kind of picture it is, and never how many dots there are.
    """
    layout = layout_of(image)
    scale = _scale(layout, width, height, _LARGEST_ALONE)
    wide, high, _ = _drawn(layout, (), scale)
    left, top = (width - wide) // 2, (height - high) // 2
    _, _, shapes = _drawn(layout, seen, scale, left, top)
    title = say(image, lang)
    desc = _groups_said(seen, lang) if seen else title
    return Scene(width, height, title, sentence((desc,), lang), tuple(shapes))


def _groups_said(seen: Seen, lang: Language) -> str:
    return phrase(lang, "circled", sizes=listed(tuple(str(len(one)) for one in seen), lang))


def _laid(circled: Circled, size: int, room: Frame) -> Drawn:
    """Return the picture over what was said, or beside it where it is larger so."""
    layout = layout_of(circled.image)
    rows = equation_rows(circled.said, room.width, size)
    under = rows_height(rows, size) + size // _ROOM
    column = max((text_width(line, size) for line in circled.said), default=0)
    stack = tuple((line,) for line in circled.said)
    over = _scale(layout, room.width, room.height - under)
    beside = _scale(layout, room.width - column - size, room.height)
    if rows_height(stack, size) > room.height:
        beside = 0.0
    least = 0.1 if room.thumbnail else _LEAST
    if over >= beside:
        wide, high, shapes = _drawn(layout, circled.seen, max(over, least))
        words = _words(rows, size, 0, high + size // _ROOM)
        return _put(shapes, words, max(wide, _width(rows, size)), high + under)
    wide, high, shapes = _drawn(layout, circled.seen, max(beside, least))
    top = max(0, (high - rows_height(stack, size)) // 2)
    words = _words(stack, size, wide + size // 2, top)
    tall = max(high, rows_height(stack, size))
    return _put(shapes, words, wide + size // 2 + column, tall)


def _put(shapes: list[Shape], words: list[Label], width: int, height: int) -> Drawn:
    return Drawn(width, height, (*shapes, *words))


def _width(rows: tuple[tuple[str, ...], ...], size: int) -> int:
    return max(
        (sum(text_width(p, size) for p in row) + row_gap(size) * (len(row) - 1) for row in rows),
        default=0,
    )


def _words(rows: tuple[tuple[str, ...], ...], size: int, left: int, top: int) -> list[Label]:
    labels = []
    for place, row in enumerate(rows):
        x, y = left, top + digit_height(size) + place * row_pitch(size)
        for piece in row:
            labels.append(Label(x, y, size, Anchor.START, piece))
            x += text_width(piece, size) + row_gap(size)
    return labels


def _box(layout: Layout) -> tuple[int, int, int, int]:
    """Return left, top, right and bottom of all that is drawn, in the layout's units."""
    xs = [x for x, _ in layout.places]
    ys = [y for _, y in layout.places]
    return min(xs) - _EDGE, min(ys) - _EDGE, max(xs) + _EDGE, max(ys) + _EDGE


def _scale(layout: Layout, width: int, height: int, largest: float = _LARGEST) -> float:
    left, top, right, bottom = _box(layout)
    return max(0.0, min(width / (right - left), height / (bottom - top), largest))


def _drawn(
    layout: Layout, seen: Seen, scale: float, across: int = 0, down: int = 0
) -> tuple[int, int, list[Shape]]:
    """Return the width and height at this scale, and the shapes so far to the right and down."""
    left, top, right, bottom = _box(layout)
    shift = (across - left * scale, down - top * scale)

    def at(place: tuple[int, int]) -> tuple[int, int]:
        return round(place[0] * scale + shift[0]), round(place[1] * scale + shift[1])

    shapes: list[Shape] = []
    for frame in layout.frames:
        shapes += _lines(frame, at, max(2, round(_FRAME_LINE * scale)))
    radius = max(2, round(RADIUS * scale))
    shapes += [Dot(*at(dot), radius) for dot in layout.dots]
    for group in seen:
        shapes += _outlined(layout, seen, group, scale, shift)
    return int((right - left) * scale), int((bottom - top) * scale), shapes


def _lines(
    frame: tuple[int, int, int, int],
    at: Callable[[tuple[int, int]], tuple[int, int]],
    stroke: int,
) -> list[Shape]:
    left, top, right, bottom = frame
    across = [((left, y), (right, y)) for y in range(top, bottom + 1, PITCH)]
    down = [((x, top), (x, bottom)) for x in range(left, right + 1, PITCH)]
    return [Line(*at(one), *at(other), stroke) for one, other in (*across, *down)]


def _outlined(
    layout: Layout, seen: Seen, group: tuple[int, ...], scale: float, shift: tuple[float, float]
) -> list[Shape]:
    """Return the outline of a group: further out where another group is inside it."""
    inside = set(group)
    outer = any(set(other) < inside for other in seen)
    ring = RING + _WIDER if outer else RING
    places = [layout.places[at] for at in group]
    others = [dot for at, dot in enumerate(layout.dots) if at not in inside]
    stroke = max(2, round(_LINE * scale))
    return [
        Path(outline_path(each, ring, scale, shift), stroke)
        for each in outlines(places, others, ring)
    ]
