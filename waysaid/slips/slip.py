"""A slip: one way in which a wrong answer may have come about. A guess, never a verdict."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import Equation, Exact, Sign


class SlipName(StrEnum):
    """The slips for sums and differences of whole numbers; the slugs are in files."""

    SMALLER_FROM_LARGER = "smaller-from-larger"
    NO_REGROUP = "no-regroup"
    ZERO_TO_NINE = "zero-to-nine"
    SKIP_ZERO = "skip-zero"
    ZERO_STAYS_TEN = "zero-stays-ten"
    BORROW_LEFTMOST = "borrow-leftmost"
    ZERO_TAKE = "zero-take"
    WRITE_ZERO = "write-zero"
    STOPS_SHORT = "stops-short"
    LOWERS_BLANK = "lowers-blank"
    DROP_CARRY = "drop-carry"
    WRITE_CARRY = "write-carry"
    MISALIGNED = "misaligned"
    COUNT_START = "count-start"
    WRONG_OPERATION = "wrong-operation"
    NEAR_MISS = "near-miss"
    ADJUST_WRONG_WAY = "adjust-wrong-way"
    FORGET_ADJUST = "forget-adjust"
    MOVED_ACROSS = "moved-across"
    PART_MISSING = "part-missing"
    DIGITS_ALONE = "digits-alone"
    WRITE_ANSWER = "write-answer"
    ADD_ALL = "add-all"


class Likely(StrEnum):
    """How often it is met, in three words: we have no numbers to say more."""

    OFTEN = "often"
    SOMETIMES = "sometimes"
    RARE = "rare"


OUR_GUESS = "our guess"


@dataclass(frozen=True, slots=True)
class Slip:
    """What may have happened: the work that gives `wrong`, with false equations as they stand.

    `at` is the index of the step where it happened; `source` an id in the list of sources kept
    with the published tests, or `our guess`.
    """

    slug: SlipName
    wrong: Exact
    steps: tuple[Equation, ...]
    likely: Likely
    source: str
    at: int = 0


@dataclass(frozen=True, slots=True)
class Made:
    """What a rule gives: a wrong answer, the work behind it, and the step that slipped."""

    wrong: int
    steps: tuple[Equation, ...]
    at: int = 0


@dataclass(frozen=True, slots=True)
class Pair:
    """A sum or a difference of two whole numbers, neither below zero."""

    left: int
    sign: Sign
    right: int

    @property
    def answer(self) -> int:
        """The right answer."""
        return self.left + self.right if self.sign is Sign.PLUS else self.left - self.right


@dataclass(frozen=True, slots=True)
class Rule:
    """A slip as a rule: what it makes of a pair, how likely it is, and who says so."""

    slug: SlipName
    make: Callable[[Pair], Iterator[Made]]
    likely: Likely
    source: str
