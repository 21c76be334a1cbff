"""A frame: one step while it is being said, its parts filled in whatever order they come."""

from enum import Enum
from typing import NamedTuple

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.worth import worth
from waysaid.number import Exact, Expression, Sign, apply

HOPS = (Sign.PLUS, Sign.MINUS)
"""The signs of hops on a line."""


class Slot(Enum):
    """The part of a frame that the next number goes to."""

    NONE = "none"
    LEFT = "left"
    RIGHT = "right"
    RESULT = "result"

    __hash__ = object.__hash__


class Quantity(NamedTuple):
    """A number, or a sum of several, as it was said: with its place in the line.

    `said` is False where the words do not name it; `many` marks a plural: sixes.
    `noise` is how far the words are from the plain way to say it.
    """

    leaf: Expression
    span: tuple[int, int]
    said: bool = True
    many: bool = False
    noise: int = 0

    @property
    def value(self) -> Exact | None:
        """What it is worth; None where it has no value."""
        leaf = self.leaf
        return leaf if type(leaf) is int else worth(leaf)


class Frame(NamedTuple):
    """Left, sign, right, and the result; `whole` is a number said to be made of what follows.

    `verb` is the act that opened it, `wants` the part awaited; `reach` marks a hop told by where it
    ends, `from 34 to 40`, whose size is then its right; `by_digits` tens told as digits.
    """

    verb: Meaning | None = None
    left: Quantity | None = None
    sign: Sign | None = None
    right: Quantity | None = None
    result: Quantity | None = None
    whole: Quantity | None = None
    wants: Slot = Slot.NONE
    reach: bool = False
    op_said: bool = True
    by_digits: bool = False

    @property
    def empty(self) -> bool:
        """Whether nothing has been said of it."""
        return self == EMPTY

    @property
    def bare(self) -> Quantity | None:
        """Its number, where a number is all that was said of it."""
        alone = self.sign is None and self.whole is None and self.verb is None
        return self.left if alone and self.wants is Slot.NONE else None

    @property
    def comes_to(self) -> Exact | None:
        """What its left side comes to; None where a part of it is missing, or has no value."""
        if self.left is None or self.right is None or self.sign is None:
            return None
        left, right = worth(self.left.leaf), worth(self.right.leaf)
        if left is None or right is None or (self.sign is Sign.OVER and right == 0):
            return None
        return apply(self.sign, left, right)

    @property
    def paired(self) -> bool:
        """Whether both a sign and what it goes with have been said, and no more is awaited."""
        return self.sign is not None and self.right is not None and self.wants is Slot.NONE


EMPTY = Frame()
"""The frame of which nothing has been said."""
