"""`waysaid compose`: a wish as arguments or as JSON, answered with the best string for it."""

from collections.abc import Iterator
from typing import cast

from waysaid.cli.answers import Answer, link_rows
from waysaid.cli.given import BadInputError, Given, kind_of, language_in, problem_in, whole_in
from waysaid.number import Language, Print, Problem, parse, text
from waysaid.strings import (
    HOMES,
    SHORTEST,
    Composed,
    Topic,
    Wish,
    WishError,
    alternatives,
    composable,
)
from waysaid.ways import Family


def answer_compose(given: Given) -> Answer:
    """Return the best string for a `grade` and a `focus`, and why it is as it is.

    `length` is 5 and `seed` 1 where they are not given; a `topic` may stand in for the focus.
    `with` lists problems that must be in it, `lately` those that must not, `start` those it begins
    with. `within` is the largest number, `minutes` the time; `number_line` and `surprise` are true
    or false. `alternatives` is how many strings, each of another idea. Raises `BadInputError`.
    """
    language = language_in(given)
    topic = kind_of(Topic, given["topic"], "topic") if "topic" in given else None
    grade = whole_in(given, "grade", None)
    wish = Wish(
        grade,
        _focus(given, grade, topic),
        _whole_or_none(given, "length"),
        tuple(_problems(given, "with")),
        frozenset(_problems(given, "lately")),
        language,
        whole_in(given, "seed", 1),
        topic,
        tuple(enumerate(_problems(given, "start"))),
        _whole_or_none(given, "within"),
        _whole_or_none(given, "minutes"),
        _yes(given, "number_line"),
        _yes(given, "surprise"),
    )
    try:
        best, *others = alternatives(wish, whole_in(given, "alternatives", 1))
    except WishError as error:
        raise BadInputError(str(error)) from None
    answer = _row(best, language)
    return {**answer, "others": [_row(one, language) for one in others]} if others else answer


def _row(composed: Composed, language: Language) -> Answer:
    return {
        "problems": [text(problem) for problem in composed.problems],
        "why": list(composed.why),
        "links": link_rows(composed.links, language),
        "best_possible": composed.best_possible,
        "topic": composed.topic,
        "wanting": composed.wanting,
        "rows": {row.value: wanting for row, wanting in composed.rows if wanting},
        "candidates": composed.candidates,
        "nodes": composed.nodes,
    }


def _focus(given: Given, grade: int, topic: Topic | None) -> Family:
    """Return the family in focus: the first that is at home in the topic where none is said."""
    if topic is None or "focus" in given:
        return kind_of(Family, given.get("focus"), "family")
    homes = HOMES[topic]
    return next((one for one in homes if composable(grade, topic, one, SHORTEST)), homes[0])


def show_compose(answer: Answer, _: Language) -> Iterator[str]:
    """Yield the lines: the problems, numbered from 1, each with its reason; so for each string."""
    for at, row in enumerate((answer, *cast("list[Answer]", answer.get("others", [])))):
        if at:
            yield ""
        problems, why = cast("list[str]", row["problems"]), cast("list[str]", row["why"])
        shown = [text(parse(problem), Print.TRUE) for problem in problems]
        wide = max(map(len, shown))
        for number, (problem, reason) in enumerate(zip(shown, why, strict=True), start=1):
            yield f"{number:>3}  {problem:<{wide}}  {reason}"


def _whole_or_none(given: Given, name: str) -> int | None:
    return whole_in(given, name, None) if given.get(name) is not None else None


def _yes(given: Given, name: str) -> bool:
    """Return whether something is wished for. Raises `BadInputError`."""
    said = given.get(name, False)
    if not isinstance(said, bool):
        raise BadInputError(f"“{name}” is {said!r}; true or false would fit.")
    return said


def _problems(given: Given, name: str) -> Iterator[Problem]:
    """Yield the problems of a list. Raises `BadInputError`."""
    listed = given.get(name, [])
    if not isinstance(listed, list):
        raise BadInputError(f"“{name}” is no list; a list of problems would fit.")
    for one in listed:
        yield problem_in({**given, "problem": one})
