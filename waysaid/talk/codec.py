"""Events to JSON and back, driven by the records' own types.

Reading refuses whatever does not fit with one sentence that names the kind, the field and what
would be accepted. The limits keep one event small: our choice, several times what a talk needs.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import MISSING, fields, is_dataclass
from enum import StrEnum
from functools import cache
from types import NoneType, UnionType
from typing import Any, get_args, get_origin, get_type_hints

from waysaid.number import Equation, Unreadable, parse, parse_equation, text
from waysaid.talk.event import Body, ProblemAdded, TalkOpened

LONGEST_TEXT = 2000
"""Characters in one text of an event."""
LONGEST_LIST = 2000
"""Entries in one list of an event."""
LARGEST_NUMBER = 10**9
"""The largest whole number in an event, either side of zero."""


class BadEventError(ValueError):
    """Raised for JSON that is no event; its text is one sentence for a person."""


def kind_of(body: Body) -> str:
    """Return the kind as files name it: `way-shared`."""
    return kind_named(type(body))


def kind_named(record: type) -> str:
    """Return the kind that a record's class stands for: `way-shared` for `WayShared`."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "-", record.__name__).lower()


def body_json(body: Body) -> dict[str, Any]:
    """Return the event as plain JSON values, its kind first."""
    return {"kind": kind_of(body), **_plain_fields(body)}


def body_from_json(given: object) -> Body:
    """Read an event. Raises `BadEventError`, one sentence, for anything that is not one."""
    if not isinstance(given, Mapping):
        raise BadEventError("An event is a JSON object with a kind.")
    kind = given.get("kind")
    record = _KINDS.get(kind) if isinstance(kind, str) else None
    if record is None:
        listed = ", ".join(_KINDS)
        raise BadEventError(f"‘{_quoted(kind)}’ is no kind of event; one of {listed}.")
    rest = {key: value for key, value in given.items() if key not in ("kind", "sequence")}
    body: Body = _record(record, rest, str(kind))
    _check_problems(body, str(kind))
    return body


_KINDS: dict[str, type] = {kind_named(record): record for record in get_args(Body)}
_hints = cache(get_type_hints)


def _check_problems(body: Body, kind: str) -> None:
    """Refuse a problem that cannot be read, before it is kept."""
    texts = [body.text] if isinstance(body, ProblemAdded) else []
    if isinstance(body, TalkOpened):
        texts = [item.text for item in body.problems]
    for given in texts:
        try:
            parse(given)
        except Unreadable as error:
            raise BadEventError(f"{kind}: {error}") from None


def _plain_fields(record: Any) -> dict[str, Any]:
    return {field.name: _plain(getattr(record, field.name)) for field in fields(record)}


def _plain(value: Any) -> Any:
    match value:
        case Equation():
            return text(value)
        case StrEnum():
            return value.value
        case tuple():
            return [_plain(each) for each in value]
        case _ if is_dataclass(value):
            return _plain_fields(value)
    return value


def _record(record: type, given: Mapping[str, Any], where: str) -> Any:
    hints = _hints(record)
    known = {field.name: field for field in fields(record)}
    strange = [key for key in given if key not in known]
    if strange:
        what = _quoted(strange[0])
        raise BadEventError(f"{where}: ‘{what}’ is no part of it; {_listed(known)}.")
    values = {}
    for name, field in known.items():
        if name in given:
            values[name] = _value(hints[name], given[name], f"{where}, {name}")
        elif field.default is MISSING:
            raise BadEventError(f"{where}: ‘{name}’ is missing; {_listed(known)}.")
    return record(**values)


def _quoted(given: object) -> str:
    """Return what was sent as it is quoted in a sentence: on one line, and no more than needed."""
    return " ".join(str(given).split())[:40]


def _listed(known: Mapping[str, Any]) -> str:
    return f"it has {', '.join(known)}" if known else "it has no parts"


def _value(hint: Any, given: Any, where: str) -> Any:
    origin = get_origin(hint)
    if origin is UnionType:
        return _either(get_args(hint), given, where)
    if origin is tuple:
        return _list(get_args(hint)[0], given, where)
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return _choice(hint, given, where)
    if is_dataclass(hint) and isinstance(hint, type) and hint is not Equation:
        if not isinstance(given, Mapping):
            raise BadEventError(f"{where}: takes an object.")
        return _record(hint, given, where)
    return _READERS[hint](given, where)


def _either(hints: tuple[Any, ...], given: Any, where: str) -> Any:
    if given is None and NoneType in hints:
        return None
    for hint in hints:
        if isinstance(hint, type) and type(given) is hint:
            return _value(hint, given, where)
    return _value(hints[0], given, where)


def _list(hint: Any, given: Any, where: str) -> tuple[Any, ...]:
    if not isinstance(given, list) or len(given) > LONGEST_LIST:
        raise BadEventError(f"{where}: takes a list of at most {LONGEST_LIST}.")
    return tuple(_value(hint, each, where) for each in given)


def _choice(hint: type[StrEnum], given: Any, where: str) -> StrEnum:
    if not isinstance(given, str) or given not in hint._value2member_map_:
        raise BadEventError(f"{where}: takes one of {', '.join(hint)}.")
    return hint(given)


def _string(given: Any, where: str) -> str:
    if not isinstance(given, str) or len(given) > LONGEST_TEXT:
        raise BadEventError(f"{where}: takes a text of at most {LONGEST_TEXT} characters.")
    if any(0xD800 <= ord(letter) <= 0xDFFF or letter == "\0" for letter in given):
        raise BadEventError(f"{where}: takes a text of whole characters.")
    return given


def _whole(given: Any, where: str) -> int:
    if type(given) is not int or abs(given) > LARGEST_NUMBER:
        raise BadEventError(f"{where}: takes a whole number of at most nine digits.")
    return given


def _yes_or_no(given: Any, where: str) -> bool:
    if type(given) is not bool:
        raise BadEventError(f"{where}: takes true or false.")
    return given


def _equation(given: Any, where: str) -> Equation:
    try:
        return parse_equation(_string(given, where))
    except Unreadable as error:
        raise BadEventError(f"{where}: {error}") from None


_READERS: dict[Any, Callable[[Any, str], Any]] = {
    str: _string,
    int: _whole,
    bool: _yes_or_no,
    Equation: _equation,
}
