"""A reading: what was understood from a child's words."""

from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import Exact, Number, Order, Remainder, Verdict, exact, number_text
from waysaid.ways import Family, Step


class Part(StrEnum):
    """A part of a step that may be left unsaid; the slugs are in files and never change."""

    LEFT = "left"
    OP = "op"
    RIGHT = "right"
    RESULT = "result"


AnswerSaid = Number | Remainder | Order | Verdict
"""An answer as it was said: a number in the form it had, or another answer."""


@dataclass(frozen=True, slots=True)
class Told:
    """A step as it was said, true or not.

    `unsaid` names the parts that arithmetic alone supplied; `span` is (start, end) in the words,
    in characters. A number that ends one step and begins the next lies in both spans. `by_digits`
    marks tens or hundreds that were told as digits: "three and two" of 37 + 25, read as 30 + 20.
    """

    step: Step
    unsaid: tuple[Part, ...]
    span: tuple[int, int]
    by_digits: bool = False


@dataclass(frozen=True, slots=True)
class Rival:
    """Another way to have heard the line: its steps, its family (or None), its share in 100."""

    told: tuple[Told, ...]
    answer: AnswerSaid | None
    family: Family | None
    sure: int


@dataclass(frozen=True, slots=True)
class Reading:
    """The steps as said, the answer that was said (or None), the family (or None), the words.

    `sure` is the share of this reading against all others, in 100. `dropped` are the stretches of
    words that were taken back, as (start, end) in characters; `rivals` the runners-up, surest
    first.
    """

    told: tuple[Told, ...]
    answer: AnswerSaid | None
    family: Family | None
    words: str
    sure: int = 100
    dropped: tuple[tuple[int, int], ...] = ()
    rivals: tuple[Rival, ...] = ()

    @property
    def answer_text(self) -> str | None:
        """The answer as plain text, in the form it was said in; None where none was said."""
        match self.answer:
            case None:
                return None
            case Remainder():
                return self.answer.text
            case Order() | Verdict():
                return self.answer.value
            case _:
                return number_text(self.answer)

    @property
    def number(self) -> Exact | None:
        """The answer where it is a number."""
        if self.answer is None or isinstance(self.answer, Remainder | Order | Verdict):
            return None
        return exact(self.answer)
