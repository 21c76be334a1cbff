"""How the board is parted: pure lengths, so that the promises about sizes can be proven."""

from dataclasses import dataclass
from functools import lru_cache

from waysaid.drawing import Frame
from waysaid.number import (
    BLANK,
    Image,
    Language,
    Print,
    Problem,
    Unreadable,
    parse,
    picture_name,
    text,
)
from waysaid.talk.event import PlannedProblem

SCREEN = 1000
"""The screen's height in the units of every length here: tenths of a percent of it."""
WAY_SIZE = 80
"""Letters of a way's equations (fixed promise: at least 8 % of the screen's height)."""
NARROWEST, WIDEST = 1333, 2600
"""A narrower screen than 4:3 shows the 4:3 board, smaller; a wider than 21:9 leaves room."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """How a screen of this width is parted, in tenths of a percent of its height."""

    wide: int

    @classmethod
    def of(cls, wide: int) -> "Sheet":
        """Return the sheet for a screen this wide, or for the nearest that is provided for."""
        return cls(min(max(wide, NARROWEST), WIDEST))

    @property
    def side(self) -> int:
        """The width of the column of earlier problems."""
        return min(max(self.wide * 24 // 100, 300), 430)

    @property
    def tile(self) -> Frame:
        """The room for one way's drawing or equations, its name tag left out."""
        width = (self.wide - self.side - 60 - 60 - 30) // 2
        return Frame(width, 290, WAY_SIZE)

    @property
    def picture(self) -> tuple[int, int]:
        """The room for a quick image by itself, above the signals: width and height."""
        return 2 * self.tile.width + 30, 560

    @property
    def small_picture(self) -> tuple[int, int]:
        """The room for a quick image that stands over the ways."""
        return self.tile.width, 140


def read(planned: PlannedProblem | None) -> Problem | None:
    """Return the problem, or None where there is none or its text cannot be read."""
    return None if planned is None else _read(planned.text)


@lru_cache(maxsize=256)
def _read(problem_text: str) -> Problem | None:
    try:
        return parse(problem_text)
    except Unreadable:
        return None


def name_of(problem: Problem, language: Language) -> str:
    """Return the name of a quick image's kind: its text would tell how many dots it has.

    Empty for any other problem, which goes by its own text.
    """
    return picture_name(problem, language) if isinstance(problem, Image) else ""


def shown(problem: Problem, language: Language) -> str:
    """Return a problem as a screen shows it; the blank is a box to fill."""
    return name_of(problem, language) or text(problem, Print.TRUE).replace(BLANK.value, "▢")
