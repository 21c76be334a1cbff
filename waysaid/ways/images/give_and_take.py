"""Give and take: dots moved in thought, so that the groups are alike or one is full."""

from collections.abc import Iterator

from waysaid.ways.images.bridge import FULL, turns
from waysaid.ways.images.shape import Grouped
from waysaid.ways.plan import MINUS, PLUS, SeenPlan
from waysaid.ways.step import Kind

MOST_LEVELLED = 2
"""How many dots a child would move to make two groups alike; our choice."""


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the moves that make two groups alike, or the one that gets them five or ten."""
    if len(picture.groups) != 2:
        return
    for slug, one, other in turns(picture):
        for full, most in FULL.items():
            if 0 < full - len(one) <= most and len(other) <= full:
                yield from _moved(f"{slug}-to-{full}{picture.tag}", one, other, full - len(one))
        off = len(other) - len(one)
        if 0 < off <= 2 * MOST_LEVELLED and off % 2 == 0:
            yield from _moved(f"{slug}-levelled{picture.tag}", one, other, off // 2)


def _moved(
    slug: str, one: tuple[int, ...], other: tuple[int, ...], many: int
) -> Iterator[SeenPlan]:
    rest = len(other) - many
    if rest < 1:
        return
    moves = (
        (Kind.MOVE, len(one), PLUS, many),
        (Kind.MOVE, len(other), MINUS, many),
        (Kind.JOIN, len(one) + many, PLUS, rest),
    )
    yield slug, moves, (one, other[rest:], other[:rest])
