"""Split: the groups are seen and put together."""

from collections.abc import Iterator

from waysaid.number import MOST_GROUPS
from waysaid.ways.images.shape import Grouped
from waysaid.ways.plan import SeenPlan, summed
from waysaid.ways.step import Kind


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the groups as they stand, put together at once or one after another."""
    if len(picture.groups) > MOST_GROUPS:
        return
    for turn, moves in summed(Kind.JOIN, *picture.sizes):
        yield f"groups{turn}{picture.tag}", moves, picture.groups


def largest_first(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the same from the largest group to the smallest."""
    if len(picture.groups) > MOST_GROUPS:
        return
    groups = tuple(sorted(picture.groups, key=len, reverse=True))
    for turn, moves in summed(Kind.JOIN, *(len(group) for group in groups)):
        yield f"largest-first{turn}{picture.tag}", moves, groups
