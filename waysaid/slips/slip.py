"""A slip: one way in which a wrong answer may have come about. A guess, never a verdict."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Generic, TypeVar

from waysaid.number import Equation, Number, Problem, Said, Sign


class SlipName(StrEnum):
    """The slips of every kind of problem; the slugs are in files."""

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
    CARRY_FIRST = "carry-first"
    MISALIGNED = "misaligned"
    COUNT_START = "count-start"
    GROUP_OFF = "group-off"
    WRONG_OPERATION = "wrong-operation"
    NEIGHBOUR_FACT = "neighbour-fact"
    NEAR_MISS = "near-miss"
    ADJUST_WRONG_WAY = "adjust-wrong-way"
    ADJUST_BY_ONES = "adjust-by-ones"
    FORGET_ADJUST = "forget-adjust"
    ONE_SIDE_ONLY = "one-side-only"
    MOVED_ACROSS = "moved-across"
    SHIFTED_ALIKE = "shifted-alike"
    PART_MISSING = "part-missing"
    ONES_TAKEN = "ones-taken"
    DIGITS_ALONE = "digits-alone"
    ZERO_TIMES = "zero-times"
    ZERO_DROPPED = "zero-dropped"
    ZERO_ADDED = "zero-added"
    REST_FORGOTTEN = "rest-forgotten"
    REST_AS_POINT = "rest-as-point"
    REST_WRONG_BOTTOM = "rest-wrong-bottom"
    REST_TOO_LARGE = "rest-too-large"
    REST_AS_GROUP = "rest-as-group"
    REST_NOT_CARRIED = "rest-not-carried"
    LARGER_BY_SMALLER = "larger-by-smaller"
    DIVISOR_SPLIT = "divisor-split"
    LEFT_TO_RIGHT = "left-to-right"
    BRACKET_ONCE = "bracket-once"
    WRITE_ANSWER = "write-answer"
    ADD_ALL = "add-all"
    ANSWER_FIRST = "answer-first"
    RIGHT_ALIGNED = "right-aligned"
    IGNORE_POINT = "ignore-point"
    POINT_AS_WHOLE = "point-as-whole"
    POINT_MISPLACED = "point-misplaced"
    APPEND_ZERO = "append-zero"
    ALWAYS_SMALLER = "always-smaller"
    LONGER_LARGER = "longer-larger"
    SHORTER_LARGER = "shorter-larger"
    TOP_POINT_BOTTOM = "top-point-bottom"
    DENOMINATOR_AFTER_POINT = "denominator-after-point"
    ADD_ACROSS = "add-across"
    SUBTRACT_ACROSS = "subtract-across"
    TOPS_OVER_LARGER = "tops-over-larger"
    TOPS_UNCHANGED = "tops-unchanged"
    TOPS_ONLY = "tops-only"
    BOTTOMS_ONLY = "bottoms-only"
    WHOLES_FORGOTTEN = "wholes-forgotten"
    PARTS_FORGOTTEN = "parts-forgotten"
    WHOLE_AS_TOP = "whole-as-top"
    WHOLE_AS_TEN = "whole-as-ten"
    BOTH_MULTIPLIED = "both-multiplied"
    BOTTOM_KEPT = "bottom-kept"
    CROSSED = "crossed"
    WRONG_TURNED = "wrong-turned"
    ONLY_DIVIDED = "only-divided"
    ONLY_MULTIPLIED = "only-multiplied"
    TIMES_BOTTOM = "times-bottom"
    BOTTOM_TAKEN = "bottom-taken"
    REST_INSTEAD = "rest-instead"
    BIGGER_BOTTOM = "bigger-bottom"
    SMALLER_BOTTOM = "smaller-bottom"
    BIGGER_TOP = "bigger-top"
    GAP_COMPARE = "gap-compare"
    PERCENT_AS_NUMBER = "percent-as-number"
    PERCENT_TAKEN = "percent-taken"
    DIVIDED_BY_PERCENT = "divided-by-percent"
    HUNDRED_FORGOTTEN = "hundred-forgotten"
    HUNDRED_DROPPED = "hundred-dropped"
    ONE_TO_ONE = "one-to-one"
    GROUP_MISSED = "group-missed"
    EMPTY_COUNTED = "empty-counted"
    FRAME_FULL = "frame-full"
    SIDES_ADDED = "sides-added"
    ROUNDED_DOWN = "rounded-down"


class Likely(StrEnum):
    """How often it is met, in three words: we have few numbers to say more."""

    OFTEN = "often"
    SOMETIMES = "sometimes"
    RARE = "rare"


OUR_GUESS = "our guess"


@dataclass(frozen=True, slots=True)
class Share:
    """How many gave a wrong answer of this kind, in per cent, among whom, and who says so."""

    low: int
    high: int
    whom: str
    source: str


@dataclass(frozen=True, slots=True)
class Slip:
    """What may have happened: the work that gives `wrong`, with false equations as they stand.

    `at` is the index of the step where it happened; `source` an id in the list of sources kept
    with the published tests, or `our guess`. `fact` is the misremembered fact that came on top,
    None for a slip alone. `numbers` are those of the problem that a question may name, and
    `share` the published share of wrong answers of this kind, where there is one.
    """

    slug: SlipName
    wrong: Said
    steps: tuple[Equation, ...]
    likely: Likely
    source: str
    at: int = 0
    fact: Equation | None = None
    numbers: tuple[Number, ...] = ()
    share: Share | None = None


@dataclass(frozen=True, slots=True)
class Made:
    """What a rule gives: a wrong answer, the work behind it, and the step that slipped."""

    wrong: Said
    steps: tuple[Equation, ...]
    at: int = 0


@dataclass(frozen=True, slots=True)
class Pair:
    """Two whole numbers, neither below zero, with a sign between them."""

    left: int
    sign: Sign
    right: int

    @property
    def answer(self) -> int:
        """The right answer; for a division, how many whole groups."""
        match self.sign:
            case Sign.PLUS:
                return self.left + self.right
            case Sign.MINUS:
                return self.left - self.right
            case Sign.OVER:
                return self.left // self.right
            case _:
                return self.left * self.right


Case = TypeVar("Case")


@dataclass(frozen=True, slots=True)
class Rule(Generic[Case]):
    """A slip as a rule: what it makes of a case, how likely it is, and who says so."""

    slug: SlipName
    make: Callable[[Case], Iterator[Made]]
    likely: Likely
    source: str


@dataclass(frozen=True, slots=True)
class Kind(Generic[Case]):
    """A kind of problem: how it is seen as a case (None where it is none), and its rules."""

    name: str
    case: Callable[[Problem], Case | None]
    rules: tuple[Rule[Case], ...]

    def made(self, problem: Problem) -> Iterator[tuple[Rule[Case], Made]]:
        """Yield all that the rules make of a problem, in the order of the rules."""
        case = self.case(problem)
        if case is not None:
            for rule in self.rules:
                for made in rule.make(case):
                    yield rule, made
