"""Counting: one by one, on from a group, or in skips by equal groups, rows or columns."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Grid, Grouped, OneByOne
from waysaid.ways.place import MOST_COUNTS
from waysaid.ways.plan import PLUS, SeenPlan, counts, hops
from waysaid.ways.step import Kind

MOST_FROM_SMALLER = 6
"""How many dots a child would count on from the smaller of two groups; our choice."""


def one_by_one(picture: OneByOne) -> Iterator[SeenPlan]:
    """Yield the count of every dot, from the first."""
    singles = tuple((dot,) for dot in range(picture.count))
    yield "one-by-one", counts(1, PLUS, 1, picture.count - 1), singles


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the count on from either of two groups."""
    if len(picture.groups) != 2:
        return
    larger, smaller = sorted(picture.groups, key=len, reverse=True)
    for slug, start, rest, most in (
        ("from-larger", larger, smaller, MOST_COUNTS),
        ("from-smaller", smaller, larger, MOST_FROM_SMALLER),
    ):
        if len(start) > 1 and len(rest) <= most:
            moves = counts(len(start), PLUS, 1, len(rest))
            yield f"{slug}{picture.tag}", moves, (start, *((dot,) for dot in rest))


def in_skips(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield the count by three or more equal groups, and a last one that is smaller: 2, 4, 6, 7."""
    sizes = picture.sizes
    equal = sizes.count(sizes[0])
    alike = sizes[:equal] == (sizes[0],) * equal
    over = sizes[equal:]
    ends = not over or (len(over) == 1 and over[0] < sizes[0])
    if sizes[0] > 1 and equal > 2 and alike and ends and len(sizes) <= MOST_COUNTS + 1:
        yield f"in-skips{picture.tag}", hops(*sizes, kind=Kind.COUNT), picture.groups


def grid(picture: Grid) -> Iterator[SeenPlan]:
    """Yield the skips by rows and by columns: 4, 8, 12."""
    rows, columns = picture.rows, picture.columns
    if rows <= MOST_COUNTS:
        by_rows = picture.row_groups(*[1] * rows)
        yield "by-rows", counts(columns, PLUS, columns, rows - 1), by_rows
    if columns <= MOST_COUNTS:
        by_columns = picture.column_groups(*[1] * columns)
        yield "by-columns", counts(rows, PLUS, rows, columns - 1), by_columns
