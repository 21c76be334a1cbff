"""What was asked, as a JSON object or as arguments, read with one clear sentence for bad input."""

from collections.abc import Mapping
from typing import TypeVar

from waysaid.drawing import Picture
from waysaid.number import (
    Blank,
    Exact,
    Language,
    Operation,
    Problem,
    Rest,
    Unreadable,
    exact,
    parse,
    parse_expression,
)
from waysaid.strings import Curriculum, Topic
from waysaid.ways import Family

MOST_PROBLEMS = 20
"""How many problems may be linked at once: our choice, several times a string."""

_LARGEST = 10**12
"""The largest number of a JSON line that is looked at: our choice, to bound the work."""

Given = Mapping[str, object]
_Kind = TypeVar("_Kind", Language, Family, Picture, Rest, Curriculum, Topic)


class BadInputError(ValueError):
    """Raised with the one sentence that says what was given, where, and what is accepted."""


def problem_in(given: Given) -> Problem:
    """Return the problem of `problem`. Raises `BadInputError`."""
    try:
        return parse(_text(given, "problem"))
    except Unreadable as error:
        raise BadInputError(error.sentence(language_in(given))) from None


def problems_in(given: Given) -> list[Problem]:
    """Return the problems of `problems`. Raises `BadInputError`."""
    listed = given.get("problems")
    if not isinstance(listed, list) or not 2 <= len(listed) <= MOST_PROBLEMS:
        raise BadInputError(f"from 2 to {MOST_PROBLEMS} problems would fit.")
    return [problem_in({**given, "problem": one}) for one in listed]


def number_in(given: Given, name: str) -> Exact:
    """Return the number of that name. Raises `BadInputError`."""
    said = _text(given, name)
    try:
        read = parse_expression(said)
    except Unreadable as error:
        raise BadInputError(error.sentence(language_in(given))) from None
    if isinstance(read, (Operation, Blank)):
        raise BadInputError(f"Cannot read ‘{said}’: a number such as 26 would fit here.")
    return exact(read)


def whole_in(given: Given, name: str, usual: int | None) -> int:
    """Return the whole number of that name, `usual` where there is none. Raises `BadInputError`."""
    said = given.get(name, usual)
    try:
        return int(_text({name: said}, name))
    except ValueError:
        raise BadInputError(f"“{name}” is {said!r}; a whole number would fit.") from None


def words_in(given: Given, name: str, wanted: str = "what a child said") -> str:
    """Return the words of that name as they are. Raises `BadInputError`, which says the wanted."""
    value = given.get(name)
    if isinstance(value, str):
        return value
    raise BadInputError(f"“{name}” is missing or no text; {wanted} would fit.")


def kind_of(kinds: type[_Kind], value: object, name: str) -> _Kind:
    """Return the one of the kinds that the value is the slug of. Raises `BadInputError`."""
    try:
        return kinds(str(value))
    except ValueError:
        known = ", ".join(kinds)
        raise BadInputError(f"‘{value}’ is not a {name}; these are: {known}.") from None


def language_in(given: Given) -> Language:
    """Return the language of `lang`, English where there is none. Raises `BadInputError`."""
    return kind_of(Language, given.get("lang", Language.EN), "language")


def rest_in(given: Given) -> Rest:
    """Return the `rest`: what to do with what a division leaves. Raises `BadInputError`."""
    return kind_of(Rest, given.get("rest", Rest.LEFT_OVER), "way to say a remainder")


def _text(given: Given, name: str) -> str:
    value = given.get(name)
    if isinstance(value, str):
        return value
    if isinstance(value, int) and not isinstance(value, bool) and abs(value) <= _LARGEST:
        return str(value)
    raise BadInputError(f"“{name}” is missing or no text; text such as “37 + 25” would fit.")
