"""The groups a child is likely to see in a picture of dots, the likeliest first.

Our choice throughout: what stands apart is one group; a row of a frame is five; a long line or a
heap is halved, or seen as five and the rest.
"""

from collections.abc import Callable, Iterator
from functools import lru_cache
from itertools import combinations

from waysaid.number import Image, ImageKind, Place, layout_of

Dots = tuple[int, ...]
Seen = tuple[Dots, ...]

AT_A_GLANCE = 5
"""Up to how many dots are seen without counting: four or five, as is commonly said; no source."""
MOST_ROWS = 4
"""Up to how many rows are added up as groups rather than counted in skips; our choice."""


@lru_cache(maxsize=512)
def groupings(image: Image) -> tuple[Seen, ...]:
    """Return ways to see the dots as two or more groups; each dot is in one group of each."""
    found: dict[frozenset[Dots], Seen] = {}
    for groups in _all(image):
        if len(groups) > 1:
            found.setdefault(frozenset(tuple(sorted(group)) for group in groups), groups)
    return tuple(found.values())


def _all(image: Image) -> Iterator[Seen]:
    dots = layout_of(image).dots
    every = tuple(range(len(dots)))
    match image.kind:
        case ImageKind.DICE:
            yield from _dice(image.numbers)
        case ImageKind.FRAME | ImageKind.PAIRS:
            yield from _frames(image, dots)
        case ImageKind.ARRAY:
            yield from _lines(dots, every, most=MOST_ROWS)
            if 1 in image.numbers:
                yield from _cut(dots, every)
        case ImageKind.DOTS:
            yield from _scattered(dots, every)


def _dice(faces: tuple[int, ...]) -> Iterator[Seen]:
    patterns = []
    start = 0
    for face in faces:
        patterns.append(tuple(range(start, start + face)))
        start += face
    yield tuple(patterns)
    if len(patterns) == 1:
        yield from _one_die(faces[0])


def _one_die(face: int) -> Iterator[Seen]:
    """Two columns of three, four round a middle, two and two."""
    match face:
        case 4:
            yield ((0, 2), (1, 3))
        case 5:
            yield ((0, 1, 2, 3), (4,))
        case 6:
            yield ((0, 2, 4), (1, 3, 5))
            yield ((0, 1, 2, 3), (4, 5))


def _frames(image: Image, dots: tuple[Place, ...]) -> Iterator[Seen]:
    every = tuple(range(len(dots)))
    first = tuple(at for at in every if dots[at][1] < layout_of(image).frames[0][3])
    frames = tuple(frame for frame in (first, every[len(first) :]) if frame)
    yield frames
    rows = [tuple(_sorted_into(dots, frame, _height)) for frame in frames]
    if len(first) == 10:
        yield (first, *(row for later in rows[1:] for row in later))
    yield tuple(row for frame in rows for row in frame)
    if image.kind is ImageKind.PAIRS:
        yield tuple(pair for f in frames for pair in _sorted_into(dots, f, _across))


def _height(place: Place) -> int:
    return place[1]


def _across(place: Place) -> int:
    return place[0]


def _sorted_into(
    dots: tuple[Place, ...], group: Dots, by: Callable[[Place], int]
) -> Iterator[Dots]:
    """Yield the dots of a group that share a height (or a place across), in order."""
    for value in sorted({by(dots[at]) for at in group}):
        yield tuple(at for at in group if by(dots[at]) == value)


def _lines(dots: tuple[Place, ...], every: Dots, most: int) -> Iterator[Seen]:
    """Yield the rows and the columns, where there are few and each has two dots or more."""
    for by in (_height, _across):
        lines = tuple(_sorted_into(dots, every, by))
        if 1 < len(lines) <= most and min(map(len, lines)) > 1:
            yield lines


def _cut(dots: tuple[Place, ...], group: Dots) -> Iterator[Seen]:
    """Yield a heap or a line in two: left and right, above and below, five and the rest."""
    if len(group) < MOST_ROWS:
        return
    for order in ((0, 1), (1, 0)):
        row = tuple(sorted(group, key=lambda at: (dots[at][order[0]], dots[at][order[1]])))
        half = -(-len(row) // 2)
        yield row[:half], row[half:]
        if len(row) > AT_A_GLANCE:
            yield row[:AT_A_GLANCE], row[AT_A_GLANCE:]


def _scattered(dots: tuple[Place, ...], every: Dots) -> Iterator[Seen]:
    clusters = apart(dots)
    yield clusters
    yield from _lines(dots, every, most=MOST_ROWS)
    if len(clusters) == 1:
        yield from _cut(dots, every)
        return
    halved: list[Dots] = []
    for cluster in clusters:
        halves = next(_cut(dots, cluster), (cluster,)) if len(cluster) > AT_A_GLANCE else (cluster,)
        halved += halves
    yield tuple(halved)


def apart(dots: tuple[Place, ...]) -> Seen:
    """Return the groups that stand apart.

    Dots join up one after another, the nearest first, until a gap is 1.4 times the one before (our
    choice).
    """
    group_of = list(range(len(dots)))
    last = 0
    for gap, one, other in sorted(
        (_squared(dots[one], dots[other]), one, other)
        for one, other in combinations(range(len(dots)), 2)
    ):
        if group_of[one] == group_of[other]:
            continue
        if last and gap * 100 >= last * 196:
            break
        last = gap
        old, new = sorted((group_of[one], group_of[other]), reverse=True)
        group_of = [new if group == old else group for group in group_of]
    found: dict[int, list[int]] = {}
    for dot, group in enumerate(group_of):
        found.setdefault(group, []).append(dot)
    return tuple(tuple(group) for group in found.values())


def _squared(one: Place, other: Place) -> int:
    return (one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2
