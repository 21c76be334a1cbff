"""Near double: two groups almost alike, a double and one or two more."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Grouped
from waysaid.ways.plan import PLUS, SeenPlan
from waysaid.ways.step import Kind

MOST_OFF = 2
"""How far apart the groups may be; our choice."""


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the double of the smaller group, then the dots that are too many for it."""
    if len(picture.groups) != 2:
        return
    small, large = sorted(picture.groups, key=len)
    size, off = len(small), len(large) - len(small)
    if size > 1 and 0 < off <= MOST_OFF:
        moves = ((Kind.JOIN, size, PLUS, size), (Kind.MEND, 2 * size, PLUS, off))
        yield f"more{picture.tag}", moves, (small, large[:size], large[size:])
