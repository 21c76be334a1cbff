"""Our icons for a class's signals, as the shapes of a drawing in a square of `SIDE` units."""

from waysaid.drawing import Box, Path, Shape

SIDE = 48
_STROKE = 3


def _line(d: str) -> Path:
    return Path(d, _STROKE)


def _ring(x: int, y: int, radius: int) -> Box:
    return Box(x - radius, y - radius, 2 * radius, 2 * radius, radius, filled=False, stroke=_STROKE)


ICONS: dict[str, tuple[Shape, ...]] = {
    "way": (
        _line("M12 22H17V40H12Q9 40 9 37V25Q9 22 12 22Z"),
        _line("M17 23C22 20 25 15 25 9C30 9 32 13 30 21H37Q42 22 41 26L38 37Q37 40 34 40H17"),
    ),
    "thinking": (_ring(27, 18, 12), _ring(13, 34, 4), _ring(6, 43, 2)),
    "agree": (_ring(18, 24, 12), _ring(30, 24, 12)),
    "same": (_ring(9, 24, 6), _ring(39, 24, 6), _line("M15 24H33")),
    "another": (
        _line("M24 44V28C24 18 10 20 10 8"),
        _line("M24 28C24 18 38 20 38 8"),
        _line("M5 13L10 7L15 13"),
        _line("M33 13L38 7L43 13"),
    ),
    "question": (
        _line("M6 8H42V34H22L13 42V34H6Z"),
        _line("M19 17C19 10 29 10 29 17C29 21 24 21 24 25"),
        _line("M24 29L24 30"),
    ),
}
"""By the names that a class's signals have for them."""
