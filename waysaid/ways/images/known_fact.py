"""Known fact: seen at once, a double, equal groups or rows whose product is simply known."""

from collections.abc import Iterator

from waysaid.number import Equation
from waysaid.ways.factor import knows
from waysaid.ways.images.shape import AtOnce, Grid, Grouped
from waysaid.ways.plan import PLUS, TIMES, SeenPlan
from waysaid.ways.step import Kind, Step


def at_once(picture: AtOnce) -> Iterator[SeenPlan]:
    """Yield the number itself: nothing is added, it is seen."""
    said = Step(Kind.RECALL, Equation(picture.count, picture.count))
    yield "seen-at-once", (said,), (tuple(range(picture.count)),)


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield a double, and three or more equal groups as a product."""
    first, *others = picture.sizes
    if any(size != first for size in others):
        return
    if len(others) == 1:
        yield f"double{picture.tag}", ((Kind.RECALL, first, PLUS, first),), picture.groups
    elif first > 1:
        times = 1 + len(others)
        yield f"equal-groups{picture.tag}", ((Kind.RECALL, times, TIMES, first),), picture.groups


def grid(picture: Grid) -> Iterator[SeenPlan]:
    """Yield rows times columns, said either way round."""
    rows, columns = picture.rows, picture.columns
    if knows(rows, columns):
        by_rows = picture.row_groups(*[1] * rows)
        yield "rows", ((Kind.RECALL, rows, TIMES, columns),), by_rows
        by_columns = picture.column_groups(*[1] * columns)
        yield "columns", ((Kind.RECALL, columns, TIMES, rows),), by_columns
