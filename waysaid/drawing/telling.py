"""What is to be drawn: which picture, how much room, and what a child told."""

from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import Exact, Problem
from waysaid.ways import Step


class Picture(StrEnum):
    """How a child may ask to have a way written; the slugs are in files and never change."""

    WORDS = "words"
    EQUATIONS = "equations"
    NUMBER_LINE = "number-line"
    NUMBER_BOND = "number-bond"
    PLACE_VALUE = "place-value"
    TEN_FRAME = "ten-frame"
    BAR = "bar"
    AREA = "area"
    ARRAY = "array"
    HOPS = "hops"
    DOUBLE_BAR = "double-bar"
    FRACTION_BAR = "fraction-bar"
    FRACTION_CIRCLE = "fraction-circle"
    HUNDRED_GRID = "hundred-grid"
    DOTS = "dots"


SMALLEST = 60
"""No label on the board is smaller: 6 % of the screen's height."""


@dataclass(frozen=True, slots=True)
class Frame:
    """The room for a drawing, in units (10 are 1 % of the screen's height).

    `label` is the size labels have where they fit. On the board they may shrink to `SMALLEST`; a
    frame that asks for less is a thumbnail on the desk, and its labels may shrink to 3/4.
    """

    width: int
    height: int
    label: int = 80

    @property
    def thumbnail(self) -> bool:
        """Whether this is a small picture on the desk, where the board's sizes do not bind."""
        return self.label < SMALLEST

    @property
    def rooms(self) -> tuple["Frame", ...]:
        """The rooms a drawing may take: one tile, a row of two, all four; a thumbnail has one."""
        if self.thumbnail:
            return (self,)
        wide = self.width * 2
        row = Frame(wide, self.height, self.label)
        return (self, row, Frame(wide, self.height * 2, self.label))

    @property
    def least(self) -> int:
        """The smallest label this frame allows."""
        return max(1, self.label * 3 // 4) if self.thumbnail else SMALLEST


@dataclass(frozen=True, slots=True)
class Telling:
    """A way as it was told: true or not, whole or not.

    `hidden[i]` names the parts of step i that nobody said: "left", "op", "right", "result". `seen`
    are the groups of a quick image as the child saw them, each by the places of its dots; where it
    is empty, or is no part of the picture, they are found again from the steps.
    """

    problem: Problem
    steps: tuple[Step, ...]
    hidden: tuple[frozenset[str], ...] = ()
    answer: Exact | None = None
    seen: tuple[tuple[int, ...], ...] = ()

    def unsaid(self, index: int) -> frozenset[str]:
        """Return the parts of this step that nobody said."""
        return self.hidden[index] if index < len(self.hidden) else frozenset()
