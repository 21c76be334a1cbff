"""How a class's lines are heard: its language, what its teacher corrected, what was said before."""

from collections import Counter
from dataclasses import dataclass

from waysaid.hearing import Reading, Told
from waysaid.number import Language
from waysaid.site.history import corrections_before, corrections_of
from waysaid.site.models import Talk
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
    meant: Counter[Family] = Counter()
    for (_proposed, family), times in chosen.items():
        if family is not None:
            meant[family] += times
    language = Language(state.board_language)
    return Ears(language, tuple(sorted(meant.items())), _before(talk, state, problem_text))


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
