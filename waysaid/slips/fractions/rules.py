"""The slips of fractions, listed by hand."""

from waysaid.slips.cases import Parts
from waysaid.slips.fractions import comparing, products, sums
from waysaid.slips.slip import OUR_GUESS, Likely, Rule, SlipName

_OFTEN, _SOMETIMES, _RARE = Likely.OFTEN, Likely.SOMETIMES, Likely.RARE
_N = SlipName

FRACTIONS: tuple[Rule[Parts], ...] = (
    Rule(_N.ADD_ACROSS, sums.add_across, _OFTEN, "fraction-pages"),
    Rule(_N.SUBTRACT_ACROSS, sums.subtract_across, _OFTEN, "wwc2010-ern"),
    Rule(_N.ONLY_DIVIDED, products.only_divided, _OFTEN, OUR_GUESS),
    Rule(_N.BOTH_MULTIPLIED, products.both_multiplied, _OFTEN, OUR_GUESS),
    Rule(_N.SMALLER_FROM_LARGER, sums.smaller_from_larger, _OFTEN, OUR_GUESS),
    Rule(_N.NO_REGROUP, sums.no_regroup, _SOMETIMES, OUR_GUESS),
    Rule(_N.TOPS_OVER_LARGER, sums.tops_over_larger, _SOMETIMES, "wwc2010-ern"),
    Rule(_N.TOPS_UNCHANGED, sums.tops_unchanged, _SOMETIMES, OUR_GUESS),
    Rule(_N.DROP_CARRY, sums.whole_lost, _SOMETIMES, OUR_GUESS),
    Rule(_N.WHOLES_FORGOTTEN, sums.wholes_forgotten, _SOMETIMES, OUR_GUESS),
    Rule(_N.PARTS_FORGOTTEN, sums.parts_forgotten, _SOMETIMES, OUR_GUESS),
    Rule(_N.WHOLE_AS_TOP, sums.whole_as_top, _SOMETIMES, OUR_GUESS),
    Rule(_N.NEAR_MISS, sums.near_miss, _SOMETIMES, OUR_GUESS),
    Rule(_N.ONLY_MULTIPLIED, products.only_multiplied, _SOMETIMES, OUR_GUESS),
    Rule(_N.TIMES_BOTTOM, products.times_bottom, _SOMETIMES, OUR_GUESS),
    Rule(_N.REST_INSTEAD, products.rest_instead, _SOMETIMES, OUR_GUESS),
    Rule(_N.ALWAYS_SMALLER, products.always_smaller, _OFTEN, OUR_GUESS),
    Rule(_N.PART_MISSING, products.part_missing, _SOMETIMES, OUR_GUESS),
    Rule(_N.BOTTOM_KEPT, products.bottom_kept, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRONG_TURNED, products.wrong_turned, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRONG_OPERATION, sums.wrong_operation, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRONG_OPERATION, products.wrong_operation, _SOMETIMES, OUR_GUESS),
    Rule(_N.LARGER_BY_SMALLER, products.larger_by_smaller, _SOMETIMES, OUR_GUESS),
    Rule(_N.CROSSED, products.crossed, _SOMETIMES, OUR_GUESS),
    Rule(_N.BOTTOM_TAKEN, products.bottom_taken, _RARE, OUR_GUESS),
    Rule(_N.WHOLE_AS_TEN, sums.whole_as_ten, _RARE, OUR_GUESS),
    Rule(_N.TOPS_ONLY, sums.tops_only, _RARE, "nsw-cont"),
    Rule(_N.BOTTOMS_ONLY, sums.bottoms_only, _RARE, "nsw-cont"),
)
"""In the order in which slips of one likelihood are listed."""

COMPARED: tuple[Rule[comparing.Fractions], ...] = (
    Rule(_N.BIGGER_BOTTOM, comparing.bigger_bottom, _OFTEN, OUR_GUESS),
    Rule(_N.GAP_COMPARE, comparing.gap_compare, _OFTEN, "nsw-cont"),
    Rule(_N.BIGGER_TOP, comparing.bigger_top, _SOMETIMES, OUR_GUESS),
    Rule(_N.SMALLER_BOTTOM, comparing.smaller_bottom, _SOMETIMES, OUR_GUESS),
)
