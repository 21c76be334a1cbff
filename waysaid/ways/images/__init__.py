"""Quick images: a way is how the dots were seen, with the equations that this makes.

Where families meet: what is seen as groups and put together is `split`, a double or a product that
is simply known `known-fact`; dots that fill the other group up in silence are a `bridge`, dots said
to be moved are `give-and-take`; a frame thought full is `adjust`.
"""

from waysaid.ways.images import (
    adjust,
    break_up,
    bridge,
    counting,
    factor_steps,
    give_and_take,
    known_fact,
    near_double,
    near_fact,
    partners,
    split,
)
from waysaid.ways.images.shape import AtOnce, Gaps, Grid, Grouped, OneByOne, shapes_of
from waysaid.ways.maker import AnySeenMaker, SeenMaker
from waysaid.ways.way import Family

MAKERS: tuple[AnySeenMaker, ...] = (
    SeenMaker(Family.KNOWN_FACT, AtOnce, known_fact.at_once),
    SeenMaker(Family.KNOWN_FACT, Grouped, known_fact.grouped),
    SeenMaker(Family.KNOWN_FACT, Grid, known_fact.grid),
    SeenMaker(Family.ADJUST, Gaps, adjust.gaps),
    SeenMaker(Family.NEAR_DOUBLE, Grouped, near_double.grouped),
    SeenMaker(Family.BRIDGE, Grouped, bridge.grouped),
    SeenMaker(Family.COUNTING, Grouped, counting.in_skips),
    SeenMaker(Family.SPLIT, Grouped, split.grouped),
    SeenMaker(Family.PARTNERS, Grouped, partners.grouped),
    SeenMaker(Family.SPLIT, Grouped, split.largest_first),
    SeenMaker(Family.GIVE_AND_TAKE, Grouped, give_and_take.grouped),
    SeenMaker(Family.COUNTING, OneByOne, counting.one_by_one),
    SeenMaker(Family.COUNTING, Grouped, counting.grouped),
    SeenMaker(Family.COUNTING, Grid, counting.grid),
    SeenMaker(Family.NEAR_FACT, Grid, near_fact.grid),
    SeenMaker(Family.FACTOR_STEPS, Grid, factor_steps.grid),
    SeenMaker(Family.BREAK_UP, Grid, break_up.grid),
    SeenMaker(Family.BREAK_UP, Grouped, break_up.grouped),
)

__all__ = ["MAKERS", "shapes_of"]
