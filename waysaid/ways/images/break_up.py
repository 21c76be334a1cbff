"""Break up: the rows, or the columns, in two parts, each a product."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Grid
from waysaid.ways.plan import PLUS, TIMES, SeenPlan
from waysaid.ways.step import Kind


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


def cuts(many: int) -> Iterator[tuple[int, str]]:
    """Yield after how many rows a child would cut, with a slug; one row more is a near fact."""
    for friendly in (5, 10):
        if many > friendly + 1:
            yield friendly, f"at-{friendly}"
    if many > 3 and many % 2 == 0:
        yield many // 2, "halved"
