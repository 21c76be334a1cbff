"""The board while the class looks for what connects the problems.

The answers are those the class gave or settled; a noticing is marked as its child said it, true
or not; a what-if shows no answer until a child says it.
"""

from collections.abc import Mapping
from functools import lru_cache
from typing import Any

from waysaid.drawing import Frame, StringMark, StringRow, draw_string, scene_json
from waysaid.number import Language, NoValue, Problem, say
from waysaid.strings import Change, ChangeError, Matched, noticing, outcome, what_if
from waysaid.talk.event import Mark, PlannedProblem
from waysaid.talk.sheet import SCREEN, WAY_SIZE, Sheet, name_of, read, shown
from waysaid.talk.state import Noticing, State, Supposing


def connect_view(state: State, names: Mapping[str, str], sheet: Sheet) -> dict[str, Any]:
    """Return the connecting phase of a board as JSON values; names are by child id."""
    string = string_of(state)
    rows = [
        {
            "id": item.id,
            "text": shown(problem, Language(state.board_language)),
            "spoken": say(problem, Language(state.board_language)),
            "answers": list(state.given(item.id)),
        }
        for item, problem in string
    ]
    supposing = state.supposings[-1] if state.supposings else None
    return {
        "rows": rows,
        "noticings": [_noticing(each, names) for each in state.noticings],
        "scene": _scene(state, string, sheet),
        "what_if": None if supposing is None else _what_if(state, string, supposing, names),
    }


def string_of(state: State) -> list[tuple[PlannedProblem, Problem]]:
    """Return the problems shown so far, in the string's order, each with what it reads as."""
    shown_ones = [item for item in state.problems if item.id in state.shown]
    return [(item, problem) for item in shown_ones if (problem := read(item)) is not None]


def change_of(string: list[tuple[PlannedProblem, Problem]], supposing: Supposing) -> Change:
    """Return a what-if as the change it makes to the string; places not on it are left out."""
    rows = {item.id: row for row, (item, _) in enumerate(string)}
    places = frozenset(
        (rows[mark.problem], mark.place)
        for mark in supposing.places
        if mark.problem in rows and isinstance(mark.place, int)
    )
    return Change(supposing.amount, places, supposing.does)


def what_if_refused(state: State, language: Language) -> dict[str, Any] | None:
    """Return why the newest what-if cannot be made, in a sentence for the desk, and its id.

    None where it can be made, and where there is none.
    """
    if not state.supposings:
        return None
    supposing, string = state.supposings[-1], string_of(state)
    try:
        what_if([problem for _, problem in string], change_of(string, supposing))
    except ChangeError as error:
        return {"id": supposing.id, "says": error.sentence(language)}
    return None


def what_if_outcome(state: State, language: Language) -> dict[str, Any] | None:
    """Return what the newest what-if does to the answers, and why, for the desk only, and its id.

    None where it cannot be made or changes nothing, and where there is none.
    """
    if not state.supposings:
        return None
    supposing, string = state.supposings[-1], string_of(state)
    try:
        found = outcome([problem for _, problem in string], change_of(string, supposing))
    except (ChangeError, NoValue):
        return None
    says = found.says(language)
    return {"id": supposing.id, "says": says} if says else None


def stated(state: State, noticed: Noticing, language: Language) -> str:
    """Return, for the desk only, what link a child's words state, or that they are kept as said.

    Empty where there are no words.
    """
    if not noticed.words:
        return ""
    problems = tuple(problem for _, problem in string_of(state))
    found = _matched(noticed.words, problems, Language(state.board_language))
    return "" if found is None else found.says(language)


@lru_cache(maxsize=256)
def _matched(words: str, problems: tuple[Problem, ...], language: Language) -> Matched | None:
    """Match a noticing; kept, as a desk is told anew after each event. None without an answer."""
    try:
        return noticing(words, problems, language)
    except NoValue:
        return None


def _noticing(noticed: Noticing, names: Mapping[str, str]) -> dict[str, Any]:
    return {
        "id": noticed.id,
        "name": names.get(noticed.child or "", ""),
        "words": noticed.words,
        "marks": [[mark.problem, mark.place] for mark in noticed.marks],
        "join": noticed.join,
    }


def _scene(
    state: State, string: list[tuple[PlannedProblem, Problem]], sheet: Sheet
) -> dict[str, Any]:
    """Return the string drawn with the marks of every noticing, for the left of the sheet."""
    language = Language(state.board_language)
    rows = tuple(
        StringRow(problem, state.given(item.id), name_of(problem, language))
        for item, problem in string
    )
    places = {item.id: row for row, (item, _) in enumerate(string)}
    marks = tuple(
        StringMark(tuple(_spots(each.marks, places)), each.join) for each in state.noticings
    )
    room = Frame(sheet.wide * 52 // 100, SCREEN - 180, WAY_SIZE)
    return dict(scene_json(draw_string(rows, marks, room, language)))


def _spots(marks: tuple[Mark, ...], rows: Mapping[str, int]) -> list[tuple[int, int | str]]:
    """Return the marks as places on the drawn string; those on no shown problem are left out."""
    return [(rows[mark.problem], mark.place) for mark in marks if mark.problem in rows]


def _what_if(
    state: State,
    string: list[tuple[PlannedProblem, Problem]],
    supposing: Supposing,
    names: Mapping[str, str],
) -> dict[str, Any] | None:
    """Return the changed string under the first, each problem with the answers said since."""
    try:
        changed = what_if([problem for _, problem in string], change_of(string, supposing))
    except ChangeError:
        return None
    language = Language(state.board_language)
    rows = [
        {
            "id": item.id,
            "text": shown(problem, language),
            "spoken": say(problem, language),
            "answers": [answer for row, answer in supposing.answers if row == item.id],
        }
        for (item, _), problem in zip(string, changed, strict=True)
    ]
    return {"id": supposing.id, "name": names.get(supposing.child or "", ""), "rows": rows}
