"""Ways for a problem with work on both sides: true or false, which is more, what is missing."""

from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.two_sides import across, each_side, find, same, turned
from waysaid.ways.two_sides.shape import Closed, Open, shapes_of
from waysaid.ways.way import Family

MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.KNOWN_FACT, Closed, turned.plans),
    Maker(Family.RENAME, Closed, each_side.plans),
    Maker(Family.PARTNERS, Closed, same.plans),
    Maker(Family.GIVE_AND_TAKE, Closed, across.moved),
    Maker(Family.SHIFT_BOTH, Closed, across.shifted),
    Maker(Family.DOUBLE_HALVE, Closed, across.doubled),
    Maker(Family.SCALE_BOTH, Closed, across.scaled),
    Maker(Family.RENAME, Open, find.undone),
    Maker(Family.THINK_ADD, Open, find.added_on),
    Maker(Family.THINK_TIMES, Open, find.multiplied),
    Maker(Family.PARTNERS, Open, same.left_alone),
    Maker(Family.GIVE_AND_TAKE, Open, across.moved_open),
    Maker(Family.SHIFT_BOTH, Open, across.shifted_open),
    Maker(Family.DOUBLE_HALVE, Open, across.doubled_open),
    Maker(Family.SCALE_BOTH, Open, across.scaled_open),
)

__all__ = ["MAKERS", "shapes_of"]
