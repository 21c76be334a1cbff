"""Steps by factors: half of the rows, or of the columns, and that doubled."""

from collections.abc import Iterator

from waysaid.ways.images.shape import Grid
from waysaid.ways.plan import TIMES, SeenPlan
from waysaid.ways.step import Kind


def grid(picture: Grid) -> Iterator[SeenPlan]:
    """Yield the half that is seen, doubled."""
    rows, columns = picture.rows, picture.columns
    if rows > 2 and rows % 2 == 0:
        half = rows // 2
        moves = ((Kind.GROUP, half, TIMES, columns), (Kind.SCALE, half * columns, TIMES, 2))
        yield "half-the-rows", moves, picture.row_groups(half, half)
    if columns > 2 and columns % 2 == 0:
        half = columns // 2
        moves = ((Kind.GROUP, rows, TIMES, half), (Kind.SCALE, rows * half, TIMES, 2))
        yield "half-the-columns", moves, picture.column_groups(half, half)
