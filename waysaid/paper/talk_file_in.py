"""A talk file read: what does not fit is refused with one sentence, and nothing is guessed."""

import json
from collections.abc import Callable, Mapping, Sequence
from datetime import date
from typing import Any, NoReturn, TypeVar
from unicodedata import category

from waysaid.number import Language, Rest, Unreadable, parse
from waysaid.paper.talk_file import (
    FORMAT,
    LARGEST_TALK_FILE,
    LATEST,
    MOST_CHILDREN,
    MOST_EVENTS,
    MOST_LINES,
    MOST_PROBLEMS,
    MOST_SIGNALS,
    VERSION,
    BoardInFile,
    ChildInFile,
    SignalInFile,
    TalkFile,
    children_in,
)
from waysaid.paper.talk_file_said import SAID, Fault
from waysaid.strings import GRADES
from waysaid.talk import BadEventError, PlannedProblem, Record, TalkOpened, body_from_json

SECONDS = range(1, 61)
LONGEST_NAME = 60
LONGEST_ID = 64
LONGEST_LINE = 300
"""Characters of a title, a reason, a question, a norm (our choice)."""
LONGEST_SHOWN = 500
"""Characters that a sentence quotes: as many as it takes to list the kinds of events."""
HIGHEST = 2**31 - 1
"""The highest sequence: what a database's whole number holds."""
_Read = TypeVar("_Read")


class TalkFileError(ValueError):
    """Raised for a file that cannot be used; `where` is the part of it, `shown` what is there."""

    def __init__(self, fault: Fault, where: str = "", shown: object = "") -> None:
        super().__init__(fault, where, shown)
        self.fault = fault
        self.where = where
        said = " ".join(str(shown).split()).encode("utf-8", "replace").decode()
        self.shown = said if len(said) <= LONGEST_SHOWN else f"{said[: LONGEST_SHOWN - 1]}…"

    def sentence(self, language: Language) -> str:
        """Return one sentence: where, what is wrong there, and what would fit."""
        return SAID[language][self.fault].format(where=self.where, shown=self.shown)

    def __str__(self) -> str:
        """Return the sentence in English."""
        return self.sentence(Language.EN)


def read_talk_file(content: bytes) -> TalkFile:
    """Return the talk of a file. Raises `TalkFileError` for anything that is not one."""
    whole = _object(_parsed(content), "", Fault.NO_OBJECT)
    if whole.get("format") != FORMAT:
        raise TalkFileError(Fault.NO_FORMAT, "format", whole.get("format", ""))
    if whole.get("version") != VERSION or isinstance(whole.get("version"), bool):
        raise TalkFileError(Fault.OTHER_VERSION, "version", whole.get("version", ""))
    _whole_of(whole, ("format", "version", *_PARTS), "")
    read = {name: reader(whole[name], name) for name, reader in _PARTS.items()}
    talk = TalkFile(**read)
    _one_of_each([each.id for each in talk.problems], "problems")
    _one_of_each([each.id for each in talk.children], "children")
    _check_events(talk)
    return talk


def _parsed(content: bytes) -> Any:
    if len(content) > LARGEST_TALK_FILE:
        raise TalkFileError(Fault.TOO_LARGE)
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise TalkFileError(Fault.NO_TEXT) from None
    try:
        return json.loads(text, object_pairs_hook=_once, parse_float=_no, parse_constant=_no)
    except json.JSONDecodeError as error:
        raise TalkFileError(Fault.NO_JSON, str(error.lineno)) from None
    except TalkFileError:
        raise
    except (ValueError, RecursionError):
        raise TalkFileError(Fault.NO_JSON, "1") from None


def _once(pairs: Sequence[tuple[str, Any]]) -> dict[str, Any]:
    read = dict(pairs)
    if len(read) != len(pairs):
        names = [name for name, _ in pairs]
        raise TalkFileError(Fault.TWICE, next(name for name in names if names.count(name) > 1))
    return read


def _no(shown: str) -> NoReturn:
    raise TalkFileError(Fault.NO_WHOLE, "", shown)


def _object(given: Any, where: str, fault: Fault = Fault.NO_PART) -> dict[str, Any]:
    if not isinstance(given, dict):
        raise TalkFileError(fault, where)
    return given


def _whole_of(given: Mapping[str, Any], names: Sequence[str], where: str) -> None:
    """Refuse an object that has other parts than these."""
    for name in names:
        if name not in given:
            raise TalkFileError(Fault.MISSING, f"{where}.{name}" if where else name)
    for name in given:
        if name not in names:
            raise TalkFileError(Fault.STRANGE, where or FORMAT, name)


def _text(given: Any, where: str, most: int = LONGEST_LINE) -> str:
    if not isinstance(given, str) or len(given) > most:
        raise TalkFileError(Fault.NO_LINE, where, most)
    if any(category(letter) in ("Cc", "Cs") for letter in given):
        raise TalkFileError(Fault.NO_LINE, where, most)
    return given


def _id(given: Any, where: str) -> str:
    read = _text(given, where, LONGEST_ID)
    if not read:
        raise TalkFileError(Fault.NO_LINE, where, LONGEST_ID)
    return read


def _name(given: Any, where: str) -> str:
    return _text(given, where, LONGEST_NAME)


def _whole(within: range) -> Callable[[Any, str], int]:
    def read(given: Any, where: str) -> int:
        if type(given) is not int or given not in within:
            shown = f"{within.start} … {within.stop - 1}"
            raise TalkFileError(Fault.NO_NUMBER, where, shown)
        return given

    return read


def _or_none(reader: Callable[[Any, str], _Read]) -> Callable[[Any, str], _Read | None]:
    return lambda given, where: None if given is None else reader(given, where)


def _one_of(*accepted: str) -> Callable[[Any, str], str]:
    def read(given: Any, where: str) -> str:
        if not isinstance(given, str) or given not in accepted:
            raise TalkFileError(Fault.NO_CHOICE, where, ", ".join(accepted))
        return given

    return read


def _list(
    reader: Callable[[Any, str], _Read], most: int
) -> Callable[[Any, str], tuple[_Read, ...]]:
    def read(given: Any, where: str) -> tuple[_Read, ...]:
        if not isinstance(given, list) or len(given) > most:
            raise TalkFileError(Fault.NO_LIST, where, most)
        return tuple(reader(each, f"{where} {place}") for place, each in enumerate(given, start=1))

    return read


def _date(given: Any, where: str) -> date:
    try:
        read = date.fromisoformat(_text(given, where, 10))
    except ValueError:
        raise TalkFileError(Fault.NO_DATE, where) from None
    if read.isoformat() != given:
        raise TalkFileError(Fault.NO_DATE, where)
    return read


def _signal(given: Any, where: str) -> SignalInFile:
    told = _object(given, where)
    _whole_of(told, ("word", "icon"), where)
    return SignalInFile(_text(told["word"], where), _or_none(_text)(told["icon"], where))


def _board(given: Any, where: str) -> BoardInFile:
    told = _object(given, where)
    _whole_of(told, tuple(_BOARD), where)
    return BoardInFile(
        **{name: read(told[name], f"{where}.{name}") for name, read in _BOARD.items()}
    )


def _rest(given: Any, where: str) -> Rest:
    return Rest(_one_of(*Rest)(given, where))


def _problem(given: Any, where: str) -> PlannedProblem:
    told = _object(given, where)
    _whole_of(told, ("id", "text", "why"), where)
    text = _text(told["text"], where)
    try:
        parse(text)
    except Unreadable as error:
        raise TalkFileError(Fault.NO_PROBLEM, where, error) from None
    return PlannedProblem(_id(told["id"], where), text, _text(told["why"], where))


def _child(given: Any, where: str) -> ChildInFile:
    told = _object(given, where)
    _whole_of(told, ("id", "name"), where)
    return ChildInFile(_id(told["id"], where), _name(told["name"], where))


def _event(given: Any, where: str) -> Record:
    told = _object(given, where)
    for name in ("at", "client", "sequence"):
        if name not in told:
            raise TalkFileError(Fault.MISSING, f"{where}.{name}")
    at = _whole(range(LATEST))(told["at"], f"{where}.at")
    sequence = _whole(range(HIGHEST + 1))(told["sequence"], f"{where}.sequence")
    client = _id(told["client"], f"{where}.client")
    rest = {name: value for name, value in told.items() if name not in ("at", "client")}
    try:
        body = body_from_json(rest)
    except BadEventError as error:
        raise TalkFileError(Fault.NO_EVENT, where, error) from None
    return Record(0, client, sequence, body, at)


def _events(given: Any, where: str) -> tuple[Record, ...]:
    read = _list(_event, MOST_EVENTS)(given, where)
    return tuple(
        Record(place, each.client, each.sequence, each.body, each.at)
        for place, each in enumerate(read, start=1)
    )


_BOARD: dict[str, Callable[[Any, str], Any]] = {
    "signals": _list(_signal, MOST_SIGNALS),
    "norms": _list(_text, MOST_LINES),
    "starters": _list(_text, MOST_LINES),
    "rest": _rest,
    "image_seconds": _whole(SECONDS),
}
_PARTS: dict[str, Callable[[Any, str], Any]] = {
    "title": _text,
    "language": _one_of(*Language),
    "board_language": _one_of(*Language),
    "grade": _or_none(_whole(range(len(GRADES)))),
    "day": _or_none(_date),
    "board": _board,
    "problems": _list(_problem, MOST_PROBLEMS),
    "questions": _list(_text, MOST_LINES),
    "children": _list(_child, MOST_CHILDREN),
    "events": _events,
}


def _one_of_each(ids: Sequence[str], where: str) -> None:
    if len(set(ids)) != len(ids):
        raise TalkFileError(Fault.TWICE, f"{where}: {max(ids, key=ids.count)}")


def _check_events(talk: TalkFile) -> None:
    """Refuse events without a beginning, one that is there twice, or a child not on the list."""
    if talk.events and not isinstance(talk.events[0].body, TalkOpened):
        raise TalkFileError(Fault.NO_OPENING, "events 1")
    for place, record in enumerate(talk.events, start=1):
        if isinstance(record.body, TalkOpened):
            _check_opening(record.body, place)
    sent = [f"{each.client} {each.sequence}" for each in talk.events]
    _one_of_each(sent, "events")
    known = {each.id for each in talk.children}
    for child in children_in(talk.events):
        if child not in known:
            raise TalkFileError(Fault.NO_CHILD, "children", child)


def _check_opening(opened: TalkOpened, place: int) -> None:
    """Refuse a second opening, and one in a language that no board speaks."""
    where = f"events {place}"
    if place > 1:
        raise TalkFileError(Fault.TWICE, f"{where}: talk-opened")
    for language in (opened.language, opened.board_language):
        _one_of(*Language)(language, where)
    _whole(SECONDS)(opened.image_seconds, f"{where}.image_seconds")
