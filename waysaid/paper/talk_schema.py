"""The JSON Schema (draft 2020-12) of a talk file, read off the records' own types."""

from collections.abc import Mapping
from dataclasses import MISSING, fields, is_dataclass
from enum import StrEnum
from types import NoneType, UnionType
from typing import Any, get_args, get_origin, get_type_hints

from waysaid.number import Equation, Language, Rest
from waysaid.paper.talk_file import (
    FORMAT,
    LATEST,
    MOST_CHILDREN,
    MOST_EVENTS,
    MOST_LINES,
    MOST_PROBLEMS,
    MOST_SIGNALS,
    VERSION,
)
from waysaid.paper.talk_file_in import HIGHEST, LONGEST_ID, LONGEST_LINE, LONGEST_NAME
from waysaid.paper.talk_file_in import SECONDS as LOOKS
from waysaid.strings import GRADES
from waysaid.talk import LARGEST_NUMBER, LONGEST_LIST, LONGEST_TEXT, Body, kind_named

Schema = dict[str, Any]


def talk_schema() -> Schema:
    """Return the schema that every talk file fits.

    It does not say all: problems and equations must be such that Waysaid reads them, and ids
    differ.
    """
    line = _text(LONGEST_LINE)
    board: Schema = {
        "signals": _list(_object({"word": line, "icon": _or_null(line)}), MOST_SIGNALS),
        "norms": _list(line, MOST_LINES),
        "starters": _list(line, MOST_LINES),
        "rest": {"enum": [each.value for each in Rest]},
        "image_seconds": _whole(LOOKS),
    }
    name = _text(LONGEST_ID, 1)
    parts: Schema = {
        "format": {"const": FORMAT},
        "version": {"const": VERSION},
        "title": line,
        "language": {"enum": [each.value for each in Language]},
        "board_language": {"enum": [each.value for each in Language]},
        "grade": _or_null(_whole(range(len(GRADES)))),
        "day": _or_null({"type": "string", "pattern": r"^\d{4}-\d{2}-\d{2}$"}),
        "board": _object(board),
        "problems": _list(_object({"id": name, "text": line, "why": line}), MOST_PROBLEMS),
        "questions": _list(line, MOST_LINES),
        "children": _list(_object({"id": name, "name": _text(LONGEST_NAME)}), MOST_CHILDREN),
        "events": _list({"oneOf": [_event(each) for each in get_args(Body)]}, MOST_EVENTS),
    }
    head = {"$schema": "https://json-schema.org/draft/2020-12/schema", "title": "A Waysaid talk"}
    return {**head, **_object(parts)}


def _event(record: type) -> Schema:
    head: Schema = {
        "at": _whole(range(LATEST)),
        "client": _text(LONGEST_ID, 1),
        "sequence": _whole(range(HIGHEST + 1)),
        "kind": {"const": kind_named(record)},
    }
    return _object({**head, **_parts(record)}, [*head, *_needed(record)])


def _parts(record: type) -> dict[str, Schema]:
    hints = get_type_hints(record)
    return {field.name: _of(hints[field.name]) for field in fields(record)}


def _needed(record: type) -> list[str]:
    return [field.name for field in fields(record) if field.default is MISSING]


def _of(hint: Any) -> Schema:
    origin = get_origin(hint)
    if origin is UnionType:
        return {"anyOf": [_of(each) for each in get_args(hint)]}
    if origin is tuple:
        return _list(_of(get_args(hint)[0]), LONGEST_LIST)
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return {"enum": [each.value for each in hint]}
    if hint is not Equation and isinstance(hint, type) and is_dataclass(hint):
        return _object(_parts(hint), _needed(hint))
    return _PLAIN[hint]


_PLAIN: Mapping[Any, Schema] = {
    str: {"type": "string", "maxLength": LONGEST_TEXT},
    int: {"type": "integer", "minimum": -LARGEST_NUMBER, "maximum": LARGEST_NUMBER},
    bool: {"type": "boolean"},
    NoneType: {"type": "null"},
    Equation: {"type": "string", "maxLength": LONGEST_TEXT},
}


def _object(parts: Mapping[str, Schema], needed: list[str] | None = None) -> Schema:
    return {
        "type": "object",
        "properties": dict(parts),
        "required": list(parts) if needed is None else needed,
        "additionalProperties": False,
    }


def _list(of: Schema, most: int) -> Schema:
    return {"type": "array", "items": of, "maxItems": most}


def _text(most: int, least: int = 0) -> Schema:
    return {"type": "string", "minLength": least, "maxLength": most}


def _whole(within: range) -> Schema:
    return {"type": "integer", "minimum": within.start, "maximum": within.stop - 1}


def _or_null(of: Schema) -> Schema:
    return {"anyOf": [of, {"type": "null"}]}
