"""The few shapes a drawing is made of, in whole units: 10 units are 1 % of the screen's height."""

from dataclasses import dataclass
from enum import StrEnum


class Anchor(StrEnum):
    """Which point of a label its x stands for."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line; `stroke` is its width."""

    x1: int
    y1: int
    x2: int
    y2: int
    stroke: int


@dataclass(frozen=True, slots=True)
class Path:
    """A drawn outline: SVG path data with whole numbers only, never filled."""

    d: str
    stroke: int


@dataclass(frozen=True, slots=True)
class Dot:
    """A filled dot round its middle."""

    x: int
    y: int
    r: int


@dataclass(frozen=True, slots=True)
class Label:
    """Text: `y` is its baseline, `size` the height of its em."""

    x: int
    y: int
    size: int
    anchor: Anchor
    text: str


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle with round corners, filled or only its outline (`stroke` wide)."""

    x: int
    y: int
    width: int
    height: int
    radius: int
    filled: bool
    stroke: int = 5


Shape = Line | Path | Dot | Label | Box
