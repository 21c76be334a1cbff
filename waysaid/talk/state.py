"""What a talk has come to: everything a desk or a board shows is read from here."""

from dataclasses import dataclass

from waysaid.drawing import Picture
from waysaid.strings import Does
from waysaid.talk.event import (
    LOOK_SECONDS,
    Ground,
    Mark,
    Phase,
    PlannedProblem,
    Proposed,
    Relation,
    SaidStep,
    Seen,
)
from waysaid.ways import Family


@dataclass(frozen=True, slots=True)
class Answer:
    """An answer as heard; `id` is empty for one that came as the end of a way."""

    id: str
    problem: str
    text: str
    child: str | None


@dataclass(frozen=True, slots=True)
class WayTold:
    """A way as told, with who agreed with it since and which way it was changed into."""

    id: str
    problem: str
    child: str | None
    relation: Relation
    to: str | None
    steps: tuple[SaidStep, ...]
    words: str
    family: Family | None
    answer: str | None
    picture: Picture
    foreseen: bool
    agreed: tuple[str | None, ...] = ()
    seen: Seen = ()
    proposed: Proposed | None = None

    @property
    def corrected(self) -> bool:
        """Whether the teacher chose another family than the line was first read as."""
        return self.proposed is not None and self.proposed.family is not self.family


@dataclass(frozen=True, slots=True)
class Drawn:
    """Strokes by hand, and what they are drawn on; on a way where they have one."""

    id: str
    problem: str | None
    way: str | None
    strokes: tuple[tuple[int, ...], ...]
    on: Ground = Ground.SHEET


@dataclass(frozen=True, slots=True)
class Noticing:
    """What a child noticed, or a link she named; `link` is for the desk only."""

    id: str
    child: str | None
    words: str
    marks: tuple[Mark, ...]
    join: bool
    link: str | None = None


@dataclass(frozen=True, slots=True)
class Supposing:
    """A what-if on the string, and the answers said since as (problem id, answer)."""

    id: str
    amount: int
    places: tuple[Mark, ...]
    child: str | None
    answers: tuple[tuple[str, str], ...] = ()
    does: Does = Does.ADD


@dataclass(frozen=True, slots=True)
class LastDone:
    """The event that one tap of undo takes back."""

    client: str
    sequence: int
    kind: str


@dataclass(frozen=True, slots=True)
class State:
    """A whole talk. `order` is the last event's; `since` is when the problem was shown (ms).

    A quick image is in sight from `looking_since` (ms) on for `image_seconds`; for good where its
    problem is in `kept`. A problem in `looked_again` had its one more look.
    """

    order: int = 0
    title: str = ""
    language: str = "en"
    board_language: str = "en"
    phase: Phase = Phase.BEFORE
    problems: tuple[PlannedProblem, ...] = ()
    shown: tuple[str, ...] = ()
    now: str | None = None
    since: int = 0
    image_seconds: int = LOOK_SECONDS
    looking_since: int = 0
    looked_again: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()
    answers: tuple[Answer, ...] = ()
    settled: tuple[tuple[str, str], ...] = ()
    ways: tuple[WayTold, ...] = ()
    passed: tuple[tuple[str, str], ...] = ()
    drawn: tuple[Drawn, ...] = ()
    noticings: tuple[Noticing, ...] = ()
    supposings: tuple[Supposing, ...] = ()
    answers_named: bool = False
    names_hidden: bool = False
    turn_and_talk: bool = False
    paused: bool = False
    closed: bool = False
    last: LastDone | None = None

    def problem(self, problem_id: str | None) -> PlannedProblem | None:
        """Return the problem with this id, or None."""
        return next((item for item in self.problems if item.id == problem_id), None)

    def look_left(self, now: int) -> int:
        """Return for how many more milliseconds the quick image of the moment is in sight.

        `now` is in milliseconds since 1970. 0 where it is hidden again, and where it was kept.
        """
        if not self.looking_since or self.paused or self.closed:
            return 0
        whole = self.image_seconds * 1000
        return min(max(self.looking_since + whole - now, 0), whole)

    def way(self, way_id: str | None) -> WayTold | None:
        """Return the way with this id, or None."""
        return next((way for way in self.ways if way.id == way_id), None)

    def ways_of(self, problem_id: str | None) -> tuple[WayTold, ...]:
        """Return a problem's ways in the order heard."""
        return tuple(way for way in self.ways if way.problem == problem_id)

    def answers_of(self, problem_id: str | None) -> tuple[Answer, ...]:
        """Return a problem's answers in the order heard."""
        return tuple(answer for answer in self.answers if answer.problem == problem_id)

    def given(self, problem_id: str) -> tuple[str, ...]:
        """Return what stands for a problem's answer: the settled one, else each one given."""
        settled = dict(self.settled).get(problem_id)
        if settled is not None:
            return (settled,)
        return tuple(dict.fromkeys(answer.text for answer in self.answers_of(problem_id)))

    def spoke(self) -> tuple[str, ...]:
        """Return the children who said something today, in the order first heard; no passes."""
        said = [answer.child for answer in self.answers]
        said += [child for way in self.ways for child in (way.child, *way.agreed)]
        said += [noticing.child for noticing in self.noticings]
        said += [supposing.child for supposing in self.supposings]
        return tuple(dict.fromkeys(child for child in said if child is not None))
