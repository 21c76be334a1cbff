"""What children showed in a talk, as single pieces of evidence.

A piece says only what happened: who, what, on which problem, when. Nothing is weighed here.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from functools import lru_cache

from waysaid.drawing import Picture
from waysaid.number import About, Problem, Unreadable, fits, parse
from waysaid.talk import Relation, State, WayTold
from waysaid.ways import Family


class How(StrEnum):
    """What somebody did: told a way of her own, added to or changed one, agreed with one, ..."""

    SAID = "said"
    ADDED = "added"
    CHANGED = "changed"
    AGREED = "agreed"
    ANSWERED = "answered"
    NOTICED = "noticed"
    SUPPOSED = "supposed"
    PASSED = "passed"


TOLD = frozenset({How.SAID, How.ADDED, How.CHANGED})
"""What brings a way to the board."""
USED = TOLD | {How.AGREED}
"""What shows that somebody thought in a family."""
_HOW = {Relation.OWN: How.SAID, Relation.ADDS: How.ADDED, Relation.CHANGES: How.CHANGED}


@dataclass(frozen=True, slots=True)
class Held:
    """A talk that was held: its id, its day, what it came to, the family its plan was about."""

    id: str
    day: date
    state: State
    focus: Family | None = None


@dataclass(frozen=True, slots=True)
class Shown:
    """One piece of evidence, the `order`-th of its talk.

    `child` is the id on the class list, None for nobody named; `problem` is the problem's text,
    empty for what is about the whole string; `way` is the way's id. `right` is whether the answer
    said fits, None where there is none or no right and wrong: for the teacher alone. `language` is
    the desk's. `planned` is whether the plan of the talk was about this very family.
    """

    talk: str
    day: date
    order: int
    child: str | None
    how: How
    problem: str = ""
    family: Family | None = None
    way: str = ""
    picture: Picture | None = None
    right: bool | None = None
    language: str = "en"
    planned: bool = False


def shown_in(held: Held) -> tuple[Shown, ...]:
    """Return the evidence of a talk: ways in the order heard, then answers, noticings, passes."""
    found = [*_ways(held), *_answers(held), *_said_of_all(held), *_passes(held)]
    return tuple(replace(piece, order=order) for order, piece in enumerate(found))


def _piece(held: Held, child: str | None, how: How, problem: str = "") -> Shown:
    return Shown(held.id, held.day, 0, child, how, problem, language=held.state.language)


def _ways(held: Held) -> Iterator[Shown]:
    for way in held.state.ways:
        told = _told(held, way)
        yield told
        for child in way.agreed:
            yield replace(told, child=child, how=How.AGREED, picture=None, right=None)


def _told(held: Held, way: WayTold) -> Shown:
    text = _text(held.state, way.problem)
    return replace(
        _piece(held, way.child, _HOW[way.relation], text),
        family=way.family,
        way=way.id,
        picture=way.picture,
        right=right_or_not(text, way.answer),
        planned=way.family is not None and way.family is held.focus,
    )


def _answers(held: Held) -> Iterator[Shown]:
    """Yield what was answered alone: the answer that ends a way is the way's own."""
    for answer in held.state.answers:
        if answer.id:
            text = _text(held.state, answer.problem)
            piece = _piece(held, answer.child, How.ANSWERED, text)
            yield replace(piece, right=right_or_not(text, answer.text))


def _said_of_all(held: Held) -> Iterator[Shown]:
    for noticing in held.state.noticings:
        yield _piece(held, noticing.child, How.NOTICED)
    for supposing in held.state.supposings:
        yield _piece(held, supposing.child, How.SUPPOSED)


def _passes(held: Held) -> Iterator[Shown]:
    for problem, child in held.state.passed:
        yield _piece(held, child, How.PASSED, _text(held.state, problem))


def _text(state: State, problem_id: str) -> str:
    problem = state.problem(problem_id)
    return problem.text if problem is not None else ""


def right_or_not(problem_text: str, said: str | None) -> bool | None:
    """Tell whether what was said answers a problem; None where nothing was, and for an estimate."""
    problem = _problem(problem_text)
    if said is None or problem is None or isinstance(problem, About):
        return None
    return fits(problem, said)


@lru_cache(maxsize=1024)
def _problem(problem_text: str) -> Problem | None:
    try:
        return parse(problem_text)
    except Unreadable:
        return None
