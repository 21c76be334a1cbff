"""How a class's lines are heard: its language, what its teacher corrected, what was said before."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from django.utils import timezone

from waysaid.hearing import Reading, Told
from waysaid.number import Language
from waysaid.site.history import (
    Correction,
    corrections_before,
    corrections_of,
    history_before,
)
from waysaid.site.models import SchoolClass, Talk
from waysaid.talk import State, WayTold
from waysaid.ways import Family, Step


@dataclass(frozen=True, slots=True)
class Ears:
    """What a line is heard with.

    `leaning` is how often a family was meant where another was proposed; `before` is what each
    child said of the problem so far, by name, for `same as Noor`.
    """

    language: Language
    leaning: tuple[tuple[Family, int], ...] = ()
    before: tuple[tuple[str, Reading], ...] = ()


def ears_for(talk: Talk, state: State, problem_text: str) -> Ears:
    """Return what a line about this problem of a talk is heard with.

    On a substitute's talk nothing of the talks before it counts.
    """
    chosen = Counter(corrections_of(state, talk.set_aside).values())
    if talk.history:
        chosen.update(corrections_before(talk))
    language = Language(state.board_language)
    return Ears(language, _meant(chosen), _before(talk, state, problem_text))


def ears_of_class(school_class: SchoolClass) -> Ears:
    """Return what a line is heard with where no talk of the class is open."""
    now = Talk(school_class=school_class, made_at=timezone.now())
    language = Language(school_class.board_language)
    return Ears(language, _meant(history_before(now).corrections))


def _meant(chosen: Mapping[Correction, int]) -> tuple[tuple[Family, int], ...]:
    """Return how often each family was meant where another was proposed."""
    meant: Counter[Family] = Counter()
    for (_proposed, family), times in chosen.items():
        if family is not None:
            meant[family] += times
    return tuple(sorted(meant.items()))


def _before(talk: Talk, state: State, problem_text: str) -> tuple[tuple[str, Reading], ...]:
    same = {each.id for each in state.problems if each.text == problem_text}
    told = {way.child: way for way in state.ways if way.problem in same and way.steps}
    told.pop(None, None)
    if not told:
        return ()
    children = talk.school_class.children.all()
    return tuple((each.name, _said(told[each.key])) for each in children if each.key in told)


def _said(way: WayTold) -> Reading:
    """Return a way as it was told; where in the words each step stood is not kept."""
    steps = (Told(Step(each.kind, each.equation), each.unsaid, (0, 0)) for each in way.steps)
    return Reading(tuple(steps), None, way.family, way.words)
