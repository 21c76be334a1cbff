"""Find the largest labels with which a drawing fits its room."""

from collections.abc import Callable
from dataclasses import dataclass

from waysaid.drawing.shape import Box, Path, Shape
from waysaid.drawing.telling import Frame


@dataclass(frozen=True, slots=True)
class Drawn:
    """Shapes and the room they take, in units."""

    width: int
    height: int
    shapes: tuple[Shape, ...]


def largest(frame: Frame, build: Callable[[int, Frame], Drawn]) -> Drawn:
    """Return what `build` makes of the first room that holds it, with the largest labels there.

    If no room does, the drawing with the smallest labels, wider or higher than the frame.
    """
    for room in frame.rooms:
        made = largest_in(room, build)
        if _fits(made, room):
            return made
    return build(frame.least, frame)


def largest_in(room: Frame, build: Callable[[int, Frame], Drawn]) -> Drawn:
    """Return what `build` makes with the largest labels that fit; the smallest if none does."""
    smallest = build(room.least, room)
    if not _fits(smallest, room):
        return smallest
    for size in range(room.label, room.least, -1):
        made = build(size, room)
        if _fits(made, room):
            return made
    return smallest


def _fits(made: Drawn, room: Frame) -> bool:
    return made.width <= room.width and made.height <= room.height


def stroke_of(size: int) -> int:
    """Return the width of a line beside labels of this size: 7 % of it, at least 2 (our choice)."""
    return max(2, size * 7 // 100)


def open_dot(x: int, y: int, r: int, stroke: int) -> Box:
    """Return a dot that is only its outline."""
    return Box(x - r, y - r, 2 * r, 2 * r, r, False, stroke)


def arrow(x1: int, x2: int, y: int, stroke: int) -> Path:
    """Return an arrow along the row at y, its head at x2."""
    back = 3 * stroke if x1 > x2 else -3 * stroke
    head = f"M{x2 + back} {y - 3 * stroke}L{x2} {y}L{x2 + back} {y + 3 * stroke}"
    return Path(f"M{x1} {y}L{x2} {y}{head}", stroke)
