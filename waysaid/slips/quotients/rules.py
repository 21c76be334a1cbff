"""The slips of divisions of two whole numbers, listed by hand."""

from waysaid.slips.quotients import facts, places, rest
from waysaid.slips.slip import OUR_GUESS, Likely, Pair, Rule, SlipName

_OFTEN, _SOMETIMES, _RARE = Likely.OFTEN, Likely.SOMETIMES, Likely.RARE
_N = SlipName

QUOTIENTS: tuple[Rule[Pair], ...] = (
    Rule(_N.LARGER_BY_SMALLER, facts.larger_by_smaller, _OFTEN, OUR_GUESS),
    Rule(_N.REST_FORGOTTEN, rest.rest_forgotten, _OFTEN, OUR_GUESS),
    Rule(_N.REST_AS_POINT, rest.rest_as_point, _OFTEN, OUR_GUESS),
    Rule(_N.NEAR_MISS, facts.near_miss, _OFTEN, "open-textbook"),
    Rule(_N.ZERO_DROPPED, places.zero_dropped, _OFTEN, OUR_GUESS),
    Rule(_N.NEIGHBOUR_FACT, facts.neighbour_fact, _SOMETIMES, OUR_GUESS),
    Rule(_N.NEAR_MISS, facts.rest_near_miss, _SOMETIMES, OUR_GUESS),
    Rule(_N.NEAR_MISS, facts.tens_missed, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRONG_OPERATION, facts.wrong_operation, _SOMETIMES, OUR_GUESS),
    Rule(_N.PART_MISSING, places.part_missing, _SOMETIMES, OUR_GUESS),
    Rule(_N.REST_NOT_CARRIED, rest.rest_not_carried, _SOMETIMES, OUR_GUESS),
    Rule(_N.REST_TOO_LARGE, rest.rest_too_large, _SOMETIMES, OUR_GUESS),
    Rule(_N.REST_AS_GROUP, rest.rest_as_group, _SOMETIMES, OUR_GUESS),
    Rule(_N.DIGITS_ALONE, places.digits_alone, _SOMETIMES, OUR_GUESS),
    Rule(_N.ONE_SIDE_ONLY, places.one_side_only, _SOMETIMES, OUR_GUESS),
    Rule(_N.ZERO_ADDED, places.zero_added, _SOMETIMES, OUR_GUESS),
    Rule(_N.GROUP_OFF, facts.group_off, _SOMETIMES, OUR_GUESS),
    Rule(_N.ZERO_TIMES, facts.zero_shared, _SOMETIMES, OUR_GUESS),
    Rule(_N.REST_WRONG_BOTTOM, rest.rest_wrong_bottom, _RARE, OUR_GUESS),
    Rule(_N.LARGER_BY_SMALLER, facts.swapped_digits, _RARE, OUR_GUESS),
    Rule(_N.DIVISOR_SPLIT, places.divisor_split, _RARE, OUR_GUESS),
)
"""In the order in which slips of one likelihood are listed."""
