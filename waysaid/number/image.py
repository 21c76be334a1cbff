"""A quick image: a picture of dots that is shown for a moment, and how it is written as text."""

import re
from dataclasses import dataclass
from enum import StrEnum

from waysaid.number.errors import Reason, Unreadable


class ImageKind(StrEnum):
    """The kinds of pictures; the words are part of a problem's text."""

    FRAME = "frame"
    DICE = "dice"
    ARRAY = "array"
    DOTS = "dots"


@dataclass(frozen=True, slots=True)
class Image:
    """A picture of dots.

    `numbers` are: for a frame its places (10 or 20) and the dots in it; for dice the dots of each
    pattern; for an array its rows and its columns; for dots the place of each, x then y.
    """

    kind: ImageKind
    numbers: tuple[int, ...]

    @property
    def count(self) -> int:
        """How many dots there are."""
        match self.kind:
            case ImageKind.FRAME:
                return self.numbers[1]
            case ImageKind.DICE:
                return sum(self.numbers)
            case ImageKind.ARRAY:
                return self.numbers[0] * self.numbers[1]
            case ImageKind.DOTS:
                return len(self.numbers) // 2


IMAGE_WORDS = ("image", "imagen")
FRAMES = (10, 20)
MOST_DICE = 4
MOST_IN_A_ROW = 12
MOST_DOTS = 30
WIDEST, HIGHEST = 100, 60
"""The field that dots are placed on, in steps; limits here are our choice."""

_FRAME = re.compile(r"\s*(?:frame|marco)\s+(\d{1,2})\s*:\s*(\d{1,2})\s*", re.IGNORECASE)
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

    Raises `Unreadable` for anything else.
    """
    start = image_start(given) or 0
    rest = given[start:]
    for kind, pattern in (
        (ImageKind.FRAME, _FRAME),
        (ImageKind.DICE, _DICE),
        (ImageKind.ARRAY, _ARRAY),
        (ImageKind.DOTS, _DOTS),
    ):
        match = pattern.fullmatch(rest)
        if match:
            image = Image(kind, tuple(map(int, re.findall(r"\d+", " ".join(match.groups())))))
            if _fits(image):
                return image
    raise Unreadable(given, (start, len(given)), Reason.IMAGE)


def _fits(image: Image) -> bool:
    numbers = image.numbers
    match image.kind:
        case ImageKind.FRAME:
            return numbers[0] in FRAMES and 0 < numbers[1] <= numbers[0]
        case ImageKind.DICE:
            return len(numbers) <= MOST_DICE
        case ImageKind.ARRAY:
            return all(0 < number <= MOST_IN_A_ROW for number in numbers)
        case ImageKind.DOTS:
            places = set(zip(numbers[::2], numbers[1::2], strict=True))
            inside = all(x <= WIDEST and y <= HIGHEST for x, y in places)
            return inside and len(places) == image.count <= MOST_DOTS


def image_text(image: Image) -> str:
    """Return the picture as text: the inverse of `parse_image`."""
    numbers = image.numbers
    match image.kind:
        case ImageKind.FRAME:
            rest = f"frame {numbers[0]}: {numbers[1]}"
        case ImageKind.DICE:
            rest = "dice: " + " ".join(map(str, numbers))
        case ImageKind.ARRAY:
            rest = f"array: {numbers[0]} x {numbers[1]}"
        case ImageKind.DOTS:
            pairs = zip(numbers[::2], numbers[1::2], strict=True)
            rest = "dots: " + " ".join(f"{x},{y}" for x, y in pairs)
    return f"image {rest}"
