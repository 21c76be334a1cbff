"""Ways to estimate: easier numbers first, and only they are worked out."""

from waysaid.ways.about import rounded
from waysaid.ways.about.shape import Estimate, shapes_of
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.way import Family

MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.BENCHMARK, Estimate, rounded.to_landmarks),
    Maker(Family.ADJUST, Estimate, rounded.plans),
)

__all__ = ["MAKERS", "shapes_of"]
