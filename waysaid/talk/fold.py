"""Fold a talk's records into its state.

The fold never fails: an event about something that is not there changes nothing. The same event
delivered twice counts once (by client and sequence), and order is the server's, so any retried or
repeated delivery folds to the same state.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import Any

from waysaid.talk import event as happened
from waysaid.talk.codec import kind_of
from waysaid.talk.event import Body, Phase, PlannedProblem, Record
from waysaid.talk.state import (
    Answer,
    Drawn,
    LastDone,
    Noticing,
    State,
    Supposing,
    WayTold,
)


def fold(records: Iterable[Record]) -> State:
    """Return the state after these records, given in any order and any number of times."""
    state = State()
    for record in standing(records):
        state = apply(state, record)
    return state


def fold_on(state: State, before: Sequence[Record], new: Sequence[Record]) -> State:
    """Return the fold of `before` and `new` together, where `state` is the fold of `before`.

    What comes after all the rest and takes nothing back is put on the state; all else is folded
    anew from the first record.
    """
    known = {(record.client, record.sequence) for record in before}
    for record in new:
        key = (record.client, record.sequence)
        undoes = isinstance(record.body, happened.Undo)
        if undoes or key in known or record.order <= state.order:
            return fold((*before, *new))
        known.add(key)
        state = apply(state, record)
    return state


def standing(records: Iterable[Record]) -> tuple[Record, ...]:
    """Return the records that count, in order: each once, and none that was taken back."""
    first: dict[tuple[str, int], Record] = {}
    for record in sorted(records, key=lambda each: each.order):
        first.setdefault((record.client, record.sequence), record)
    gone: set[tuple[str, int]] = set()
    kept = []
    for key, record in reversed(first.items()):
        if key in gone:
            continue
        if isinstance(record.body, happened.Undo):
            gone.add((record.body.event.client, record.body.event.sequence))
        kept.append(record)
    return tuple(reversed(kept))


def apply(state: State, record: Record) -> State:
    """Return the state after one more record; an undo itself changes nothing but the order."""
    state = replace(state, order=max(state.order, record.order))
    if isinstance(record.body, happened.Undo):
        return state
    after = _APPLY[type(record.body)](state, record.body)
    if isinstance(record.body, happened.ProblemShown):
        first = record.body.problem not in state.shown
        after = replace(after, since=record.at, looking_since=record.at if first else 0)
    if after.looked_again != state.looked_again:
        after = replace(after, looking_since=record.at)
    if isinstance(record.body, happened.TalkOpened):
        return after
    done = LastDone(record.client, record.sequence, kind_of(record.body))
    return replace(after, last=done)


def _opened(state: State, body: happened.TalkOpened) -> State:
    return replace(
        state,
        title=body.title,
        language=body.language,
        board_language=body.board_language,
        problems=_distinct(body.problems),
        image_seconds=body.image_seconds,
    )


def _distinct(problems: Iterable[PlannedProblem]) -> tuple[PlannedProblem, ...]:
    return tuple({item.id: item for item in problems}.values())


def _problem_added(state: State, body: happened.ProblemAdded) -> State:
    if state.problem(body.problem) is not None:
        return state
    ids = [item.id for item in state.problems]
    place = ids.index(body.after) + 1 if body.after in ids else len(ids)
    added = PlannedProblem(body.problem, body.text)
    return replace(state, problems=(*state.problems[:place], added, *state.problems[place:]))


def _problem_shown(state: State, body: happened.ProblemShown) -> State:
    if state.problem(body.problem) is None:
        return state
    first_time = body.problem not in state.shown
    return replace(
        state,
        now=body.problem,
        shown=(*state.shown, body.problem) if first_time else state.shown,
        phase=Phase.THINK if first_time else Phase.WAYS,
        turn_and_talk=False,
    )


def _looked_again(state: State, body: happened.LookedAgain) -> State:
    if body.problem != state.now or body.problem in state.looked_again:
        return state
    return replace(state, looked_again=(*state.looked_again, body.problem))


def _image_kept(state: State, body: happened.ImageKept) -> State:
    others = tuple(each for each in state.kept if each != body.problem)
    if state.problem(body.problem) is None or not body.on:
        return replace(state, kept=others, looking_since=0)
    return replace(state, kept=(*others, body.problem))


def _phase_set(state: State, body: happened.PhaseSet) -> State:
    return replace(state, phase=body.phase)


def _answer(state: State, answer: Answer) -> State:
    """Add an answer unless the same child gave the same one to the same problem before."""
    text = answer.text.strip()
    known = {(each.problem, each.text, each.child) for each in state.answers}
    if (
        not text
        or state.problem(answer.problem) is None
        or (answer.problem, text, answer.child) in known
    ):
        return state
    return replace(state, answers=(*state.answers, replace(answer, text=text)))


def _answer_heard(state: State, body: happened.AnswerHeard) -> State:
    return _answer(state, Answer(body.id, body.problem, body.text, body.child))


def _answer_settled(state: State, body: happened.AnswerSettled) -> State:
    others = tuple(pair for pair in state.settled if pair[0] != body.problem)
    text = body.text
    heard = [answer.text for answer in state.answers_of(body.problem)]
    if text is None or text not in heard:
        return replace(state, settled=others)
    return replace(state, settled=(*others, (body.problem, text)))


def _way_shared(state: State, body: happened.WayShared) -> State:
    if state.way(body.id) is not None or state.problem(body.problem) is None:
        return state
    told = WayTold(
        body.id,
        body.problem,
        body.child,
        body.relation,
        body.to,
        body.steps,
        body.words,
        body.family,
        body.answer,
        body.picture,
        body.foreseen,
        seen=body.seen,
        proposed=body.proposed,
    )
    turned = Phase.WAYS if body.problem == state.now else state.phase
    after = replace(state, ways=(*state.ways, told), phase=turned, turn_and_talk=False)
    return _answer(after, Answer("", body.problem, body.answer or "", body.child))


def _change_way(state: State, way_id: str, change: Callable[[WayTold], WayTold]) -> State:
    return replace(
        state, ways=tuple(change(way) if way.id == way_id else way for way in state.ways)
    )


def _way_edited(state: State, body: happened.WayEdited) -> State:
    def written_anew(way: WayTold) -> WayTold:
        return replace(
            way,
            steps=body.steps,
            words=body.words,
            family=body.family,
            answer=body.answer,
            picture=body.picture,
            foreseen=False,
            seen=body.seen,
            proposed=way.proposed or body.proposed,
        )

    before = state.way(body.way)
    if before is None:
        return state
    after = _change_way(state, body.way, written_anew)
    kept = tuple(answer for answer in after.answers if not _came_with(answer, before))
    after = replace(after, answers=kept)
    return _answer(after, Answer("", before.problem, body.answer or "", before.child))


def _came_with(answer: Answer, way: WayTold) -> bool:
    """Tell whether an answer is there only as the end of this way."""
    return (answer.id, answer.problem, answer.text, answer.child) == (
        "",
        way.problem,
        way.answer,
        way.child,
    )


def _way_agreed(state: State, body: happened.WayAgreed) -> State:
    def agreed(way: WayTold) -> WayTold:
        if body.child is not None and body.child in (way.child, *way.agreed):
            return way
        return replace(way, agreed=(*way.agreed, body.child))

    return _change_way(state, body.way, agreed)


def _way_drawn_as(state: State, body: happened.WayDrawnAs) -> State:
    return _change_way(state, body.way, lambda way: replace(way, picture=body.picture))


def _way_seen_as(state: State, body: happened.WaySeenAs) -> State:
    return _change_way(state, body.way, lambda way: replace(way, seen=body.seen))


def _passed(state: State, body: happened.Passed) -> State:
    pair = (body.problem, body.child)
    return state if pair in state.passed else replace(state, passed=(*state.passed, pair))


def _strokes_drawn(state: State, body: happened.StrokesDrawn) -> State:
    drawn = Drawn(body.id, body.problem, body.way, body.strokes, body.on)
    return replace(state, drawn=(*(each for each in state.drawn if each.id != body.id), drawn))


def _erased(state: State, body: happened.Erased) -> State:
    return replace(
        state,
        drawn=tuple(each for each in state.drawn if each.id != body.id),
        noticings=tuple(each for each in state.noticings if each.id != body.id),
        supposings=tuple(each for each in state.supposings if each.id != body.id),
    )


def _noticed(state: State, body: happened.Noticed) -> State:
    return _add_noticing(state, Noticing(body.id, body.child, body.words, body.marks, body.join))


def _link_drawn(state: State, body: happened.LinkDrawn) -> State:
    noticing = Noticing(body.id, body.child, body.words, body.marks, True, body.link)
    return _add_noticing(state, noticing)


def _add_noticing(state: State, noticing: Noticing) -> State:
    if any(each.id == noticing.id for each in state.noticings):
        return state
    return replace(state, noticings=(*state.noticings, noticing))


def _what_if(state: State, body: happened.WhatIf) -> State:
    if any(each.id == body.id for each in state.supposings):
        return state
    supposing = Supposing(body.id, body.amount, body.places, body.child, does=body.does)
    return replace(state, supposings=(*state.supposings, supposing))


def _what_if_answer(state: State, body: happened.WhatIfAnswer) -> State:
    def answered(supposing: Supposing) -> Supposing:
        pair = (body.problem, body.text.strip())
        if supposing.id != body.what_if or not pair[1] or pair in supposing.answers:
            return supposing
        return replace(supposing, answers=(*supposing.answers, pair))

    return replace(state, supposings=tuple(answered(each) for each in state.supposings))


def _answers_named(state: State, body: happened.AnswersNamed) -> State:
    return replace(state, answers_named=body.on)


def _turn_and_talk(state: State, body: happened.TurnAndTalk) -> State:
    return replace(state, turn_and_talk=body.on)


def _names_hidden(state: State, body: happened.NamesHidden) -> State:
    return replace(state, names_hidden=body.on)


def _paused(state: State, _body: happened.Paused) -> State:
    return replace(state, paused=True)


def _resumed(state: State, _body: happened.Resumed) -> State:
    return replace(state, paused=False, closed=False)


def _closed(state: State, _body: happened.Closed) -> State:
    return replace(state, paused=False, closed=True, phase=Phase.AFTER)


_APPLY: dict[type[Body], Callable[[State, Any], State]] = {
    happened.TalkOpened: _opened,
    happened.ProblemAdded: _problem_added,
    happened.ProblemShown: _problem_shown,
    happened.LookedAgain: _looked_again,
    happened.ImageKept: _image_kept,
    happened.PhaseSet: _phase_set,
    happened.AnswerHeard: _answer_heard,
    happened.AnswerSettled: _answer_settled,
    happened.AnswersNamed: _answers_named,
    happened.WayShared: _way_shared,
    happened.WayEdited: _way_edited,
    happened.WayAgreed: _way_agreed,
    happened.WayDrawnAs: _way_drawn_as,
    happened.WaySeenAs: _way_seen_as,
    happened.Passed: _passed,
    happened.StrokesDrawn: _strokes_drawn,
    happened.Erased: _erased,
    happened.TurnAndTalk: _turn_and_talk,
    happened.NamesHidden: _names_hidden,
    happened.Paused: _paused,
    happened.Resumed: _resumed,
    happened.Closed: _closed,
    happened.Noticed: _noticed,
    happened.LinkDrawn: _link_drawn,
    happened.WhatIf: _what_if,
    happened.WhatIfAnswer: _what_if_answer,
}
