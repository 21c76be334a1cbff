"""Compose a quick image: what a teacher chose, as a problem, with how children may see it."""

from dataclasses import dataclass
from enum import StrEnum

from django.utils.translation import gettext as _

from waysaid.drawing import Scene, Telling, draw_image, lines
from waysaid.number import (
    HIGHEST,
    MOST_GROUPS,
    MOST_IN_A_GROUP,
    WIDEST,
    Image,
    Language,
    Unreadable,
    arrange,
    image_text,
    parse,
)
from waysaid.ways import ways

LONGEST = 60
"""Letters that are read of the numbers typed."""
STEP = 8
"""Steps between the places of the grid on which dots are placed by hand."""
ROWS = range(2, HIGHEST, STEP)
COLUMNS = range(2, WIDEST, STEP)
PREVIEW = (720, 360)
SMALL = (300, 190)
MOST_SEEN = 8
"""Ways to see it that are shown beside the picture: what one looks over (our choice)."""


class Kind(StrEnum):
    """What a teacher may choose."""

    FRAME = "frame"
    PAIRS = "pairs"
    DICE = "dice"
    ARRAY = "array"
    GROUPS = "groups"
    HAND = "hand"


class BadPictureChoiceError(ValueError):
    """Raised with one sentence on what would make a picture."""


@dataclass(frozen=True, slots=True)
class Chosen:
    """What the form holds; `placed` are the places ticked, column by row, of the grid."""

    kind: Kind
    numbers: str
    seed: int = 1
    placed: frozenset[tuple[int, int]] = frozenset()


@dataclass(frozen=True, slots=True)
class SeenShown:
    """One way to see a picture: its groups outlined, and the equations they make."""

    scene: Scene
    lines: tuple[str, ...]


def image_chosen(chosen: Chosen) -> Image:
    """Return the picture that was chosen. Raises `BadPictureChoiceError` with one sentence."""
    if chosen.kind is Kind.HAND:
        return _by_hand(chosen)
    numbers = [
        int(one) for one in chosen.numbers[:LONGEST].split() if one.isascii() and one.isdigit()
    ]
    if chosen.kind is Kind.GROUPS:
        return _groups(chosen, numbers)
    try:
        problem = parse(_written(chosen.kind, numbers))
    except Unreadable:
        raise BadPictureChoiceError(wanted(chosen.kind)) from None
    if not isinstance(problem, Image):
        raise BadPictureChoiceError(wanted(chosen.kind))
    return problem


def wanted(kind: Kind) -> str:
    """Return one sentence on the numbers that a kind of picture takes."""
    return {
        Kind.FRAME: _("A ten frame takes the dots in it, 1 to 20; or the dots in two: 8 6."),
        Kind.PAIRS: _("A ten frame takes the dots in it, 1 to 20; or the dots in two: 8 6."),
        Kind.DICE: _("Dice patterns take one to five numbers from 1 to 6: 4 3."),
        Kind.ARRAY: _("Rows take how many rows and how many in each, up to 12: 3 4."),
        Kind.GROUPS: _("Groups take one to six numbers from 1 to 6, 30 dots at most: 4 3 2."),
        Kind.HAND: _("Choose one place at least for a dot."),
    }[kind]


def seen_in(image: Image, language: Language) -> tuple[SeenShown, ...]:
    """Return how children are likely to see a picture, the least effort first."""
    return tuple(
        SeenShown(draw_image(image, *SMALL, language, way.seen), lines(Telling(image, way.steps)))
        for way in ways(image)[:MOST_SEEN]
    )


def preview(image: Image, language: Language) -> Scene:
    """Return the picture alone."""
    return draw_image(image, *PREVIEW, language)


def _written(kind: Kind, numbers: list[int]) -> str:
    said = " ".join(map(str, numbers))
    match kind:
        case Kind.DICE:
            return f"image dice: {said}"
        case Kind.ARRAY:
            return f"image array: {' x '.join(map(str, numbers))}"
        case _:
            frames = 10 if len(numbers) == 1 and numbers[0] <= 10 else 20
            return f"image {kind} {frames}: {said}"


def _groups(chosen: Chosen, numbers: list[int]) -> Image:
    fitting = 0 < len(numbers) <= MOST_GROUPS and all(0 < n <= MOST_IN_A_GROUP for n in numbers)
    if not fitting:
        raise BadPictureChoiceError(wanted(Kind.GROUPS))
    try:
        return arrange(chosen.seed, *numbers)
    except ValueError:
        raise BadPictureChoiceError(wanted(Kind.GROUPS)) from None


def _by_hand(chosen: Chosen) -> Image:
    dots = sorted((y, x) for x, y in chosen.placed if x in COLUMNS and y in ROWS)
    try:
        problem = parse("image dots: " + " ".join(f"{x},{y}" for y, x in dots))
    except Unreadable:
        raise BadPictureChoiceError(wanted(Kind.HAND)) from None
    if not isinstance(problem, Image):
        raise BadPictureChoiceError(wanted(Kind.HAND))
    return problem


def text_of(image: Image) -> str:
    """Return the picture as a plan keeps it."""
    return image_text(image)
