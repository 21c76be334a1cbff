"""Ways to tell which of two numbers is larger, and why."""

from waysaid.ways.compare import gap, hundredths, landmark, same_form, same_top, splits
from waysaid.ways.compare.shape import Two, shapes_of
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.way import Family

MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, Two, same_form.plans),
    Maker(Family.BENCHMARK, Two, landmark.plans),
    Maker(Family.SCALE_BOTH, Two, same_top.plans),
    Maker(Family.SCALE_BOTH, Two, hundredths.plans),
    Maker(Family.SPLIT, Two, splits.plans),
    Maker(Family.ADD_UP, Two, gap.plans),
)

__all__ = ["MAKERS", "shapes_of"]
