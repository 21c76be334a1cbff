"""A link: a true connection between problems of a string."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Literal

from waysaid.number import Number

Place = int | Literal["answer"]
"""Where a number stands: its index among the problem's numbers and blanks, or the answer."""


class LinkKind(StrEnum):
    """The kinds of link; the slugs are in files and JSON and never change."""

    SAME_NUMBER = "same-number"
    SAME_TOTAL = "same-total"
    ONE_CHANGES = "one-changes"
    BOTH_CHANGE = "both-change"
    FRIENDLY_TWIN = "friendly-twin"
    INSIDE_A_WAY = "inside-a-way"
    TURNED_AROUND = "turned-around"
    OPPOSITE = "opposite"
    TEN_TIMES = "ten-times"
    DOUBLE_HALF = "double-half"
    FEEDS_NEXT = "feeds-next"
    PATTERN = "pattern"


class Saying(StrEnum):
    """The sentences a link can be said in; some kinds have several."""

    NUMBER_BACK = "number-back"
    TOTAL_BACK = "total-back"
    NUMBER_UP_ANSWER_UP = "number-up-answer-up"
    NUMBER_DOWN_ANSWER_DOWN = "number-down-answer-down"
    UP_MISSING_UP = "up-missing-up"
    DOWN_MISSING_DOWN = "down-missing-down"
    UP_MISSING_DOWN = "up-missing-down"
    DOWN_MISSING_UP = "down-missing-up"
    TAKE_MORE = "take-more"
    TAKE_LESS = "take-less"
    MOVED = "moved"
    MOVED_BETWEEN_TWINS = "moved-between-twins"
    BOTH_UP = "both-up"
    BOTH_DOWN = "both-down"
    TWIN = "twin"
    INSIDE = "inside"
    TURNED = "turned"
    UNDOES = "undoes"
    SAME_THREE = "same-three"
    TENS = "tens"
    HUNDREDS = "hundreds"
    DOUBLED = "doubled"
    HALVED = "halved"
    FEEDS = "feeds"
    MOVES_EACH_TIME = "moves-each-time"
    ALIKE_EACH_TIME = "alike-each-time"
    UP_AND_UP = "up-and-up"
    DOWN_AND_DOWN = "down-and-down"
    UP_AND_DOWN = "up-and-down"
    DOWN_AND_UP = "down-and-up"
    ALL_UP = "all-up"
    ALL_DOWN = "all-down"
    ALL_STAY = "all-stay"
    ANSWERS_UP = "answers-up"
    ANSWERS_DOWN = "answers-down"
    NUMBER_BACK_WRITTEN = "number-back-written"
    GROUP_MORE = "group-more"
    GROUP_LESS = "group-less"
    GROUPS_MORE = "groups-more"
    GROUPS_LESS = "groups-less"
    PART_MORE = "part-more"
    PART_LESS = "part-less"
    SHARE_MORE = "share-more"
    SHARE_LESS = "share-less"
    LEFT_OVER_MORE = "left-over-more"
    LEFT_OVER_LESS = "left-over-less"
    BY_MORE = "by-more"
    BY_LESS = "by-less"
    MISSING_GREW = "missing-grew"
    MISSING_SHRANK = "missing-shrank"
    ONE_DOUBLED = "one-doubled"
    ONE_HALVED = "one-halved"
    BY_TWICE = "by-twice"
    BY_HALF = "by-half"
    TWO_DOUBLED = "two-doubled"
    TWO_HALVED = "two-halved"
    ONE_TIMES = "one-times"
    ONE_OVER = "one-over"
    BY_TIMES = "by-times"
    BY_OVER = "by-over"
    PLACES_UP = "places-up"
    PLACES_DOWN = "places-down"
    PLACES_STAY = "places-stay"
    DOUBLE_AND_HALF = "double-and-half"
    TIMES_AND_OVER = "times-and-over"
    BOTH_DOUBLED = "both-doubled"
    BOTH_HALVED = "both-halved"
    BOTH_TIMES = "both-times"
    BOTH_OVER = "both-over"
    PERCENT_TURNED = "percent-turned"
    SIDES_TURNED = "sides-turned"
    CLAIM_TURNED = "claim-turned"
    TOGETHER = "together"
    UNDOES_TIMES = "undoes-times"
    SAME_THREE_TIMES = "same-three-times"
    STEPS_UP = "steps-up"
    STEPS_DOWN = "steps-down"
    GROWS = "grows"
    SHRINKS = "shrinks"
    BY_GROWS = "by-grows"
    BY_SHRINKS = "by-shrinks"
    BOTH_GROW = "both-grow"
    BOTH_SHRINK = "both-shrink"
    TRADES = "trades"
    ANSWERS_GROW = "answers-grow"
    ANSWERS_SHRINK = "answers-shrink"


@dataclass(frozen=True, slots=True)
class Link:
    """One true connection.

    `between` holds the indexes of the problems, rising; `shows` true equations that witness the
    claim, as plain text; `saying` and `numbers` what `link_says` puts into words; `marks` the
    numbers it is about, each as (problem index, place).
    """

    kind: LinkKind
    between: tuple[int, ...]
    shows: tuple[str, ...]
    saying: Saying
    numbers: tuple[Number, ...] = ()
    marks: tuple[tuple[int, Place], ...] = ()
