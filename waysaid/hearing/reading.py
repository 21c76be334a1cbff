"""A reading: what was understood from a child's words."""

from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import Exact
from waysaid.ways import Family, Step


class Part(StrEnum):
    """A part of a step that may be left unsaid; the slugs are in files and never change."""

    LEFT = "left"
    OP = "op"
    RIGHT = "right"
    RESULT = "result"


@dataclass(frozen=True, slots=True)
class Told:
    """A step as it was said, true or not.

    `unsaid` names the parts that arithmetic alone supplied; `span` is (start, end) in the words,
    in characters. A number that ends one step and begins the next lies in both spans.
    """

    step: Step
    unsaid: tuple[Part, ...]
    span: tuple[int, int]


@dataclass(frozen=True, slots=True)
class Reading:
    """The steps as said, the answer that was said (or None), the family (or None), the words."""

    told: tuple[Told, ...]
    answer: Exact | None
    family: Family | None
    words: str
