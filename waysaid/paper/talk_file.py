"""A talk as one open file: what was planned, who was there, and what happened, word for word.

The form is our own, JSON in UTF-8, and described in docs/reference/talk-file.md. Writing what was
read gives the same bytes, and reading what was written gives the same talk.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields, replace
from datetime import date
from typing import Any

from waysaid.number import Rest
from waysaid.talk import LOOK_SECONDS, Body, PlannedProblem, Record, body_json

FORMAT, VERSION = "waysaid-talk", 1
LARGEST_TALK_FILE = 5_000_000
"""Bytes of a file; this and the limits below are our choice, several times what a talk needs."""
MOST_EVENTS = 5_000
MOST_PROBLEMS = 60
MOST_CHILDREN = 120
MOST_LINES = 20
"""Questions, norms or beginnings of sentences."""
MOST_SIGNALS = 6
LATEST = 4_102_444_800_000
"""The first moment that no event may have: 1 January 2100, in milliseconds since 1970."""


@dataclass(frozen=True, slots=True)
class SignalInFile:
    """A signal of the class: its word and our icon's name, if it has one; no own pictures."""

    word: str
    icon: str | None = None


@dataclass(frozen=True, slots=True)
class BoardInFile:
    """What hangs round the board, and how the class says a remainder and sees a quick image."""

    signals: tuple[SignalInFile, ...] = ()
    norms: tuple[str, ...] = ()
    starters: tuple[str, ...] = ()
    rest: Rest = Rest.LEFT_OVER
    image_seconds: int = LOOK_SECONDS


@dataclass(frozen=True, slots=True)
class ChildInFile:
    """A child by the id that the file's events name her by; no name in a file without names."""

    id: str
    name: str = ""


@dataclass(frozen=True, slots=True)
class TalkFile:
    """A talk, or with no events a plan. Languages are `en` or `es`, the grade is from 0 to 6.

    `problems` are those of the whole string in order. A record's `order` is its place in the
    file, from 1.
    """

    title: str
    language: str = "en"
    board_language: str = "en"
    grade: int | None = None
    day: date | None = None
    board: BoardInFile = BoardInFile()
    problems: tuple[PlannedProblem, ...] = ()
    questions: tuple[str, ...] = ()
    children: tuple[ChildInFile, ...] = ()
    events: tuple[Record, ...] = ()


def talk_file_bytes(talk: TalkFile) -> bytes:
    """Return the file: a part a line, and a problem, a child or an event a line in its list."""
    board = talk.board
    parts: dict[str, Any] = {
        "format": FORMAT,
        "version": VERSION,
        "title": talk.title,
        "language": talk.language,
        "board_language": talk.board_language,
        "grade": talk.grade,
        "day": None if talk.day is None else talk.day.isoformat(),
        "board": {
            "signals": [{"word": each.word, "icon": each.icon} for each in board.signals],
            "norms": list(board.norms),
            "starters": list(board.starters),
            "rest": board.rest.value,
            "image_seconds": board.image_seconds,
        },
        "problems": [{"id": each.id, "text": each.text, "why": each.why} for each in talk.problems],
        "questions": list(talk.questions),
        "children": [{"id": each.id, "name": each.name} for each in talk.children],
        "events": [_event(each) for each in talk.events],
    }
    lines = ",\n".join(f" {_json(name)}: {_laid(value)}" for name, value in parts.items())
    return f"{{\n{lines}\n}}\n".encode()


def _event(record: Record) -> dict[str, Any]:
    head = {"at": record.at, "client": record.client, "sequence": record.sequence}
    return {**head, **body_json(record.body)}


def _laid(value: Any) -> str:
    if not isinstance(value, list) or not value:
        return _json(value)
    rows = ",\n".join(f"  {_json(each)}" for each in value)
    return f"[\n{rows}\n ]"


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)


def child_of(body: Body) -> str | None:
    """Return the id of the child that an event is about, or None."""
    child: str | None = getattr(body, "child", None)
    return child


def with_children(
    records: Sequence[Record], chosen: Mapping[str, str | None]
) -> tuple[Record, ...]:
    """Return the records with other ids for the children, None for one who stays nameless.

    A child who is not among the chosen is nameless too. What says only that a nameless child
    passed is left out; the rest keep their order among each other and are numbered from 1.
    """
    kept = []
    for record in records:
        child = child_of(record.body)
        new = chosen.get(child) if child is not None else None
        if child is None:
            kept.append(record)
        elif new is not None or not _needs_child(record.body):
            kept.append(replace(record, body=_of_child(record.body, new)))
    return tuple(replace(record, order=place) for place, record in enumerate(kept, start=1))


def _of_child(body: Any, child: str | None) -> Body:
    """Return the event with another child; only for one that has a child."""
    changed: Body = replace(body, child=child)
    return changed


def _needs_child(body: Body) -> bool:
    """Tell whether an event says nothing without its child."""
    return any(field.name == "child" and field.type is str for field in fields(body))


def children_in(records: Sequence[Record]) -> tuple[str, ...]:
    """Return the ids of the children that events are about, in the order first named."""
    named = (child_of(record.body) for record in records)
    return tuple(dict.fromkeys(child for child in named if child is not None))


def outside(
    records: Sequence[Record], names: Mapping[str, str]
) -> tuple[tuple[ChildInFile, ...], tuple[Record, ...]]:
    """Return children and records as a file has them: c1, c2 ... in the order first named.

    Whoever is not among the names is in the file without one.
    """
    ids = {child: f"c{place}" for place, child in enumerate(children_in(records), start=1)}
    listed = tuple(ChildInFile(new, names.get(old, "")) for old, new in ids.items())
    return listed, with_children(records, ids)
