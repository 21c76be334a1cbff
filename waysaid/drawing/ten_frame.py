"""Ten frames: two rows of five, filled with counters for small numbers.

Where a child fills up to ten, the second number goes on in the first frame; else each number has
frames of its own. What is taken away is crossed out, from the last counter back.
"""

from dataclasses import dataclass

from waysaid.drawing.fit import Drawn, largest, open_dot, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.problem import answer_of, numbers_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Dot, Label, Line, Path, Shape
from waysaid.drawing.story import hops_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import (
    BLANK,
    Equation,
    Exact,
    Language,
    Operation,
    Print,
    Sign,
    number_text,
    text,
)

MOST = 20
"""No more counters than two full frames for a number (our choice: seen at a glance)."""


@dataclass(frozen=True, slots=True)
class Group:
    """Counters in frames of their own: filled ones, outlined ones, and how many are crossed."""

    filled: int
    outlined: int = 0
    crossed: int = 0

    @property
    def frames(self) -> int:
        """How many frames they take, at least one."""
        return max(1, -(-(self.filled + self.outlined) // 10))


@dataclass(frozen=True, slots=True)
class Counters:
    """The groups in order, and the caption under them."""

    groups: tuple[Group, ...]
    caption: str


def counters_of(telling: Telling) -> Counters | None:
    """Return the counters of a small sum, difference or missing number; None for others."""
    problem = telling.problem
    answer = answer_of(telling)
    if isinstance(problem, Equation):
        return _missing(problem, answer)
    if not isinstance(problem, Operation):
        return None
    left, right = problem.left, problem.right
    if not (_small(left) and _small(right) and isinstance(left, int) and isinstance(right, int)):
        return None
    said = "" if answer is None else f" = {number_text(answer, Print.TRUE)}"
    caption = text(problem, Print.TRUE) + said
    if problem.sign is Sign.PLUS:
        if left + right <= MOST and _fills_up(telling):
            return Counters((Group(left, right),), caption)
        return Counters((Group(left), Group(right)), caption)
    if problem.sign is Sign.MINUS and right <= left:
        return Counters((Group(left, 0, right),), caption)
    return None


def _missing(problem: Equation, answer: Exact | None) -> Counters | None:
    """Return `7 + _ = 12` as seven counters; what the child found stands in the caption alone.

    Counters for it would show at a glance whether it fits, and the board does not say that.
    """
    left = problem.left
    if not isinstance(left, Operation) or left.sign is not Sign.PLUS:
        return None
    known = next((one for one in (left.left, left.right) if isinstance(one, int)), None)
    if known is None or not _small(known) or not _small(problem.right):
        return None
    caption = text(problem, Print.TRUE)
    if answer is not None:
        caption = caption.replace(BLANK.value, number_text(answer, Print.TRUE))
    return Counters((Group(known),), caption)


def _small(number: object) -> bool:
    return isinstance(number, int) and 0 <= number <= MOST


def _fills_up(telling: Telling) -> bool:
    """Tell whether a step adds just what is missing to ten or twenty to one of the numbers."""
    numbers = numbers_of(telling)
    for place, step in enumerate(telling.steps):
        for hop in hops_of(step, telling.unsaid(place))[:1]:
            full = (hop.start.value + hop.amount.value) % 10 == 0
            if hop.start.value in numbers and hop.sign is Sign.PLUS and full:
                return True
    return False


def draw_frames(counters: Counters, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the frames side by side, at most two in a row, with the caption under them."""
    drawn = largest(frame, lambda size, _: _laid(counters, size))
    said = [phrase(lang, "frame")]
    for group in counters.groups:
        said.append(phrase(lang, "counters", count=group.filled + group.outlined))
        said.append(phrase(lang, "crossed", count=group.crossed) if group.crossed else "")
    title = title_of(Picture.TEN_FRAME, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, sentence(tuple(said), lang), drawn.shapes)


def _laid(counters: Counters, size: int) -> Drawn:
    cell, stroke = size * 7 // 10, stroke_of(size)
    gap = size // 3
    shapes: list[Shape] = []
    places: list[tuple[int, int]] = []
    row = 0
    total = sum(group.frames for group in counters.groups)
    for group in counters.groups:
        for _ in range(group.frames):
            at = len(places)
            x, y = at % 2 * (5 * cell + gap) + stroke, at // 2 * (2 * cell + gap) + stroke
            places.append((x, y))
            shapes.extend(_frame(x, y, cell, stroke))
            row = max(row, y + 2 * cell)
        shapes.extend(_counters(group, places[-group.frames :], cell, stroke))
    wide = min(total, 2) * 5 * cell + (gap if total > 1 else 0) + 2 * stroke
    wide = max(wide, text_width(counters.caption, size))
    baseline = row + size // 3 + digit_height(size)
    shapes.append(Label(0, baseline, size, Anchor.START, counters.caption))
    return Drawn(wide, baseline + size // 4, tuple(shapes))


def _frame(x: int, y: int, cell: int, stroke: int) -> list[Shape]:
    across = [Line(x, y + row * cell, x + 5 * cell, y + row * cell, stroke) for row in range(3)]
    down = [Line(x + at * cell, y, x + at * cell, y + 2 * cell, stroke) for at in range(6)]
    return [*across, *down]


def _counters(group: Group, frames: list[tuple[int, int]], cell: int, stroke: int) -> list[Shape]:
    shapes: list[Shape] = []
    total = group.filled + group.outlined
    radius = cell * 32 // 100
    for place in range(total):
        left, top = frames[place // 10]
        x = left + place % 5 * cell + cell // 2
        y = top + place % 10 // 5 * cell + cell // 2
        crossed = place >= total - group.crossed
        full = place < group.filled and not crossed
        shapes.append(Dot(x, y, radius) if full else open_dot(x, y, radius, stroke))
        if crossed:
            arm = radius
            shapes.append(Path(f"M{x - arm} {y + arm}L{x + arm} {y - arm}", stroke))
    return shapes
