"""The slips of products of two whole numbers, listed by hand."""

from waysaid.slips.products import facts, friendly, places, written
from waysaid.slips.slip import OUR_GUESS, Likely, Pair, Rule, SlipName

_OFTEN, _SOMETIMES, _RARE = Likely.OFTEN, Likely.SOMETIMES, Likely.RARE
_N = SlipName

PRODUCTS: tuple[Rule[Pair], ...] = (
    Rule(_N.ZERO_TIMES, facts.zero_times, _OFTEN, "open-textbook"),
    Rule(_N.NEIGHBOUR_FACT, facts.fact_beside, _OFTEN, "campbell-graham1985"),
    Rule(_N.GROUP_OFF, facts.group_off, _OFTEN, "nzcer-arb"),
    Rule(_N.DIGITS_ALONE, places.digits_alone, _OFTEN, "nfer2020"),
    Rule(_N.PART_MISSING, places.straight_across, _OFTEN, "mental-common"),
    Rule(_N.WRONG_OPERATION, facts.wrong_operation, _OFTEN, "nzcer-arb"),
    Rule(_N.ZERO_DROPPED, places.zero_dropped, _OFTEN, OUR_GUESS),
    Rule(_N.DROP_CARRY, written.drop_carry, _OFTEN, OUR_GUESS),
    Rule(_N.PART_MISSING, places.part_missing, _SOMETIMES, "open-textbook"),
    Rule(_N.GROUP_OFF, facts.groups_off, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRONG_OPERATION, facts.added_up, _SOMETIMES, OUR_GUESS),
    Rule(_N.NEIGHBOUR_FACT, facts.fact_near, _SOMETIMES, "open-textbook"),
    Rule(_N.NEAR_MISS, facts.near_miss, _SOMETIMES, OUR_GUESS),
    Rule(_N.ADJUST_WRONG_WAY, friendly.adjust_wrong_way, _SOMETIMES, OUR_GUESS),
    Rule(_N.FORGET_ADJUST, friendly.forget_adjust, _SOMETIMES, OUR_GUESS),
    Rule(_N.ADJUST_BY_ONES, friendly.adjust_by_ones, _SOMETIMES, OUR_GUESS),
    Rule(_N.ONE_SIDE_ONLY, friendly.one_side_only, _SOMETIMES, OUR_GUESS),
    Rule(_N.ZERO_ADDED, places.zero_added, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRITE_CARRY, written.write_carry, _SOMETIMES, OUR_GUESS),
    Rule(_N.CARRY_FIRST, written.carry_first, _SOMETIMES, OUR_GUESS),
)
"""In the order in which slips of one likelihood are listed."""
