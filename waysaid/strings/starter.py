"""Starter strings: talks of our own for grades K to 6, each with its reasons and questions.

The texts stand in `data/grade-N.json`, English and Spanish beside each other. Foreseen ways and
slips are not stored: they are worked out from the problems.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import resources

from waysaid.number import Language, Problem, Unreadable, parse
from waysaid.ways import Family

GRADES = tuple(range(7))
"""The grades there are talks for: 0 is kindergarten."""


@dataclass(frozen=True, slots=True)
class StarterText:
    """What a starter says in one language; `why` has one reason for each problem."""

    title: str
    purpose: str
    why: tuple[str, ...]
    questions: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Starter:
    """A string to start from; `focus` is the family that pays off in it."""

    slug: str
    grade: int
    focus: Family
    problems: tuple[Problem, ...]
    english: StarterText
    spanish: StarterText


class StarterError(ValueError):
    """Raised for starter data that cannot be used: says which file, which starter and what."""


@cache
def starters() -> tuple[Starter, ...]:
    """Return every starter by grade, in the order of its file. Raises `StarterError`."""
    return tuple(one for grade in GRADES for one in read_starters(f"grade-{grade}.json"))


def starter_text(starter: Starter, language: Language) -> StarterText:
    """Return what the starter says in one language."""
    match language:
        case Language.EN:
            return starter.english
        case Language.ES:
            return starter.spanish


def read_starters(name: str) -> tuple[Starter, ...]:
    """Read one file of the package's starter data. Raises `StarterError` for bad data."""
    content = resources.files("waysaid.strings").joinpath("data", name).read_text("utf-8")
    return starters_in(content, name)


def starters_in(content: str, name: str) -> tuple[Starter, ...]:
    """Read the starters of one JSON text; `name` is used in errors. Raises `StarterError`."""
    try:
        whole: object = json.loads(content)
    except json.JSONDecodeError as error:
        raise StarterError(f"{name} is not JSON: {error}") from None
    file = _mapping(whole, name)
    grade = file.get("grade")
    if not isinstance(grade, int) or grade not in GRADES:
        known = ", ".join(map(str, GRADES))
        raise StarterError(f"{name}: grade is {grade!r}; it takes one of {known}")
    found = _list(file.get("starters"), f"{name}: starters")
    return tuple(_starter(_mapping(one, name), grade, name) for one in found)


def _starter(row: Mapping[str, object], grade: int, name: str) -> Starter:
    slug = _words(row.get("slug"), f"{name}: slug")
    where = f"{name}: {slug}"
    rows = [_mapping(one, where) for one in _list(row.get("problems"), f"{where}: problems")]
    english, spanish = (_text(row, rows, code, where) for code in Language)
    return Starter(
        slug,
        grade,
        _family(_words(row.get("focus"), f"{where}: focus"), where),
        tuple(_problem(_words(one.get("text"), f"{where}: text"), where) for one in rows),
        english,
        spanish,
    )


def _text(
    row: Mapping[str, object], rows: Sequence[Mapping[str, object]], language: Language, where: str
) -> StarterText:
    def said(value: object, what: str) -> str:
        both = _mapping(value, f"{where}: {what}")
        return _words(both.get(language.value), f"{where}: {what} in {language.value}")

    return StarterText(
        said(row.get("title"), "title"),
        said(row.get("purpose"), "purpose"),
        tuple(said(one.get("why"), "why") for one in rows),
        tuple(said(one, "question") for one in _list(row.get("questions"), f"{where}: questions")),
    )


def _family(slug: str, where: str) -> Family:
    try:
        return Family(slug)
    except ValueError:
        raise StarterError(f"{where}: {slug!r} is no family of ways") from None


def _problem(given: str, where: str) -> Problem:
    try:
        return parse(given)
    except Unreadable as error:
        raise StarterError(f"{where}: {error}") from None


def _mapping(value: object, where: str) -> Mapping[str, object]:
    if not isinstance(value, dict):
        raise StarterError(f"{where}: an object with names is wanted, not {value!r}")
    return value


def _list(value: object, where: str) -> Sequence[object]:
    if not isinstance(value, list) or not value:
        raise StarterError(f"{where}: a list with something in it is wanted, not {value!r}")
    return value


def _words(value: object, where: str) -> str:
    if not isinstance(value, str) or not value.strip():
        raise StarterError(f"{where}: some text is wanted, not {value!r}")
    return value
