"""`waysaid slides`: a string in, a file of slides out."""

from collections.abc import Iterator
from pathlib import Path

from waysaid.cli.answers import Answer
from waysaid.cli.given import (
    BadInputError,
    Given,
    language_in,
    problem_in,
    rest_in,
    words_in,
)
from waysaid.number import Language, Problem, text

MOST_PROBLEMS = 12
"""Problems in one string: what a plan has at most."""


def answer_slides(given: Given) -> Answer:
    """Write the slides of `problems` into the file `out`, in the language of `lang`.

    Raises `BadInputError`.
    """
    # Only here: what writes slides is slow to load.
    from waysaid.paper import Wordings, slides_pptx, string_slides

    out, language = words_in(given, "out", "a file to write"), language_in(given)
    problems = some_problems_in(given)
    wordings = Wordings(language, language, rest=rest_in(given))
    write_bytes(out, slides_pptx(string_slides(problems, wordings)))
    return {"problems": [text(each) for each in problems], "out": out}


def show_slides(answer: Answer, language: Language) -> Iterator[str]:
    """Yield one line: where the slides are."""
    yield _SAID[language].format(**answer)


_SAID = {Language.EN: "The slides are in {out}.", Language.ES: "Las diapositivas están en {out}."}


def some_problems_in(given: Given) -> list[Problem]:
    """Return the problems of `problems`, as many as a plan may have. Raises `BadInputError`."""
    listed = given.get("problems")
    if not isinstance(listed, list) or not 1 <= len(listed) <= MOST_PROBLEMS:
        raise BadInputError(f"from 1 to {MOST_PROBLEMS} problems would fit.")
    return [problem_in({**given, "problem": one}) for one in listed]


def write_bytes(name: str, content: bytes) -> None:
    """Write a file. Raises `BadInputError`."""
    try:
        Path(name).write_bytes(content)
    except OSError as error:
        raise BadInputError(
            f"cannot write ‘{name}’ ({error.strerror}); a file to write would fit here."
        ) from None
