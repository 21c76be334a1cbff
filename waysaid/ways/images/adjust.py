"""Adjust: the frame is thought full, then its empty places are taken away."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Gaps
from waysaid.ways.plan import MINUS, PLUS, Moves, SeenPlan
from waysaid.ways.step import Kind


def gaps(picture: Gaps) -> Iterator[SeenPlan]:
    """Yield ten (or twenty, or ten and the other frame) less the empty places."""
    sizes = [len(group) for group in picture.full]
    full, missing = sum(sizes), len(picture.empty)
    away = (Kind.TAKE, full, MINUS, missing)
    moves: Moves = (away,) if len(sizes) == 1 else ((Kind.JOIN, sizes[0], PLUS, sizes[1]), away)
    slug = "empty-places" if len(sizes) == 1 else "one-frame-full"
    yield slug, moves, (*picture.full, picture.empty)
