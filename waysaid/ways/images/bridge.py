"""Bridge: some dots of one group fill the other up to five or ten, then the rest."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Grouped
from waysaid.ways.plan import PLUS, SeenPlan
from waysaid.ways.step import Kind

FULL = {5: 2, 10: 4}
"""What is filled up to, and how many dots may be missing to it; our choice."""


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the fill from either of two groups."""
    if len(picture.groups) != 2:
        return
    for slug, one, other in turns(picture):
        for full, most in FULL.items():
            need = full - len(one)
            rest = len(other) - need
            if 0 < need <= most and len(other) <= full and rest > 0:
                moves = ((Kind.JUMP, len(one), PLUS, need), (Kind.JUMP, full, PLUS, rest))
                seen = (one, other[rest:], other[:rest])
                yield f"{slug}-to-{full}{picture.tag}", moves, seen


def turns(picture: Grouped) -> Iterator[tuple[str, tuple[int, ...], tuple[int, ...]]]:
    """Yield the two groups in either order, with a slug for which comes first."""
    first, second = picture.groups
    yield "first", first, second
    yield "second", second, first
