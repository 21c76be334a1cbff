"""Where the dots of a quick image are: places on a sheet, in whole units.

Two dots side by side in a frame, a row or a pattern are `PITCH` apart, so that there is room for an
outline round each of them. The sizes are our choice.
"""

from dataclasses import dataclass

from waysaid.number.image import Image, ImageKind

PITCH = 48
"""From one dot of a pattern to the next."""
STEP = 10
"""One step of the field that dots are placed on: five, the least, are a little over `PITCH`."""
ROW = 5
"""Places in a row of a frame."""
_BETWEEN_DICE = 3 * PITCH
_DICE_IN_A_ROW = 3
_BETWEEN_FRAMES = 40
Place = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Layout:
    """The middles of the dots, then of the places left empty in a frame; and the frames.

    `frames` are the corners of each frame of two rows of five: left, top, right, bottom.
    """

    dots: tuple[Place, ...]
    empty: tuple[Place, ...] = ()
    frames: tuple[tuple[int, int, int, int], ...] = ()

    @property
    def places(self) -> tuple[Place, ...]:
        """Every place, the dots first: what a group of a way counts by."""
        return self.dots + self.empty


def layout_of(image: Image) -> Layout:
    """Return where the dots are, in the order in which a child would fill or read them."""
    match image.kind:
        case ImageKind.FRAME | ImageKind.PAIRS:
            return _frames(image)
        case ImageKind.DICE:
            return Layout(_dice(image.numbers))
        case ImageKind.ARRAY:
            rows, columns = image.numbers
            return Layout(
                tuple((x * PITCH, y * PITCH) for y in range(rows) for x in range(columns))
            )
        case ImageKind.DOTS:
            pairs = zip(image.numbers[::2], image.numbers[1::2], strict=True)
            return Layout(tuple((x * STEP, y * STEP) for x, y in pairs))


def filled(image: Image) -> tuple[int, ...]:
    """Return how many dots are in each frame of the picture: 14 in two frames are 10 and 4."""
    places, *given = image.numbers
    if len(given) == 1:
        first = min(given[0], 10)
        return (first, given[0] - first)[: places // 10]
    return tuple(given)


def _frames(image: Image) -> Layout:
    dots: list[Place] = []
    empty: list[Place] = []
    frames = []
    for at, count in enumerate(filled(image)):
        top = at * (2 * PITCH + _BETWEEN_FRAMES)
        places = [_place(index, image.kind, top) for index in range(2 * ROW)]
        dots += places[:count]
        empty += places[count:]
        frames.append((0, top, ROW * PITCH, top + 2 * PITCH))
    return Layout(tuple(dots), tuple(empty), tuple(frames))


def _place(index: int, kind: ImageKind, top: int) -> Place:
    """Return a place of a frame: row by row, or two by two from the left."""
    if kind is ImageKind.PAIRS:
        column, row = divmod(index, 2)
    else:
        row, column = divmod(index, ROW)
    return column * PITCH + PITCH // 2, top + row * PITCH + PITCH // 2


_CORNERS: tuple[Place, ...] = ((0, 0), (2, 0), (0, 2), (2, 2))
_MIDDLE: tuple[Place, ...] = ((1, 1),)
_PIPS = {
    1: _MIDDLE,
    2: ((0, 0), (2, 2)),
    3: ((0, 0), (1, 1), (2, 2)),
    4: _CORNERS,
    5: _CORNERS + _MIDDLE,
    6: ((0, 0), (2, 0), (0, 1), (2, 1), (0, 2), (2, 2)),
}
"""The patterns of a die, column and row; the odd dot of a pattern is its last."""


def _dice(faces: tuple[int, ...]) -> tuple[Place, ...]:
    """Return the dots of the patterns side by side, four of them or more in two rows."""
    far = 2 * PITCH + _BETWEEN_DICE
    columns = len(faces) if len(faces) <= _DICE_IN_A_ROW else -(-len(faces) // 2)
    return tuple(
        (at % columns * far + x * PITCH, at // columns * far + y * PITCH)
        for at, face in enumerate(faces)
        for x, y in _PIPS[face]
    )
