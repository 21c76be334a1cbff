"""Pictures of dots, for the ideas that are about what is seen at once."""

from collections.abc import Callable, Iterator, Mapping
from itertools import product

from waysaid.number import Image, ImageKind, Problem

_FRAMES = (ImageKind.FRAME, ImageKind.PAIRS)


def _tens(least: int) -> Iterator[Problem]:
    """Yield the frames of ten, dots in rows of five and in pairs, with so many dots or more."""
    for kind, dots in product(_FRAMES, range(least, 11)):
        yield Image(kind, (10, dots))


def _twenties(least: int, others: range) -> Iterator[Problem]:
    """Yield two frames of ten: in the first so many dots or more, in the second one of `others`."""
    for kind, one, other in product(_FRAMES, range(least, 11), others):
        yield Image(kind, (20, one, other))


def _groups(many: int, most: int, dots: int) -> Iterator[Problem]:
    """Yield so many dice of at most `most` dots each, and at most `dots` in all."""
    for dice in product(range(1, most + 1), repeat=many):
        if sum(dice) <= dots:
            yield Image(ImageKind.DICE, dice)


def _near_twins(most: int) -> Iterator[Problem]:
    """Yield two dice that are alike or nearly so."""
    for one, other in product(range(1, most + 1), repeat=2):
        if abs(one - other) <= 1:
            yield Image(ImageKind.DICE, (one, other))


def _big_near_twins() -> Iterator[Problem]:
    """Yield two dice, or two frames, that are alike or nearly so."""
    yield from _near_twins(6)
    for kind, one, other in product(_FRAMES, range(3, 11), range(3, 11)):
        if abs(one - other) <= 1:
            yield Image(kind, (20, one, other))


def _even_out() -> Iterator[Problem]:
    """Yield two dice that are alike, or become so when one dot moves."""
    for one, other in product(range(1, 7), repeat=2):
        if abs(one - other) in (0, 2) and one + other <= 10:
            yield Image(ImageKind.DICE, (one, other))


def _rows(dots: int, widest: int) -> Iterator[Problem]:
    """Yield rows of two dots or more, at most so many in a row, and in all."""
    for rows, columns in product(range(1, 7), range(2, widest + 1)):
        if rows * columns <= dots:
            yield Image(ImageKind.ARRAY, (rows, columns))


IMAGES: Mapping[str, Callable[[], Iterator[Problem]]] = {
    "see-five-and-some": lambda: _tens(2),
    "see-two-groups": lambda: _groups(2, 6, 10),
    "see-what-is-empty": lambda: _tens(5),
    "see-near-twins": lambda: _near_twins(5),
    "see-pairs": lambda: (Image(ImageKind.PAIRS, (10, dots)) for dots in range(1, 11)),
    "see-three-groups": lambda: _groups(3, 4, 10),
    "see-four-groups": lambda: _groups(4, 3, 10),
    "see-rows-to-10": lambda: _rows(10, 5),
    "move-a-dot": _even_out,
    "see-ten-and-some": lambda: (
        Image(kind, (20, 10, dots)) for kind, dots in product(_FRAMES, range(1, 11))
    ),
    "see-two-frames-nearly-full": lambda: _twenties(8, range(8, 11)),
    "see-frames-nearly-full": lambda: _twenties(7, range(7, 11)),
    "fill-the-frame": lambda: _twenties(7, range(1, 8)),
    "see-big-near-twins": _big_near_twins,
    "see-rows": lambda: _rows(30, 6),
    "double-the-rows": lambda: _rows(30, 6),
}
