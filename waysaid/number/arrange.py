"""Arrangements of dots: groups that can be seen as groups, the same for the same seed.

A group has a shape that children come to know at a glance (a pair, a line, a corner, a pattern of a
die), stands in a cell of its own, and is always further from the next group than its own dots are
from each other. Shapes and sizes are our choice.
"""

from random import Random

from waysaid.number.image import HIGHEST, MOST_DOTS, WIDEST, Image, ImageKind
from waysaid.number.layout import Place

MOST_IN_A_GROUP = 6
"""The largest group that has a shape known at a glance."""
MOST_GROUPS = 6
_CELL = 26
"""How wide and high a cell is, in steps of the field."""
_EDGE = 6
"""How far a group stays from the edge of its cell: twice that is between two groups."""
_COLUMNS = {1: 1, 2: 2, 3: 3, 4: 2, 5: 3, 6: 3}

_SHAPES: dict[int, tuple[tuple[Place, ...], ...]] = {
    1: (((0, 0),),),
    2: (((0, 0), (6, 0)), ((0, 0), (5, 5))),
    3: (
        ((0, 0), (6, 0), (12, 0)),
        ((0, 6), (6, 6), (3, 0)),
        ((0, 0), (10, 10), (5, 5)),
        ((0, 0), (6, 0), (0, 6)),
    ),
    4: (
        ((0, 0), (6, 6), (6, 0), (0, 6)),
        ((5, 0), (5, 10), (0, 5), (10, 5)),
        ((0, 0), (6, 0), (12, 0), (6, 6)),
    ),
    5: (
        ((0, 0), (10, 10), (10, 0), (0, 10), (5, 5)),
        ((0, 0), (6, 0), (12, 0), (3, 6), (9, 6)),
        ((0, 0), (6, 0), (0, 6), (6, 6), (12, 0)),
    ),
    6: (
        ((0, 0), (6, 0), (12, 0), (0, 6), (6, 6), (12, 6)),
        ((0, 0), (6, 0), (12, 0), (3, 6), (9, 6), (6, 12)),
    ),
}
"""The shapes of a group by its size; neighbours are six to a little over seven steps apart."""


def arrange(seed: int, *groups: int) -> Image:
    """Return dots in groups of these sizes, the first group's dots first; never overlapping.

    Raises `ValueError` for no group, more than six, a group not of 1 to 6 dots, or over 30 dots.
    """
    if not 0 < len(groups) <= MOST_GROUPS or sum(groups) > MOST_DOTS:
        raise ValueError(f"one to {MOST_GROUPS} groups, {MOST_DOTS} dots at most, not {groups}")
    if not all(0 < size <= MOST_IN_A_GROUP for size in groups):
        raise ValueError(f"groups of 1 to {MOST_IN_A_GROUP} dots, not {groups}")
    chance = Random(seed)
    columns = _COLUMNS[len(groups)]
    rows = -(-len(groups) // columns)
    cells = [(column, row) for row in range(rows) for column in range(columns)]
    chance.shuffle(cells)
    left = chance.randrange(WIDEST - columns * _CELL + 1)
    top = chance.randrange(HIGHEST - rows * _CELL + 1)
    numbers: list[int] = []
    for size, (column, row) in zip(groups, cells, strict=False):
        for x, y in _placed(_shape(size, chance), chance):
            numbers += (left + column * _CELL + x, top + row * _CELL + y)
    return Image(ImageKind.DOTS, tuple(numbers))


def _shape(size: int, chance: Random) -> tuple[Place, ...]:
    """Return one of the shapes, turned or mirrored."""
    shape = chance.choice(_SHAPES[size])
    wide, high = (max(place[axis] for place in shape) for axis in (0, 1))
    if chance.randrange(2):
        shape = tuple((wide - x, y) for x, y in shape)
    if chance.randrange(2):
        shape = tuple((x, high - y) for x, y in shape)
    return tuple((y, x) for x, y in shape) if chance.randrange(2) else shape


def _placed(shape: tuple[Place, ...], chance: Random) -> tuple[Place, ...]:
    """Return the shape somewhere in its cell."""
    wide, high = (max(place[axis] for place in shape) for axis in (0, 1))
    room = _CELL - 2 * _EDGE
    left = _EDGE + chance.randint(0, room - wide)
    top = _EDGE + chance.randint(0, room - high)
    return tuple((left + x, top + y) for x, y in shape)
