"""The slips of sums and differences of two whole numbers, listed by hand.

Sources are ids of the list kept with the published tests. How likely a slip is, in three words, is
our reading of them; few of them give a number, and none for mental work.
"""

from waysaid.slips.slip import OUR_GUESS, Likely, Pair, Rule, SlipName
from waysaid.slips.sums import carrying, columns, friendly, parts

_OFTEN, _SOMETIMES, _RARE = Likely.OFTEN, Likely.SOMETIMES, Likely.RARE
_N = SlipName


def _column(
    slug: SlipName,
    how: tuple[columns.Fact, columns.Exchange],
    likely: Likely,
    source: str,
) -> Rule[Pair]:
    return Rule(slug, columns.worked(*how), likely, source)


_RIGHTLY, _ON = columns.rightly, columns.carried_on
SUMS: tuple[Rule[Pair], ...] = (
    _column(_N.SMALLER_FROM_LARGER, (columns.turned, _ON), _OFTEN, "brown-burton1978"),
    _column(_N.ZERO_TAKE, (columns.zero_gives_all, _ON), _OFTEN, "open-textbook"),
    Rule(_N.SMALLER_FROM_LARGER, columns.turned_whole, _OFTEN, OUR_GUESS),
    Rule(_N.DROP_CARRY, carrying.drop_carry, _OFTEN, "open-textbook"),
    Rule(_N.NEAR_MISS, parts.near_miss, _OFTEN, OUR_GUESS),
    Rule(_N.ADJUST_WRONG_WAY, friendly.adjust_wrong_way, _OFTEN, "mental-common"),
    Rule(_N.COUNT_START, parts.count_start, _OFTEN, "nzcer-arb"),
    _column(_N.NO_REGROUP, (_RIGHTLY, columns.from_nowhere), _OFTEN, "bug-repo-b"),
    _column(_N.ZERO_TO_NINE, (_RIGHTLY, columns.zero_to_nine), _SOMETIMES, "bug-repo-a"),
    _column(_N.SKIP_ZERO, (_RIGHTLY, columns.past_zeros), _SOMETIMES, "bug-repo-b"),
    _column(_N.ZERO_STAYS_TEN, (_RIGHTLY, columns.zero_to_ten), _SOMETIMES, "unimelb-sub"),
    Rule(_N.FORGET_ADJUST, friendly.forget_adjust, _SOMETIMES, OUR_GUESS),
    Rule(_N.PART_MISSING, parts.part_missing, _SOMETIMES, OUR_GUESS),
    Rule(_N.PART_MISSING, parts.hop_missing, _SOMETIMES, OUR_GUESS),
    Rule(_N.ONES_TAKEN, parts.ones_taken, _SOMETIMES, OUR_GUESS),
    Rule(_N.MOVED_ACROSS, friendly.moved_across, _SOMETIMES, "mental-common"),
    Rule(_N.WRONG_OPERATION, parts.wrong_operation, _SOMETIMES, "vanlehn1990"),
    Rule(_N.DIGITS_ALONE, parts.digits_alone, _SOMETIMES, OUR_GUESS),
    Rule(_N.WRITE_CARRY, carrying.write_carry, _SOMETIMES, "ashlock"),
    Rule(_N.NEAR_MISS, parts.tens_missed, _SOMETIMES, OUR_GUESS),
    Rule(_N.MISALIGNED, carrying.misaligned, _RARE, "open-textbook"),
    _column(_N.SMALLER_FROM_LARGER, (columns.turned_by_zero, _ON), _RARE, "vanlehn1990"),
    _column(_N.ZERO_TAKE, (columns.zero_gives_all, columns.past_zeros), _RARE, "brown-burton1978"),
    _column(_N.ZERO_TAKE, (columns.zero_gives_none, _ON), _RARE, "vanlehn1990"),
    _column(_N.ZERO_TAKE, (columns.taking_zero_leaves_none, _ON), _RARE, "vanlehn1990"),
    _column(_N.WRITE_ZERO, (columns.too_small_gives_none, _ON), _RARE, "vanlehn1990"),
    _column(_N.BORROW_LEFTMOST, (_RIGHTLY, columns.from_the_left), _RARE, "vanlehn1990"),
    Rule(_N.STOPS_SHORT, columns.stops_short, _RARE, "vanlehn1990"),
    Rule(_N.LOWERS_BLANK, columns.lowers_blank, _RARE, "vanlehn1990"),
)
"""In the order in which slips of one likelihood are listed."""

IN_COLUMNS = frozenset(
    {
        _N.SMALLER_FROM_LARGER, _N.DROP_CARRY, _N.NEAR_MISS, _N.NO_REGROUP, _N.WRONG_OPERATION,
        _N.ZERO_TAKE, _N.ZERO_TO_NINE, _N.SKIP_ZERO, _N.ZERO_STAYS_TEN, _N.BORROW_LEFTMOST,
        _N.WRITE_ZERO, _N.ADJUST_WRONG_WAY, _N.FORGET_ADJUST,
    }
)  # fmt: skip
"""The slips that can happen alike where the ones stand for tenths or hundredths."""
