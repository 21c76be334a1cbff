"""Near fact: one row, or one column, fewer is known, and the last one goes on."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Grid
from waysaid.ways.plan import PLUS, TIMES, SeenPlan
from waysaid.ways.step import Kind


def grid(picture: Grid) -> Iterator[SeenPlan]:
    """Yield the product without the last row, and without the last column."""
    rows, columns = picture.rows, picture.columns
    if rows > 2:
        fact = (Kind.GROUP, rows - 1, TIMES, columns)
        more = (Kind.MEND, (rows - 1) * columns, PLUS, columns)
        yield "one-row-more", (fact, more), picture.row_groups(rows - 1, 1)
    if columns > 2:
        fact = (Kind.GROUP, rows, TIMES, columns - 1)
        more = (Kind.MEND, rows * (columns - 1), PLUS, rows)
        yield "one-column-more", (fact, more), picture.column_groups(columns - 1, 1)
