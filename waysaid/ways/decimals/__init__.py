"""Ways to work problems with decimals."""

from waysaid.ways.decimals import (
    chain,
    in_units,
    known_fact,
    over,
    over_own,
    rename_sum,
    rename_times,
    times,
)
from waysaid.ways.decimals.shape import Chain, Over, Pair, Plain, Times, shapes_of
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.way import Family

MAKERS: tuple[AnyMaker, ...] = (
    *in_units.MAKERS,
    Maker(Family.RENAME, Pair, rename_sum.plans),
    Maker(Family.KNOWN_FACT, Plain, known_fact.plain_plans),
    Maker(Family.KNOWN_FACT, Times, known_fact.times_plans),
    Maker(Family.RENAME, Times, rename_times.plans),
    *times.MAKERS,
    Maker(Family.RENAME, Over, over_own.rename_plans),
    *over.MAKERS,
    *over.UNDER_ONE,
    Maker(Family.SCALE_BOTH, Over, over_own.scale_plans),
    Maker(Family.SCALE_BOTH, Over, over_own.parts_plans),
    Maker(Family.PARTNERS, Chain, chain.partner_plans),
    Maker(Family.FACTOR_STEPS, Chain, chain.in_turn_plans),
)

__all__ = ["MAKERS", "shapes_of"]
