"""What the desk shows: the whole talk, and what only the teacher sees."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from waysaid.drawing import Picture, Telling, lines, nearest, suits
from waysaid.number import Language
from waysaid.site.answer_view import answer_view, in_words
from waysaid.site.around import Around, OnList
from waysaid.site.chips import chips_for, orders_by_child
from waysaid.site.desk_notes import (
    drawn_instead,
    flags_of,
    questions_for,
    slip_notes,
    unused_families,
)
from waysaid.site.history import History
from waysaid.site.image_view import seen_view
from waysaid.site.models import Talk
from waysaid.site.talk_rows import printed
from waysaid.site.talks import desk_title
from waysaid.site.wording import Wording, wording_of
from waysaid.talk import (
    Phase,
    State,
    WayTold,
    stated,
    telling_of,
    what_if_outcome,
    what_if_refused,
)


@dataclass(frozen=True, slots=True)
class Desk:
    """A talk as one desk looks at it; without history for a substitute."""

    around: Around
    state: State
    history: History
    shows_history: bool

    @property
    def talk(self) -> Talk:
        """The talk's row."""
        return self.around.talk

    @property
    def language(self) -> str:
        """The desk's language."""
        return self.talk.school_class.desk_language

    @property
    def wording(self) -> Wording:
        """The desk's language and its names for the families."""
        return wording_of(self.talk.school_class)


def desk_view(desk: Desk) -> dict[str, Any]:
    """Return the desk's own part of its payload, as JSON values."""
    state = desk.state
    children = desk.around.children
    names = {child.key: child.name for child in children}
    return {
        "title": desk_title(desk.talk),
        "language": desk.language,
        "phase": state.phase.value,
        "paused": state.paused,
        "closed": state.closed,
        "turn_and_talk": state.turn_and_talk,
        "names_hidden": state.names_hidden,
        "answers_named": state.answers_named,
        "history": desk.shows_history,
        "problems": _problems(state),
        "roster": _roster(desk, [child for child in children if child.active]),
        "answers": [
            {"id": each.id, "text": each.text, "child": each.child}
            for each in state.answers_of(state.now)
        ],
        "ways": [_way(desk, way, names) for way in state.ways],
        **_chips(desk),
        "answering": _answering(desk),
        "private": _private(desk, children),
        "think": _think(desk),
        "noticings": _noticings(state, names, Language(desk.language)),
        "what_ifs": _what_ifs(state),
        "what_if_refused": what_if_refused(state, Language(desk.language)),
        "what_if_outcome": what_if_outcome(state, Language(desk.language)),
    }


def _problems(state: State) -> list[dict[str, Any]]:
    settled = dict(state.settled)
    return [
        {
            "id": each.id,
            "text": printed(each.text),
            "plain": each.text,
            "why": each.why,
            "shown": each.id in state.shown,
            "now": each.id == state.now,
            "given": list(state.given(each.id)),
            "settled": settled.get(each.id),
        }
        for each in state.problems
    ]


def _roster(desk: Desk, children: Iterable[OnList]) -> list[dict[str, Any]]:
    spoke = set(desk.state.spoke())
    passed = {child for problem, child in desk.state.passed if problem == desk.state.now}
    roster = []
    for child in children:
        row: dict[str, Any] = {
            "id": child.key,
            "name": child.name,
            "heard": child.key in spoke,
            "passed": child.key in passed,
        }
        if desk.shows_history:
            # With nothing before this talk, nobody is someone not heard lately.
            row["lately"] = not desk.history.talks or child.key in desk.history.lately
        roster.append(row)
    return roster


def _chips(desk: Desk) -> dict[str, Any]:
    planned = desk.state.problem(desk.state.now)
    if planned is None:
        return {"chips": [], "chip_orders": {}}
    chips = chips_for(planned.text, desk.history, desk.wording)
    board = desk.state.board_language
    return {
        "chips": [_worded(chip, board) for chip in chips],
        "chip_orders": orders_by_child(planned.text, desk.history, desk.wording.rest),
    }


def _worded(chip: dict[str, Any], board_language: str) -> dict[str, Any]:
    """Return a chip whose answer is said as the board says it."""
    said = {name: in_words(chip[name], board_language) for name in ("answer", "ends")}
    return {**chip, **said}


def _answering(desk: Desk) -> dict[str, Any]:
    """Return how an answer to the problem of the moment is noted, and what the teacher may know."""
    planned = desk.state.problem(desk.state.now)
    text_now = planned.text if planned is not None else ""
    return answer_view(text_now, desk.state.board_language, desk.wording.rest)


def _way(desk: Desk, way: WayTold, names: dict[str, str]) -> dict[str, Any]:
    telling = telling_of(desk.state, way)
    drawn = nearest(way.picture, telling) if telling else way.picture
    family = way.family
    return {
        "id": way.id,
        "problem": way.problem,
        "child": way.child,
        "name": names.get(way.child or "", ""),
        "also": [names[child] for child in way.agreed if child in names],
        "relation": way.relation.value,
        "to": way.to,
        "family": family.value if family else None,
        "family_name": desk.wording.name(family) if family else None,
        "lines": list(lines(telling, desk.wording.language)) if telling else [],
        "words": way.words,
        "foreseen": way.foreseen,
        "answer": way.answer,
        "flags": [*flags_of(desk.state, way, desk.language), *drawn_instead(telling, way.picture)],
        "picture": way.picture.value,
        "drawn": drawn.value,
        "pictures": _pictures(telling) if telling else [Picture.WORDS.value],
        "groupings": _groupings(desk, way, telling) if drawn is Picture.DOTS else [],
    }


def _groupings(desk: Desk, way: WayTold, telling: Telling | None) -> list[dict[str, Any]]:
    """Return the groupings to choose between for a way of the problem of the moment."""
    if telling is None or way.problem != desk.state.now:
        return []
    groupings: list[dict[str, Any]] = seen_view(telling, desk.language)["groupings"]
    return groupings


@lru_cache(maxsize=512)
def _pictures(telling: Telling) -> tuple[str, ...]:
    if not telling.steps:
        return (Picture.WORDS.value,)
    return tuple(picture.value for picture in Picture if suits(picture, telling))


def _private(desk: Desk, children: Iterable[OnList]) -> dict[str, Any]:
    """Return the private column; a substitute's has nothing of the class before today."""
    state, history = desk.state, desk.history
    spoke = set(state.spoke())
    quiet = [
        child.name
        for child in children
        if child.active and history.talks and child.key not in spoke | history.lately
    ]
    plan = desk.talk.plan
    return {
        "unused": unused_families(state, desk.wording),
        "slips": slip_notes(state, desk.language),
        "questions": questions_for(state, plan.questions if plan else [], desk.language),
        "not_heard": quiet if desk.shows_history else [],
    }


def _think(desk: Desk) -> dict[str, Any]:
    thinking = desk.state.phase is Phase.THINK and desk.state.since
    return {
        "since": desk.state.since if thinking else None,
        "usual": desk.history.usual_seconds if desk.shows_history else None,
    }


def _noticings(state: State, names: dict[str, str], language: Language) -> list[dict[str, Any]]:
    return [
        {
            "id": each.id,
            "child": each.child,
            "name": names.get(each.child or "", ""),
            "words": each.words,
            "link": each.link,
            "states": stated(state, each, language),
        }
        for each in state.noticings
    ]


def _what_ifs(state: State) -> list[dict[str, Any]]:
    return [
        {
            "id": each.id,
            "amount": each.amount,
            "does": each.does.value,
            "answers": [list(pair) for pair in each.answers],
        }
        for each in state.supposings
    ]
