"""The one table of what effort costs, in tenths, each line with where it comes from.

The sizes are our choice throughout: research reports orderings, not tenths. A line names the
source of the *ordering* it stands for, by its id in the list kept with the published tests; where
we know the source from memory alone, it says so.
"""

from dataclasses import dataclass
from enum import StrEnum


class Charge(StrEnum):
    """What is charged for."""

    STEP = "step"
    READ_OFF = "read-off"
    FACT_TIE = "fact-tie"
    FACT_ONE = "fact-one"
    FACT_PAIR = "fact-pair"
    FACT_SUM = "fact-sum"
    FACT_SUM_OVER = "fact-sum-over"
    FACT_TAKE_SAME = "fact-take-same"
    FACT_TAKE_PAIR = "fact-take-pair"
    FACT_TAKE = "fact-take"
    FACT_TAKE_OVER = "fact-take-over"
    TIMES_ONE = "times-one"
    TIMES_TEN = "times-ten"
    TIMES_DOUBLE = "times-double"
    TIMES_ELEVEN = "times-eleven"
    TIMES_TIE = "times-tie"
    TIMES_FIVE = "times-five"
    TIMES_FACT = "times-fact"
    TIMES_SIZE = "times-size"
    TIMES_DIGIT = "times-digit"
    SHARE_FACT = "share-fact"
    CROSS = "cross"
    DIGIT = "digit"
    HOLD = "hold"
    REWRITE = "rewrite"
    CUT = "cut"
    MATCH = "match"
    MEND = "mend"
    MEND_TAKEN = "mend-taken"
    BOTH = "both"
    TALLY = "tally"
    HOP = "hop"
    SKIP = "skip"
    ODD_SKIP = "odd-skip"
    NEGATIVE = "negative"
    COLUMN = "column"
    POINT = "point"
    PLACED = "placed"
    LENGTHS = "lengths"
    PART = "part"
    UNLIKE = "unlike"
    PART_OVER = "part-over"
    KNOWN_PART = "known-part"
    OTHER_PART = "other-part"
    PERCENT_LANDMARK = "percent-landmark"
    PERCENT_QUARTER = "percent-quarter"
    PERCENT_OTHER = "percent-other"
    PERCENT_TENTH = "percent-tenth"
    PERCENT_HUNDREDTH = "percent-hundredth"
    PERCENT_BUILT = "percent-built"


@dataclass(frozen=True, slots=True)
class Cost:
    """One line of the table: so many tenths, from this source, for this reason."""

    charge: Charge
    tenths: int
    source: str
    why: str


OUR_CHOICE = "our choice"

COSTS = (
    Cost(Charge.STEP, 6, "lefevre1996", "each further step is a further chance to stop or slip"),
    Cost(Charge.READ_OFF, 2, "ccss", "60 + 9 is read as 69 (1.NBT.2, from memory)"),
    Cost(Charge.FACT_TIE, 2, "groen-parkman1972", "6 + 6: ties take one time, whatever their size"),
    Cost(Charge.FACT_ONE, 1, "dowker2014", "n + 1, n - 1 are the next numbers; + 0 costs nothing"),
    Cost(Charge.FACT_PAIR, 2, "tcm2010", "pairs to 10 are recalled in England's Year 1"),
    Cost(Charge.FACT_SUM, 1, "ccss", "sums to 10 (1.OA.6), and the smaller number on top"),
    Cost(Charge.FACT_SUM_OVER, 2, "ccss", "sums over 10 (2.OA.2), and the smaller number on top"),
    Cost(Charge.FACT_TAKE_SAME, 1, "dowker2014", "n - n leaves nothing"),
    Cost(Charge.FACT_TAKE_PAIR, 3, "eng-nc2014", "10 - n comes from the pair to 10"),
    Cost(Charge.FACT_TAKE, 2, "dowker2014", "a fact turned round; the nearer end on top"),
    Cost(Charge.FACT_TAKE_OVER, 3, "ccss", "the same from 11 to 18 (2.OA.2)"),
    Cost(Charge.TIMES_ONE, 1, "caddington2013", "1 x n: the fewest answers were wrong"),
    Cost(
        Charge.TIMES_TEN, 2, "caddington2013", "10 x n, and zeros put back: next to x 1, with x 2"
    ),
    Cost(Charge.TIMES_DOUBLE, 2, "caddington2013", "2 x n, as 10 x n"),
    Cost(Charge.TIMES_ELEVEN, 3, OUR_CHOICE, "11 x n to 9: the digit twice"),
    Cost(Charge.TIMES_TIE, 1, "debrauwer2006", "n x n, and half of what its size adds"),
    Cost(Charge.TIMES_FIVE, 1, "debrauwer2006", "5 x n, and half of what its size adds"),
    Cost(Charge.TIMES_FACT, 2, "ccss", "any other product of the tables (3.OA.7), its size on top"),
    Cost(Charge.TIMES_SIZE, 1, "debrauwer2006", "each six in a product, as far as 56"),
    Cost(Charge.TIMES_DIGIT, 3, OUR_CHOICE, "each further digit of a number multiplied in one go"),
    Cost(
        Charge.SHARE_FACT,
        3,
        "ccss",
        "a quotient from the product turned round (3.OA.7)",
    ),
    Cost(Charge.CROSS, 4, "beishuizen1993", "a ten or a hundred passed in one step (from memory)"),
    Cost(Charge.DIGIT, 1, "nzcer", "each digit that is not 0, in a step's numbers and result"),
    Cost(Charge.HOLD, 4, OUR_CHOICE, "a number kept in mind while another step is done"),
    Cost(Charge.REWRITE, 3, OUR_CHOICE, "a number swapped for a friendlier one, or cut to fit"),
    Cost(Charge.CUT, 3, OUR_CHOICE, "a number cut into its tens and ones"),
    Cost(Charge.MATCH, 15, OUR_CHOICE, "a piece found by looking at both numbers: 62 - 22"),
    Cost(Charge.MEND, 3, OUR_CHOICE, "which way to put a difference right after a sum"),
    Cost(Charge.MEND_TAKEN, 6, "dowker2014", "the same after taking away, where it turns round"),
    Cost(Charge.BOTH, 10, OUR_CHOICE, "both numbers swapped and both differences kept"),
    Cost(Charge.TALLY, 4, OUR_CHOICE, "keeping count of the counts of one size"),
    Cost(Charge.HOP, 5, "groen-parkman1972", "one count on or back: time grows with each count"),
    Cost(Charge.SKIP, 5, "ccss", "a skip of 2, 5, 10 or 100 (2.NBT.2, from memory)"),
    Cost(Charge.ODD_SKIP, 7, OUR_CHOICE, "any other skip"),
    Cost(Charge.NEGATIVE, 8, "beishuizen1993", "a piece below zero, as in 3 - 8 (from memory)"),
    Cost(Charge.POINT, 1, OUR_CHOICE, "each number of a step whose point is kept in its place"),
    Cost(Charge.PLACED, 6, OUR_CHOICE, "where the point of a product or quotient goes is settled"),
    Cost(
        Charge.LENGTHS,
        3,
        "unimelb-dec",
        "0.65 and 0.7: a longer decimal is not a larger one, which 46 % of Year 5 think",
    ),
    Cost(Charge.PART, 1, OUR_CHOICE, "each number of a step with a top and a bottom to keep apart"),
    Cost(Charge.UNLIKE, 8, "yl2006", "two sizes of parts put together: 13 % right, like ones 92 %"),
    Cost(Charge.PART_OVER, 6, OUR_CHOICE, "how often a part goes into a number, turned round"),
    Cost(Charge.KNOWN_PART, 2, "acara", "halves, quarters, fifths with a point or as percents"),
    Cost(Charge.OTHER_PART, 8, OUR_CHOICE, "any other fraction with a point or as a percent"),
    Cost(Charge.PERCENT_LANDMARK, 1, "acara", "10 %, 50 % and 1 % of a number as what they are"),
    Cost(Charge.PERCENT_QUARTER, 3, "acara", "25 %, 20 %, 75 %, 5 % and whole tens the same way"),
    Cost(Charge.PERCENT_OTHER, 6, OUR_CHOICE, "so many per cent in one go, with no landmark"),
    Cost(Charge.PERCENT_TENTH, 7, OUR_CHOICE, "that 10 % is a tenth: met after 50 % as a half"),
    Cost(
        Charge.PERCENT_BUILT, 8, OUR_CHOICE, "seeing that 35 is 25 and 10: not read off its digits"
    ),
    Cost(Charge.PERCENT_HUNDREDTH, 16, OUR_CHOICE, "that 1 % is a hundredth: met after a tenth"),
    Cost(Charge.COLUMN, 4, "caviola2018", "a column kept in the head without paper"),
)

TENTHS = {cost.charge: cost.tenths for cost in COSTS}


def sum_fact(left: int, right: int) -> int:
    """Return the tenths for recalling a sum of two numbers from 0 to 9."""
    smaller = min(left, right)
    if smaller == 0:
        return 0
    if smaller == 1:
        return TENTHS[Charge.FACT_ONE]
    if left == right:
        return TENTHS[Charge.FACT_TIE]
    if left + right == 10:
        return TENTHS[Charge.FACT_PAIR]
    over = left + right > 10
    return smaller + TENTHS[Charge.FACT_SUM_OVER if over else Charge.FACT_SUM]


def take_fact(whole: int, part: int) -> int:
    """Return the tenths for recalling `whole - part`: whole to 18, part from 0 to 9."""
    rest = whole - part
    if part == 0:
        return 0
    if part == 1:
        return TENTHS[Charge.FACT_ONE]
    if rest == 0:
        return TENTHS[Charge.FACT_TAKE_SAME]
    if rest == part or whole == 10:
        return TENTHS[Charge.FACT_TAKE_PAIR]
    over = whole > 10
    return min(part, rest) + TENTHS[Charge.FACT_TAKE_OVER if over else Charge.FACT_TAKE]


LARGEST_TIMES = 56
"""The product from which size adds no more: 11 x 12 is missed no more than 6 x 8."""
TIMES_SIX = 6


def times_fact(left: int, right: int) -> int:
    """Return the tenths for recalling a product of two numbers from 0 to 12."""
    small, large = sorted((left, right))
    size = TENTHS[Charge.TIMES_SIZE] * min(small * large, LARGEST_TIMES)
    if small == 0:
        return 0
    if small == 1:
        return TENTHS[Charge.TIMES_ONE]
    if 10 in (small, large):
        return TENTHS[Charge.TIMES_TEN]
    if small == 2:
        return TENTHS[Charge.TIMES_DOUBLE] + large // 10
    if large == 11 and small < 10:
        return TENTHS[Charge.TIMES_ELEVEN]
    if small == large:
        return TENTHS[Charge.TIMES_TIE] + size // (2 * TIMES_SIX)
    if 5 in (small, large):
        return TENTHS[Charge.TIMES_FIVE] + size // (2 * TIMES_SIX)
    return TENTHS[Charge.TIMES_FACT] + size // TIMES_SIX


SUM_FACTS = tuple(tuple(sum_fact(left, right) for right in range(10)) for left in range(10))
TAKE_FACTS = tuple(
    tuple(take_fact(whole, part) if part <= whole else 0 for part in range(10))
    for whole in range(19)
)
TIMES_FACTS = tuple(tuple(times_fact(left, right) for right in range(13)) for left in range(13))
