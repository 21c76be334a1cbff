"""The slips of decimals, listed by hand."""

from waysaid.slips.cases import Part, Two, Versus
from waysaid.slips.decimals import comparing, products, sums
from waysaid.slips.products import facts
from waysaid.slips.slip import OUR_GUESS, Likely, Rule, SlipName
from waysaid.slips.sums.rules import IN_COLUMNS, SUMS

_OFTEN, _SOMETIMES, _RARE = Likely.OFTEN, Likely.SOMETIMES, Likely.RARE
_N = SlipName

DECIMALS: tuple[Rule[Two], ...] = (
    Rule(_N.POINT_AS_WHOLE, sums.point_as_whole, _OFTEN, "mental-common"),
    Rule(_N.RIGHT_ALIGNED, sums.right_aligned, _OFTEN, OUR_GUESS),
    Rule(_N.IGNORE_POINT, sums.ignore_point, _OFTEN, "decimals-handout"),
    Rule(_N.APPEND_ZERO, products.append_zero, _OFTEN, "mental-common"),
    Rule(_N.POINT_MISPLACED, products.point_kept, _OFTEN, "mental-common"),
    Rule(_N.ALWAYS_SMALLER, products.always_smaller, _OFTEN, "mental-common"),
    Rule(_N.POINT_AS_WHOLE, products.point_as_whole, _OFTEN, OUR_GUESS),
    Rule(_N.DROP_CARRY, sums.whole_lost, _OFTEN, OUR_GUESS),
    Rule(_N.IGNORE_POINT, products.ignore_point, _SOMETIMES, OUR_GUESS),
    Rule(_N.POINT_MISPLACED, products.point_misplaced, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRONG_OPERATION, products.wrong_operation, _SOMETIMES, OUR_GUESS),
    Rule(_N.LARGER_BY_SMALLER, products.larger_by_smaller, _SOMETIMES, OUR_GUESS),
    Rule(_N.NEIGHBOUR_FACT, products.on_digits(facts.fact_beside), _SOMETIMES, OUR_GUESS),
    *(
        Rule(rule.slug, sums.in_units(rule.make), rule.likely, OUR_GUESS)
        for rule in SUMS
        if rule.slug in IN_COLUMNS
    ),
)
"""In the order in which slips of one likelihood are listed."""

COMPARED: tuple[Rule[Versus], ...] = (
    Rule(_N.LONGER_LARGER, comparing.longer_larger, _OFTEN, "unimelb-dec"),
    Rule(_N.SHORTER_LARGER, comparing.shorter_larger, _SOMETIMES, "unimelb-dec"),
    Rule(_N.IGNORE_POINT, comparing.ignore_point, _SOMETIMES, OUR_GUESS),
)

WITH_FRACTIONS: tuple[Rule[Versus], ...] = (
    Rule(_N.DENOMINATOR_AFTER_POINT, comparing.bottom_after_point, _SOMETIMES, OUR_GUESS),
    Rule(_N.TOP_POINT_BOTTOM, comparing.top_point_bottom, _SOMETIMES, "decimals-handout"),
)

ALONE: tuple[Rule[Part], ...] = (
    Rule(_N.TOP_POINT_BOTTOM, comparing.alone_top_point_bottom, _SOMETIMES, "decimals-handout"),
    Rule(_N.DENOMINATOR_AFTER_POINT, comparing.alone_bottom_after_point, _SOMETIMES, OUR_GUESS),
)
