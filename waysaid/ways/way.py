"""A way: one worked derivation of one family."""

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from waysaid.number import Answer, Exact, Remainder
from waysaid.ways.leans import Leans, leans_of
from waysaid.ways.step import Step


class Family(StrEnum):
    """The families of ways; the slugs are in files and never change."""

    COUNTING = "counting"
    KNOWN_FACT = "known-fact"
    NEAR_DOUBLE = "near-double"
    BRIDGE = "bridge"
    JUMP = "jump"
    SPLIT = "split"
    SPLIT_THEN_JUMP = "split-then-jump"
    ADJUST = "adjust"
    GIVE_AND_TAKE = "give-and-take"
    SHIFT_BOTH = "shift-both"
    ADD_UP = "add-up"
    PARTNERS = "partners"
    COLUMN = "column"
    THINK_ADD = "think-add"
    NEAR_FACT = "near-fact"
    BREAK_UP = "break-up"
    DOUBLE_HALVE = "double-halve"
    FACTOR_STEPS = "factor-steps"
    THINK_TIMES = "think-times"
    CHUNK_OUT = "chunk-out"
    SCALE_BOTH = "scale-both"
    RENAME = "rename"
    BENCHMARK = "benchmark"


@dataclass(frozen=True, slots=True)
class Way:
    """One worked derivation: `variant` is a slug that tells ways of one family apart.

    `answer` is exact: a number, or what a comparison or a claim comes to. A division told as groups
    and what is left over has its `remainder` too: that, and not the answer, is what the child says
    in the end. `seen` are the groups of dots that a quick image was seen as, each by their places
    in the picture.
    """

    family: Family
    variant: str
    steps: tuple[Step, ...]
    answer: Answer
    remainder: Remainder | None = None
    seen: tuple[tuple[int, ...], ...] = ()

    @property
    def number(self) -> Exact | None:
        """The answer where it is a number."""
        return self.answer if isinstance(self.answer, int | Fraction) else None

    @property
    def leans(self) -> Leans:
        """What the steps lean on: facts to know, friendly numbers to go through."""
        return leans_of(self.steps)
