"""A quick image: a picture of dots that is shown for a moment, and how it is written as text."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations

from waysaid.number.errors import Reason, Unreadable


class ImageKind(StrEnum):
    """The kinds of pictures; the words are part of a problem's text."""

    FRAME = "frame"
    PAIRS = "pairs"
    DICE = "dice"
    ARRAY = "array"
    DOTS = "dots"


@dataclass(frozen=True, slots=True)
class Image:
    """A picture of dots.

    `numbers` are: for a frame its places (10 or 20) and the dots in it, for two frames perhaps
    the dots in each (20, 8, 6); the same for a frame filled in pairs; for dice the dots of each
    pattern; for an array its rows and its columns; for dots the place of each, x then y.
    """

    kind: ImageKind
    numbers: tuple[int, ...]

    @property
    def count(self) -> int:
        """How many dots there are."""
        match self.kind:
            case ImageKind.FRAME | ImageKind.PAIRS:
                return sum(self.numbers[1:])
            case ImageKind.DICE:
                return sum(self.numbers)
            case ImageKind.ARRAY:
                return self.numbers[0] * self.numbers[1]
            case ImageKind.DOTS:
                return len(self.numbers) // 2


IMAGE_WORDS = ("image", "imagen")
FRAMES = (10, 20)
MOST_DICE = 5
MOST_IN_A_ROW = 12
MOST_DOTS = 30
WIDEST, HIGHEST = 100, 60
"""The field that dots are placed on, in steps; limits here are our choice."""
NEAREST = 5
"""How many steps apart two dots are at least, so that they never touch."""

_FILLED = r"\s+(\d{1,2})\s*:\s*(\d{1,2})(?:\s+(\d{1,2}))?\s*"
_FRAME = re.compile(rf"\s*(?:frame|marco){_FILLED}", re.IGNORECASE)
_PAIRS = re.compile(rf"\s*(?:pairs|parejas){_FILLED}", re.IGNORECASE)
_DICE = re.compile(r"\s*(?:dice|dados)\s*:\s*([1-6](?:\s+[1-6])*)\s*", re.IGNORECASE)
_ARRAY = re.compile(
    r"\s*(?:array|filas)\s*:\s*(\d{1,2})\s*(?:x|×|\*|by|por)\s*(\d{1,2})\s*", re.IGNORECASE
)
_DOTS = re.compile(
    r"\s*(?:dots|puntos)\s*:\s*(\d{1,3},\d{1,3}(?:\s+\d{1,3},\d{1,3})*)\s*", re.IGNORECASE
)


def image_start(given: str) -> int | None:
    """Return where the picture begins after the word `image`; None where the text is no picture."""
    match = re.match(rf"\s*(?:{'|'.join(reversed(IMAGE_WORDS))})\b", given, re.IGNORECASE)
    return match.end() if match else None


def parse_image(given: str) -> Image:
    """Read `image frame 10: 7`, `image dice: 3 2`, `image array: 3 x 4`, `image dots: 1,2 5,8`.

    A frame filled from the top is a `frame`, one filled two by two `pairs`. Raises `Unreadable` for
    anything else.
    """
    start = image_start(given) or 0
    rest = given[start:]
    for kind, pattern in (
        (ImageKind.FRAME, _FRAME),
        (ImageKind.PAIRS, _PAIRS),
        (ImageKind.DICE, _DICE),
        (ImageKind.ARRAY, _ARRAY),
        (ImageKind.DOTS, _DOTS),
    ):
        match = pattern.fullmatch(rest)
        if match:
            given_numbers = re.findall(r"\d+", " ".join(filter(None, match.groups())))
            image = Image(kind, tuple(map(int, given_numbers)))
            if _fits(image):
                return image
    raise Unreadable(given, (start, len(given)), Reason.IMAGE)


def _fits(image: Image) -> bool:
    numbers = image.numbers
    match image.kind:
        case ImageKind.FRAME | ImageKind.PAIRS:
            places, *filled = numbers
            room = places if len(filled) == 1 else 10
            apart = len(filled) == 1 or places == max(FRAMES)
            return places in FRAMES and apart and all(0 < dots <= room for dots in filled)
        case ImageKind.DICE:
            return len(numbers) <= MOST_DICE
        case ImageKind.ARRAY:
            return all(0 < number <= MOST_IN_A_ROW for number in numbers)
        case ImageKind.DOTS:
            dots = tuple(zip(numbers[::2], numbers[1::2], strict=True))
            inside = all(x <= WIDEST and y <= HIGHEST for x, y in dots)
            return inside and len(dots) <= MOST_DOTS and apart_enough(dots)


def apart_enough(dots: Sequence[tuple[int, int]]) -> bool:
    """Tell whether no two dots of the field are nearer to each other than `NEAREST` steps."""
    return all(
        (one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2 >= NEAREST**2
        for one, other in combinations(dots, 2)
    )


def image_text(image: Image) -> str:
    """Return the picture as text: the inverse of `parse_image`."""
    numbers = image.numbers
    match image.kind:
        case ImageKind.FRAME | ImageKind.PAIRS:
            rest = f"{image.kind} {numbers[0]}: " + " ".join(map(str, numbers[1:]))
        case ImageKind.DICE:
            rest = "dice: " + " ".join(map(str, numbers))
        case ImageKind.ARRAY:
            rest = f"array: {numbers[0]} x {numbers[1]}"
        case ImageKind.DOTS:
            pairs = zip(numbers[::2], numbers[1::2], strict=True)
            rest = "dots: " + " ".join(f"{x},{y}" for x, y in pairs)
    return f"image {rest}"
