"""A file of what was handed over, read with care: what is not known is thrown away unread."""

import json
from datetime import date
from typing import Any

from django.utils.translation import gettext as _

from waysaid.number import Unreadable, parse
from waysaid.site.handing import FORM
from waysaid.site.names import MOST_NAMES, clean
from waysaid.ways import Family

LARGEST_BYTES = 2_000_000
"""Bytes of a file: sixty children with some hundred ways each (our choice)."""
MOST_ROWS = 400
"""Ways or families of one child, and strings (our choice)."""
LONGEST_WORDS = 2000
MOST_PROBLEMS = 12
FAMILIES = {each.value for each in Family}


class BadHandedError(ValueError):
    """Raised with one sentence for a file that is not one of ours."""


def read_handed(content: bytes) -> dict[str, Any]:
    """Return what a file holds, every part checked. Raises `BadHandedError`."""
    if len(content) > LARGEST_BYTES:
        raise BadHandedError(_("This file is larger than 2 MB; a file handed over is smaller."))
    try:
        given = json.loads(content.decode("utf-8-sig"))
    except (ValueError, RecursionError):
        given = None
    if not isinstance(given, dict) or given.get("form") != FORM:
        raise BadHandedError(
            _("This is not a file that Waysaid wrote to hand a class over; choose another.")
        )
    read: dict[str, Any] = {"form": FORM}
    children = [_child(row) for row in _rows(given, "children", MOST_NAMES)]
    strings = [_string(row) for row in _rows(given, "strings", MOST_ROWS)]
    named = [row for row in children if row["name"]]
    read |= {"children": named} if named else {}
    return read | ({"strings": strings} if strings else {})


def _rows(given: dict[str, Any], part: str, most: int) -> list[dict[str, Any]]:
    rows = given.get(part, [])
    if not isinstance(rows, list) or len(rows) > most:
        raise BadHandedError(
            _("‘%(part)s’ of this file takes a list of at most %(most)s.")
            % {"part": part, "most": most}
        )
    return [row for row in rows if isinstance(row, dict)]


def _child(row: dict[str, Any]) -> dict[str, Any]:
    ways, families = _rows(row, "ways", MOST_ROWS), _rows(row, "families", MOST_ROWS)
    read: dict[str, Any] = {"name": clean(_text(row, "name"))}
    if ways:
        read["ways"] = [_way(each) for each in ways]
    known = [each for each in families if each.get("family") in FAMILIES]
    if known:
        read["families"] = [
            {"family": each["family"], "first": _day(each, "first"), "latest": _day(each, "latest")}
            for each in known
        ]
    return read


def _way(row: dict[str, Any]) -> dict[str, Any]:
    steps = row.get("steps")
    family = row.get("family")
    return {
        "day": _day(row, "day"),
        "problem": _text(row, "problem"),
        "words": _text(row, "words"),
        "steps": [each[:200] for each in steps[:40] if isinstance(each, str)]
        if isinstance(steps, list)
        else [],
        "answer": _text(row, "answer"),
        "family": family if family in FAMILIES else "",
    }


def _string(row: dict[str, Any]) -> dict[str, Any]:
    problems = row.get("problems")
    texts = problems if isinstance(problems, list) else []
    read = [each for each in texts[:MOST_PROBLEMS] if isinstance(each, str) and _is_problem(each)]
    return {"day": _day(row, "day"), "problems": read}


def _is_problem(given: str) -> bool:
    try:
        parse(given)
    except Unreadable:
        return False
    return True


def _text(row: dict[str, Any], part: str) -> str:
    given = row.get(part)
    return given[:LONGEST_WORDS].replace("\0", "") if isinstance(given, str) else ""


def _day(row: dict[str, Any], part: str) -> str:
    try:
        return date.fromisoformat(_text(row, part)).isoformat()
    except ValueError:
        return ""
