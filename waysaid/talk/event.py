"""What can happen in a talk: one frozen record a kind of event.

A kind's name in files is its class name with hyphens: `WayShared` is `way-shared`. Ids are made by
the client that sends the event; a child is named by the id on the class list and a problem by its
id in the talk, so that a name can change without touching what happened.
"""

from dataclasses import dataclass
from enum import StrEnum

from waysaid.drawing import Picture
from waysaid.hearing import Part
from waysaid.number import Equation
from waysaid.strings import Does
from waysaid.ways import Family, Kind

Seen = tuple[tuple[int, ...], ...]
"""Groups of a quick image as a child saw them, each by the places of its dots; empty: not kept."""
LOOK_SECONDS = 3
"""How long a quick image is shown where the class has no wish of its own: common practice."""


class Phase(StrEnum):
    """What the board is for at the moment."""

    BEFORE = "before"
    THINK = "think"
    ANSWERS = "answers"
    WAYS = "ways"
    CONNECT = "connect"
    AFTER = "after"


class Relation(StrEnum):
    """How a way stands to an earlier one: the child's own, added to it, or changed from it."""

    OWN = "own"
    ADDS = "adds"
    CHANGES = "changes"


@dataclass(frozen=True, slots=True)
class PlannedProblem:
    """A problem as the talk holds it: its text is what `waysaid.number.parse` reads."""

    id: str
    text: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class SaidStep:
    """One step as said: a part that nobody said is named in `unsaid` or blank in the equation."""

    kind: Kind
    equation: Equation
    unsaid: tuple[Part, ...] = ()


@dataclass(frozen=True, slots=True)
class Mark:
    """A place on the string: a number of a problem by index, its `answer` or its whole `row`."""

    problem: str
    place: int | str


@dataclass(frozen=True, slots=True)
class TalkOpened:
    """The talk begins with these problems planned; none for a talk with no plan.

    A quick image is shown for `image_seconds`.
    """

    title: str
    language: str
    board_language: str
    problems: tuple[PlannedProblem, ...] = ()
    image_seconds: int = LOOK_SECONDS


@dataclass(frozen=True, slots=True)
class ProblemAdded:
    """A problem joins the string behind `after`, or at the end."""

    problem: str
    text: str
    after: str | None = None


@dataclass(frozen=True, slots=True)
class ProblemShown:
    """The board shows this problem and thinking begins."""

    problem: str


@dataclass(frozen=True, slots=True)
class LookedAgain:
    """The class sees the quick image once more, as long as the first time."""

    problem: str


@dataclass(frozen=True, slots=True)
class ImageKept:
    """The quick image stands on the board to stay, or is hidden again."""

    problem: str
    on: bool


@dataclass(frozen=True, slots=True)
class PhaseSet:
    """The board turns to another phase."""

    phase: Phase


@dataclass(frozen=True, slots=True)
class AnswerHeard:
    """An answer was given, right or wrong."""

    id: str
    problem: str
    text: str
    child: str | None = None


@dataclass(frozen=True, slots=True)
class AnswerSettled:
    """The class settled on this answer to a problem; None where it is open again."""

    problem: str
    text: str | None = None


@dataclass(frozen=True, slots=True)
class AnswersNamed:
    """The board shows, or no longer shows, who gave which answer."""

    on: bool


@dataclass(frozen=True, slots=True)
class Proposed:
    """The family a line was first read as, where the teacher then chose another reading."""

    family: Family | None = None


@dataclass(frozen=True, slots=True)
class WayShared:
    """A child told a way. `family`, `foreseen` and `proposed` never reach the board.

    `seen` are the groups of a quick image, each by the places of its dots from 0; with none, they
    are found again from the steps. `proposed` makes it a correction: the line was read as that
    family, and the teacher chose this one.
    """

    id: str
    problem: str
    child: str | None = None
    relation: Relation = Relation.OWN
    to: str | None = None
    steps: tuple[SaidStep, ...] = ()
    words: str = ""
    family: Family | None = None
    answer: str | None = None
    picture: Picture = Picture.EQUATIONS
    foreseen: bool = False
    seen: Seen = ()
    proposed: Proposed | None = None


@dataclass(frozen=True, slots=True)
class WayEdited:
    """The teacher wrote a way down anew; `proposed` where it was read as another family before."""

    way: str
    steps: tuple[SaidStep, ...] = ()
    words: str = ""
    family: Family | None = None
    answer: str | None = None
    picture: Picture = Picture.EQUATIONS
    seen: Seen = ()
    proposed: Proposed | None = None


@dataclass(frozen=True, slots=True)
class WayAgreed:
    """A child did it the same way."""

    way: str
    child: str | None = None


@dataclass(frozen=True, slots=True)
class WayDrawnAs:
    """A way is drawn as the child asked."""

    way: str
    picture: Picture


@dataclass(frozen=True, slots=True)
class WaySeenAs:
    """The groups in which the child saw the quick image, as the teacher heard since."""

    way: str
    seen: Seen


@dataclass(frozen=True, slots=True)
class Passed:
    """A child was asked and chose to pass."""

    problem: str
    child: str


class Ground(StrEnum):
    """What is drawn on by hand, and moves and grows with what is drawn: our choice.

    A stroke on a way counts from the top left corner of its drawing or else of its tile, one on
    the sheet from the sheet's, in tenths of a percent of the screen's height, and across a drawing
    in thousandths of its width; one on the problem from the middle of its text, in thousandths of
    its letters' size; one on the string from its drawing's corner, in the drawing's own units.
    """

    SHEET = "sheet"
    PROBLEM = "problem"
    STRING = "string"


@dataclass(frozen=True, slots=True)
class StrokesDrawn:
    """Drawn by hand on the board: x, y, x, y ... as its ground counts."""

    id: str
    problem: str | None
    way: str | None = None
    strokes: tuple[tuple[int, ...], ...] = ()
    on: Ground = Ground.SHEET


@dataclass(frozen=True, slots=True)
class Erased:
    """A drawing by hand, a noticing, a drawn link or a what-if is taken off the board."""

    id: str


@dataclass(frozen=True, slots=True)
class TurnAndTalk:
    """The children talk in pairs, or come back."""

    on: bool


@dataclass(frozen=True, slots=True)
class NamesHidden:
    """The tags on the board carry no names, or carry them again."""

    on: bool


@dataclass(frozen=True, slots=True)
class Paused:
    """The talk rests, perhaps until another day."""


@dataclass(frozen=True, slots=True)
class Resumed:
    """The talk goes on."""


@dataclass(frozen=True, slots=True)
class Closed:
    """The talk is over."""


@dataclass(frozen=True, slots=True)
class Noticed:
    """A child noticed something in the string; kept in her words, true or not."""

    id: str
    child: str | None = None
    words: str = ""
    marks: tuple[Mark, ...] = ()
    join: bool = False


@dataclass(frozen=True, slots=True)
class LinkDrawn:
    """A link that a child said is drawn: its kind (for the desk), the problems, her words."""

    id: str
    link: str
    marks: tuple[Mark, ...]
    child: str | None = None
    words: str = ""


@dataclass(frozen=True, slots=True)
class WhatIf:
    """The class asks what if the numbers at these places of the string were changed.

    `amount` is added to each (taken, below 0), or `does` says that each is made so many times as
    large or as small, that two of a problem are swapped, or so much moved from one to the other.
    """

    id: str
    amount: int
    places: tuple[Mark, ...]
    child: str | None = None
    does: Does = Does.ADD


@dataclass(frozen=True, slots=True)
class WhatIfAnswer:
    """An answer a child gave to a problem of a what-if."""

    what_if: str
    problem: str
    text: str
    child: str | None = None


@dataclass(frozen=True, slots=True)
class EventId:
    """What names an event: its client and the client's own sequence."""

    client: str
    sequence: int


@dataclass(frozen=True, slots=True)
class Undo:
    """Takes back an event; an undo can itself be undone."""

    event: EventId


Body = (
    TalkOpened
    | ProblemAdded
    | ProblemShown
    | LookedAgain
    | ImageKept
    | PhaseSet
    | AnswerHeard
    | AnswerSettled
    | AnswersNamed
    | WayShared
    | WayEdited
    | WayAgreed
    | WayDrawnAs
    | WaySeenAs
    | Passed
    | StrokesDrawn
    | Erased
    | TurnAndTalk
    | NamesHidden
    | Paused
    | Resumed
    | Closed
    | Noticed
    | LinkDrawn
    | WhatIf
    | WhatIfAnswer
    | Undo
)


@dataclass(frozen=True, slots=True)
class Record:
    """An event as kept: the server's order, the client's own id and sequence, and what happened.

    `at` is when the server took it, in milliseconds since 1970; it orders nothing.
    """

    order: int
    client: str
    sequence: int
    body: Body
    at: int = 0
