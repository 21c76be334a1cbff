"""Notes for the teacher alone. Each is a guess to listen with, never a verdict on a child."""

from collections.abc import Iterator
from functools import lru_cache
from typing import Any

from django.utils.translation import gettext as _

from waysaid.drawing import Picture, Telling, nearest
from waysaid.number import (
    About,
    Exact,
    Language,
    NoValue,
    Print,
    Problem,
    Said,
    Unreadable,
    fits,
    parse,
    parse_said,
    solve,
    text,
)
from waysaid.site.chips import foreseen
from waysaid.site.wording import Wording
from waysaid.site.words import MORE_PICTURES, PICTURES
from waysaid.slips import Slip, foresee, slip_answer, slip_note, slip_question, slips
from waysaid.talk import State, WayTold
from waysaid.ways import Step

MOST_NOTES = 4
"""Notes of one sort at a time: what can be read at a glance."""


def problem_of(problem_text: str) -> Problem | None:
    """Return the problem, or None where its text cannot be read."""
    try:
        return parse(problem_text)
    except Unreadable:
        return None


def answer_of(problem: Problem) -> Exact | None:
    """Return the right answer, or None where there is none."""
    try:
        return solve(problem)
    except NoValue:
        return None


def unused_families(state: State, wording: Wording) -> list[str]:
    """Return the names of foreseen families that nobody used on the problem of the moment."""
    problem = state.problem(state.now)
    if problem is None:
        return []
    used = {way.family for way in state.ways_of(problem.id)}
    families = dict.fromkeys(way.family for way in foreseen(problem.text, wording.rest))
    names = [wording.name(each) for each in families if each not in used]
    return names[:MOST_NOTES]


def slip_notes(state: State, language: str) -> list[dict[str, Any]]:
    """Return what to listen for: first what was heard, then what is likeliest to come."""
    planned = state.problem(state.now)
    problem = problem_of(planned.text) if planned is not None else None
    if planned is None or problem is None:
        return []
    heard = _heard(state, planned.id)
    notes = [_note(problem, slip, language, heard=True) for slip in _slips_heard(problem, heard)]
    coming = {slip.wrong: slip for slip in reversed(_expected(planned.text))}
    notes += [
        _note(problem, slip, language, heard=False)
        for slip in reversed(coming.values())
        if slip.wrong not in heard
    ]
    return notes[:MOST_NOTES]


def _heard(state: State, problem_id: str) -> list[Said]:
    """Return the different answers given so far, as far as they can be read."""
    answers = [parse_said(answer.text) for answer in state.answers_of(problem_id)]
    return [said for said in dict.fromkeys(answers) if said is not None]


def _slips_heard(problem: Problem, heard: list[Said]) -> list[Slip]:
    """Return the likeliest slip behind each wrong answer; an estimate has none."""
    if isinstance(problem, About):
        return []
    return [slip for said in heard for slip in slips(problem, said)[:1]]


@lru_cache(maxsize=256)
def _expected(problem_text: str) -> tuple[Slip, ...]:
    return foresee(parse(problem_text))


def _note(problem: Problem, slip: Slip, language: str, *, heard: bool) -> dict[str, Any]:
    note = slip_note(slip, Language(language))
    return {"wrong": slip_answer(slip, problem), "note": note, "heard": heard}


def _asked(state: State, language: str) -> list[str]:
    planned = state.problem(state.now)
    problem = problem_of(planned.text) if planned is not None else None
    if planned is None or problem is None:
        return []
    found = _slips_heard(problem, _heard(state, planned.id))
    return [slip_question(slip, Language(language)) for slip in found]


def flags_of(state: State, way: WayTold, language: str) -> list[str]:
    """Return what the desk may note about a way as told; the record keeps it as it was said."""
    planned = state.problem(way.problem)
    problem = problem_of(planned.text) if planned is not None else None
    if problem is None:
        return []
    return list(_flags(problem, way, language))


def slip_heard(problem: Problem, answer: str | None, language: str) -> str | None:
    """Return the note of the likeliest slip behind an answer that is not right, if one is known."""
    if answer is None or isinstance(problem, About) or fits(problem, answer) is not False:
        return None
    ended = parse_said(answer)
    found = slips(problem, ended)[:1] if ended is not None else ()
    return next((slip_note(slip, Language(language)) for slip in found), None)


def _flags(problem: Problem, way: WayTold, language: str) -> Iterator[str]:
    for said in way.steps:
        if Step(said.kind, said.equation).true is False:
            yield _("%(equation)s does not hold; it is kept as it was said.") % {
                "equation": text(said.equation, Print.TRUE, Language(language))
            }
    # An estimate has a range, and no right or wrong.
    if way.answer is None or isinstance(problem, About) or fits(problem, way.answer) is not False:
        return
    yield _("It ends at %(said)s.") % {"said": way.answer}
    note = slip_heard(problem, way.answer, language)
    if note is not None:
        yield note


def drawn_instead(telling: Telling | None, asked: Picture) -> list[str]:
    """Return a note where a way is drawn otherwise than asked, for that drawing cannot show it."""
    if telling is None or not telling.steps:
        return []
    shown = nearest(asked, telling)
    if shown is asked:
        return []
    names = {**PICTURES, **MORE_PICTURES}
    return [
        _("Asked to draw it %(asked)s; that cannot show it, so it is drawn %(shown)s.")
        % {"asked": names[asked.value], "shown": names[shown.value]}
    ]


def questions_for(state: State, planned: list[Any], language: str) -> list[str]:
    """Return questions she could ask now: to what was heard first, then the plan's own.

    A question to a wrong answer gives nothing away, and suits a right one as well.
    """
    own = [*_asked(state, language)[:1], *(str(question) for question in planned)]
    named = [way for way in state.ways_of(state.now) if way.child]
    standard = [_("How did you start?"), _("Did anyone think about it another way?")]
    if named:
        standard.append(_("Who can say that way in their own words?"))
    if len(named) > 1:
        standard.append(_("What is alike in these ways, and what is different?"))
    return (own + standard)[:MOST_NOTES]
