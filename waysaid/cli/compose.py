"""`waysaid compose`: a wish as arguments or as JSON, answered with the best string for it."""

from collections.abc import Iterator
from typing import cast

from waysaid.cli.answers import Answer, link_rows
from waysaid.cli.given import BadInputError, Given, kind_of, language_in, problem_in, whole_in
from waysaid.number import Language, Print, parse, text
from waysaid.strings import Plain, Wish, WishError, compose, plain_of
from waysaid.ways import Family


def answer_compose(given: Given) -> Answer:
    """Return the best string for a `grade` and a `focus`, and why it is as it is.

    `length` is 5 and `seed` 1 where they are not given; `with` lists problems that must be in it,
    `lately` those that must not. Raises `BadInputError`.
    """
    language = language_in(given)
    wish = Wish(
        whole_in(given, "grade", None),
        kind_of(Family, given.get("focus"), "family"),
        whole_in(given, "length", 5),
        tuple(_plains(given, "with")),
        frozenset(_plains(given, "lately")),
        language,
        whole_in(given, "seed", 1),
    )
    try:
        composed = compose(wish)
    except WishError as error:
        raise BadInputError(str(error)) from None
    return {
        "problems": [text(problem) for problem in composed.problems],
        "why": list(composed.why),
        "links": link_rows(composed.links, language),
        "best_possible": composed.best_possible,
        "wanting": composed.wanting,
        "candidates": composed.candidates,
        "nodes": composed.nodes,
    }


def show_compose(answer: Answer, _: Language) -> Iterator[str]:
    """Yield the lines: the problems, numbered from 1, each with its reason."""
    problems, why = cast("list[str]", answer["problems"]), cast("list[str]", answer["why"])
    shown = [text(parse(problem), Print.TRUE) for problem in problems]
    wide = max(map(len, shown))
    for number, (problem, reason) in enumerate(zip(shown, why, strict=True), start=1):
        yield f"{number:>3}  {problem:<{wide}}  {reason}"


def _plains(given: Given, name: str) -> Iterator[Plain]:
    """Yield the problems of a list. Raises `BadInputError`."""
    listed = given.get(name, [])
    if not isinstance(listed, list):
        raise BadInputError(f"“{name}” is no list; a list of problems would fit.")
    for one in listed:
        plain = plain_of(problem_in({**given, "problem": one}))
        if plain is None:
            raise BadInputError(f"‘{one}’ cannot be composed with: such as 37 + 25 would fit.")
        yield plain
