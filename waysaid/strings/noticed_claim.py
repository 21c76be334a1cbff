"""What a noticing may claim: changes of numbers and answers, what is made, of which problems."""

from dataclasses import dataclass
from enum import Enum

from waysaid.number import Exact
from waysaid.strings.noticed_words import Sense


class Who(Enum):
    """What a claim of change is about; `IT` where the words leave that open."""

    NUMBER = "a number"
    BOTH = "every number"
    ANSWER = "the answer"
    IT = "it"


class How(Enum):
    """What a claim says became of it."""

    UP = "up"
    DOWN = "down"
    SAME = "same"
    TIMES = "times"
    OVER = "over"


@dataclass(frozen=True, slots=True)
class Shift:
    """One claim of change: who changed, how, by how much, and from or to which number.

    `value` is the number it is about, `place` whether the first or second of its problem; `other`
    a number that it is compared with. `row` is the problem it is said of, `base` the one compared.
    """

    who: Who
    how: How
    value: Exact | None = None
    place: int | None = None
    by: Exact | None = None
    to: Exact | None = None
    other: Exact | None = None
    base: int | None = None
    row: int | None = None


@dataclass(frozen=True, slots=True)
class Moved:
    """A claim that some of one number was given to another; None where it is not said."""

    by: Exact | None = None
    giver: Exact | None = None
    taker: Exact | None = None


@dataclass(frozen=True, slots=True)
class Claimed:
    """All that a noticing claims.

    `about` are the senses that tell what kind of claim it is; `numbers` those said with no other
    part, `units` those of which there are several, `made` what is made; `problems` those named;
    `count` in how many problems something is, `place` which number of a problem was told of last;
    `alike` whether one problem is said to be another, `whole` how many are said in full.
    """

    shifts: tuple[Shift, ...] = ()
    moved: Moved | None = None
    about: frozenset[Sense] = frozenset()
    numbers: tuple[Exact, ...] = ()
    units: tuple[Exact, ...] = ()
    made: Exact | None = None
    problems: frozenset[int] = frozenset()
    count: int | None = None
    place: int | None = None
    alike: bool = False
    whole: int = 0

    @property
    def exact(self) -> bool:
        """Whether it tells enough of a change: how much, of which number, or of two things."""
        if self.moved is not None:
            return self.moved.by is not None or self.moved.giver is not None
        told = (one.by or one.value or one.to or one.other for one in self.shifts)
        return len(self.shifts) > 1 or any(told)
