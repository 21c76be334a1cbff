"""Break up: the rows, the columns, or groups of two sizes in two parts, each a product."""

from collections.abc import Iterator
from itertools import groupby

from waysaid.ways.images.shape import Grid, Grouped
from waysaid.ways.plan import PLUS, TIMES, SeenPlan
from waysaid.ways.step import Kind

MANY_GROUPS = 5
"""From so many groups on a child would say products: four are two pairs. Our choice."""


def grid(picture: Grid) -> Iterator[SeenPlan]:
    """Yield the cuts after five or ten rows or columns, and in the middle."""
    rows, columns = picture.rows, picture.columns
    for cut, slug in cuts(rows):
        moves = (
            (Kind.GROUP, cut, TIMES, columns),
            (Kind.GROUP, rows - cut, TIMES, columns),
            (Kind.JOIN, cut * columns, PLUS, (rows - cut) * columns),
        )
        yield f"rows-{slug}", moves, picture.row_groups(cut, rows - cut)
    for cut, slug in cuts(columns):
        moves = (
            (Kind.GROUP, rows, TIMES, cut),
            (Kind.GROUP, rows, TIMES, columns - cut),
            (Kind.JOIN, rows * cut, PLUS, rows * (columns - cut)),
        )
        yield f"columns-{slug}", moves, picture.column_groups(cut, columns - cut)


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield five groups or more of two sizes, the alike together: 3 fives and 2 twos."""
    runs = [(size, len(tuple(alike))) for size, alike in groupby(picture.sizes)]
    if len(runs) != 2 or len(picture.groups) < MANY_GROUPS:
        return
    (one, many), (other, few) = runs
    if min(one, other, many, few) > 1:
        moves = (
            (Kind.GROUP, many, TIMES, one),
            (Kind.GROUP, few, TIMES, other),
            (Kind.JOIN, many * one, PLUS, few * other),
        )
        yield f"two-sizes{picture.tag}", moves, picture.groups


def cuts(many: int) -> Iterator[tuple[int, str]]:
    """Yield after how many rows a child would cut, with a slug; one row more is a near fact."""
    for friendly in (5, 10):
        if many > friendly + 1:
            yield friendly, f"at-{friendly}"
    if many > 3 and many % 2 == 0:
        yield many // 2, "halved"
