"""What a quick image can be seen as: groups, a frame with empty places, rows and columns.

Dots, and the places left empty in a frame, are named by their place in the picture's layout.
"""

from dataclasses import dataclass

from waysaid.number import Image, ImageKind, Problem
from waysaid.ways.images.groupings import AT_A_GLANCE, Dots, Seen, groupings
from waysaid.ways.place import MOST_COUNTS

MOST_EMPTY = 5
"""How many empty places of a frame a child would take away; our choice."""
MOST_EMPTY_OF_TWO = 4
"""The same for two frames; our choice."""


@dataclass(frozen=True, slots=True)
class AtOnce:
    """So few dots, or in such a pattern, that they are seen without counting."""

    count: int


@dataclass(frozen=True, slots=True)
class OneByOne:
    """Few enough dots to count them one by one."""

    count: int


@dataclass(frozen=True, slots=True)
class Grouped:
    """Two or more groups that stand apart or have a shape of their own; the likeliest is first."""

    groups: Seen
    nth: int = 1

    @property
    def tag(self) -> str:
        """What the variants of a later grouping of the same picture end with."""
        return "" if self.nth == 1 else f"-seen-{self.nth}"

    @property
    def sizes(self) -> tuple[int, ...]:
        """How many dots are in each group."""
        return tuple(len(group) for group in self.groups)


@dataclass(frozen=True, slots=True)
class Gaps:
    """Groups thought full, and the empty places that are then too many."""

    full: Seen
    empty: Dots


@dataclass(frozen=True, slots=True)
class Grid:
    """Rows and columns, two of each at least."""

    rows: int
    columns: int

    def row_groups(self, *counts: int) -> Seen:
        """Return groups of so many whole rows, from the top."""
        return _parts(tuple(range(self.rows * self.columns)), [n * self.columns for n in counts])

    def column_groups(self, *counts: int) -> Seen:
        """Return groups of so many whole columns, from the left."""
        dots = [r * self.columns + c for c in range(self.columns) for r in range(self.rows)]
        return _parts(tuple(dots), [n * self.rows for n in counts])


def shapes_of(problem: Problem) -> tuple[object, ...]:
    """Return everything a picture can be seen as; empty for other problems."""
    if not isinstance(problem, Image):
        return ()
    found: list[object] = []
    if _at_once(problem):
        found.append(AtOnce(problem.count))
    found += [Grouped(groups, nth) for nth, groups in enumerate(groupings(problem), 1)]
    if problem.kind in (ImageKind.FRAME, ImageKind.PAIRS):
        found += _gaps(problem)
    if problem.kind is ImageKind.ARRAY and min(problem.numbers) > 1:
        found.append(Grid(*problem.numbers))
    scattered = problem.kind is ImageKind.DOTS
    if problem.count > 1 and (problem.count <= MOST_COUNTS + 1 or scattered):
        found.append(OneByOne(problem.count))
    return tuple(found)


def _at_once(image: Image) -> bool:
    match image.kind:
        case ImageKind.DICE:
            return len(image.numbers) == 1
        case ImageKind.FRAME | ImageKind.PAIRS:
            alone = len(image.numbers) == 2
            return alone and (image.count <= AT_A_GLANCE or image.count == 10)
        case _:
            return image.count <= AT_A_GLANCE and len(groupings(image)) < 2


def _gaps(image: Image) -> list[Gaps]:
    places, *given = image.numbers
    total = image.count
    every = tuple(range(places))
    empty = every[total:]
    if len(given) == 1 and places == 20:
        empty = empty if total > 10 else ()
    most = MOST_EMPTY if places == 10 else MOST_EMPTY_OF_TWO
    found = [Gaps((every,), empty)] if 0 < len(empty) <= most else []
    if len(given) == 2 and given[0] < 10:
        found += _one_full(given[0], given[1])
    return found


def _one_full(first: int, second: int) -> list[Gaps]:
    """Return the first frame thought full beside the dots of the second."""
    missing = 10 - first
    empty = tuple(range(first + second, first + second + missing))
    if missing > 2:
        return []
    return [Gaps(((*range(first), *empty), tuple(range(first, first + second))), empty)]


def _parts(dots: Dots, sizes: list[int]) -> Seen:
    parts = []
    start = 0
    for size in sizes:
        parts.append(dots[start : start + size])
        start += size
    return tuple(parts)
