"""The ways with whole numbers, listed by hand; of two with the same steps the first keeps them.

The order settles where families meet: a double is a double before it is a jump (30 + 28 from
30 + 30), tens that go on are a jump before they are a bridge (40 + 67 through 100).
"""

from waysaid.ways import nothing
from waysaid.ways.add import adjust as add_adjust
from waysaid.ways.add import bridge as add_bridge
from waysaid.ways.add import column as add_column
from waysaid.ways.add import counting as add_counting
from waysaid.ways.add import give_and_take as add_give_and_take
from waysaid.ways.add import jump as add_jump
from waysaid.ways.add import known_fact as add_known_fact
from waysaid.ways.add import near_double as add_near_double
from waysaid.ways.add import rename as add_rename
from waysaid.ways.add import split as add_split
from waysaid.ways.add import split_then_jump as add_split_then_jump
from waysaid.ways.below import adjust as below_adjust
from waysaid.ways.below import bridge as below_bridge
from waysaid.ways.below import counting as below_counting
from waysaid.ways.below import jump as below_jump
from waysaid.ways.below import known_fact as below_known_fact
from waysaid.ways.below import rename as below_rename
from waysaid.ways.below import split as below_split
from waysaid.ways.factors import in_turn as factors_in_turn
from waysaid.ways.factors import partners as factors_partners
from waysaid.ways.leftover import break_up as leftover_break_up
from waysaid.ways.leftover import chunk_out as leftover_chunk_out
from waysaid.ways.leftover import counting as leftover_counting
from waysaid.ways.leftover import near_fact as leftover_near_fact
from waysaid.ways.leftover import rename as leftover_rename
from waysaid.ways.leftover import scale_both as leftover_scale_both
from waysaid.ways.leftover import think_times as leftover_think_times
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.missing import add_up as missing_add_up
from waysaid.ways.missing import counting as missing_counting
from waysaid.ways.missing import own_fact as missing_own_fact
from waysaid.ways.several import adjust as several_adjust
from waysaid.ways.several import in_turn as several_in_turn
from waysaid.ways.several import partners as several_partners
from waysaid.ways.several import split as several_split
from waysaid.ways.shape import (
    Below,
    Difference,
    Factors,
    Leftover,
    Missing,
    Nothing,
    Product,
    Quotient,
    Several,
    Sum,
    UnderOne,
)
from waysaid.ways.share import adjust as share_adjust
from waysaid.ways.share import break_up as share_break_up
from waysaid.ways.share import chunk_out as share_chunk_out
from waysaid.ways.share import counting as share_counting
from waysaid.ways.share import factor_steps as share_factor_steps
from waysaid.ways.share import known_fact as share_known_fact
from waysaid.ways.share import near_fact as share_near_fact
from waysaid.ways.share import rename as share_rename
from waysaid.ways.share import scale_both as share_scale_both
from waysaid.ways.share import think_times as share_think_times
from waysaid.ways.take import add_up as take_add_up
from waysaid.ways.take import adjust as take_adjust
from waysaid.ways.take import bridge as take_bridge
from waysaid.ways.take import column as take_column
from waysaid.ways.take import counting as take_counting
from waysaid.ways.take import jump as take_jump
from waysaid.ways.take import known_fact as take_known_fact
from waysaid.ways.take import near_double as take_near_double
from waysaid.ways.take import rename as take_rename
from waysaid.ways.take import shift_both as take_shift_both
from waysaid.ways.take import split as take_split
from waysaid.ways.take import split_then_jump as take_split_then_jump
from waysaid.ways.take import think_add as take_think_add
from waysaid.ways.times import adjust as times_adjust
from waysaid.ways.times import break_up as times_break_up
from waysaid.ways.times import column as times_column
from waysaid.ways.times import counting as times_counting
from waysaid.ways.times import double_halve as times_double_halve
from waysaid.ways.times import factor_steps as times_factor_steps
from waysaid.ways.times import known_fact as times_known_fact
from waysaid.ways.times import near_fact as times_near_fact
from waysaid.ways.times import rename as times_rename
from waysaid.ways.under_one import break_up as under_one_break_up
from waysaid.ways.under_one import rename as under_one_rename
from waysaid.ways.way import Family

WHOLE: tuple[AnyMaker, ...] = (
    Maker(Family.KNOWN_FACT, Sum, add_known_fact.plans),
    Maker(Family.KNOWN_FACT, Difference, take_known_fact.plans),
    Maker(Family.KNOWN_FACT, Missing, missing_own_fact.plans),
    Maker(Family.KNOWN_FACT, Nothing, nothing.plans),
    Maker(Family.NEAR_DOUBLE, Sum, add_near_double.plans),
    Maker(Family.NEAR_DOUBLE, Difference, take_near_double.plans),
    Maker(Family.THINK_ADD, Difference, take_think_add.plans),
    Maker(Family.COUNTING, Sum, add_counting.plans),
    Maker(Family.COUNTING, Difference, take_counting.plans),
    Maker(Family.COUNTING, Missing, missing_counting.plans),
    Maker(Family.JUMP, Sum, add_jump.plans),
    Maker(Family.JUMP, Difference, take_jump.plans),
    Maker(Family.PARTNERS, Several, several_partners.plans),
    Maker(Family.JUMP, Several, several_in_turn.plans),
    Maker(Family.SPLIT, Sum, add_split.plans),
    Maker(Family.SPLIT, Difference, take_split.plans),
    Maker(Family.SPLIT, Several, several_split.plans),
    Maker(Family.BRIDGE, Sum, add_bridge.plans),
    Maker(Family.BRIDGE, Difference, take_bridge.plans),
    Maker(Family.SPLIT_THEN_JUMP, Sum, add_split_then_jump.plans),
    Maker(Family.SPLIT_THEN_JUMP, Difference, take_split_then_jump.plans),
    Maker(Family.ADJUST, Sum, add_adjust.plans),
    Maker(Family.ADJUST, Difference, take_adjust.plans),
    Maker(Family.ADJUST, Several, several_adjust.plans),
    Maker(Family.GIVE_AND_TAKE, Sum, add_give_and_take.plans),
    Maker(Family.SHIFT_BOTH, Difference, take_shift_both.plans),
    Maker(Family.ADD_UP, Difference, take_add_up.plans),
    Maker(Family.ADD_UP, Missing, missing_add_up.plans),
    Maker(Family.KNOWN_FACT, Below, below_known_fact.plans),
    Maker(Family.COUNTING, Below, below_counting.plans),
    Maker(Family.JUMP, Below, below_jump.plans),
    Maker(Family.SPLIT, Below, below_split.plans),
    Maker(Family.BRIDGE, Below, below_bridge.plans),
    Maker(Family.ADJUST, Below, below_adjust.plans),
    Maker(Family.RENAME, Below, below_rename.plans),
    Maker(Family.RENAME, Sum, add_rename.plans),
    Maker(Family.RENAME, Difference, take_rename.plans),
    Maker(Family.COLUMN, Sum, add_column.plans),
    Maker(Family.COLUMN, Difference, take_column.plans),
    Maker(Family.KNOWN_FACT, Product, times_known_fact.plans),
    Maker(Family.KNOWN_FACT, Quotient, share_known_fact.plans),
    Maker(Family.COUNTING, Product, times_counting.plans),
    Maker(Family.COUNTING, Quotient, share_counting.plans),
    Maker(Family.RENAME, Product, times_rename.plans),
    Maker(Family.RENAME, Quotient, share_rename.plans),
    Maker(Family.ADJUST, Product, times_adjust.plans),
    Maker(Family.ADJUST, Quotient, share_adjust.plans),
    Maker(Family.FACTOR_STEPS, Product, times_factor_steps.plans),
    Maker(Family.FACTOR_STEPS, Quotient, share_factor_steps.plans),
    Maker(Family.FACTOR_STEPS, Factors, factors_in_turn.plans),
    Maker(Family.PARTNERS, Factors, factors_partners.plans),
    Maker(Family.NEAR_FACT, Product, times_near_fact.plans),
    Maker(Family.NEAR_FACT, Quotient, share_near_fact.plans),
    Maker(Family.BREAK_UP, Product, times_break_up.plans),
    Maker(Family.BREAK_UP, Quotient, share_break_up.plans),
    Maker(Family.DOUBLE_HALVE, Product, times_double_halve.plans),
    Maker(Family.SCALE_BOTH, Quotient, share_scale_both.plans),
    Maker(Family.THINK_TIMES, Quotient, share_think_times.plans),
    Maker(Family.CHUNK_OUT, Quotient, share_chunk_out.plans),
    Maker(Family.COLUMN, Product, times_column.plans),
    Maker(Family.RENAME, UnderOne, under_one_rename.plans),
    Maker(Family.BREAK_UP, UnderOne, under_one_break_up.plans),
    Maker(Family.COUNTING, Leftover, leftover_counting.plans),
    Maker(Family.BREAK_UP, Leftover, leftover_break_up.plans),
    Maker(Family.NEAR_FACT, Leftover, leftover_near_fact.plans),
    Maker(Family.THINK_TIMES, Leftover, leftover_think_times.plans),
    Maker(Family.CHUNK_OUT, Leftover, leftover_chunk_out.plans),
    Maker(Family.RENAME, Leftover, leftover_rename.plans),
    Maker(Family.SCALE_BOTH, Leftover, leftover_scale_both.plans),
)
