"""`waysaid talk-file`: a string as a talk file, a talk file looked into, and the file's schema."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, language_in, whole_in, words_in
from waysaid.cli.slides import some_problems_in, write_bytes
from waysaid.number import Language, text
from waysaid.strings import GRADES

if TYPE_CHECKING:
    from waysaid.paper import TalkFile


def answer_talk_file(given: Given) -> Answer:
    """Return the schema, or what the file `check` holds, or write `problems` into the file `out`.

    Raises `BadInputError`.
    """
    # Only here: a question must not wait for what writes paper.
    from waysaid.paper import talk_schema

    if given.get("schema"):
        return {"schema": talk_schema()}
    if "check" in given:
        return _looked_into(words_in(given, "check", "a talk file"), language_in(given))
    if "problems" in given and "out" in given:
        return _written(given)
    raise BadInputError("talk-file needs problems and out, or --check, or --schema.")


def show_talk_file(answer: Answer, language: Language) -> Iterator[str]:
    """Yield the schema as JSON, or one line: what is in the file."""
    if "schema" in answer:
        yield json.dumps(answer["schema"], indent=1)
    else:
        yield _SAID[language].format(**answer)


_SAID = {
    Language.EN: "{file}: ‘{title}’, problems: {problems}, children: {children}, events: {events}.",
    Language.ES: "{file}: ‘{title}’, problemas: {problems}, niños: {children}, sucesos: {events}.",
}


def talk_file_named(name: str, language: Language) -> "TalkFile":
    """Return the talk of a file. Raises `BadInputError` for one that cannot be read."""
    from waysaid.paper import TalkFileError, read_talk_file

    try:
        return read_talk_file(Path(name).read_bytes())
    except OSError as error:
        raise BadInputError(
            f"cannot read ‘{name}’ ({error.strerror}); a talk file would fit here."
        ) from None
    except TalkFileError as error:
        raise BadInputError(f"{name}: {error.sentence(language)}") from None


def _looked_into(name: str, language: Language) -> Answer:
    talk = talk_file_named(name, language)
    return {
        "file": name,
        "title": talk.title,
        "problems": len(talk.problems),
        "children": len(talk.children),
        "events": len(talk.events),
    }


def _written(given: Given) -> Answer:
    from waysaid.paper import TalkFile, talk_file_bytes
    from waysaid.talk import PlannedProblem

    language = language_in(given)
    problems = tuple(
        PlannedProblem(f"p{place}", text(each))
        for place, each in enumerate(some_problems_in(given), start=1)
    )
    grade = whole_in(given, "grade", None) if "grade" in given else None
    if grade is not None and grade not in GRADES:
        raise BadInputError(f"“grade” is {grade}; a grade from 0 (kindergarten) to 6 would fit.")
    title = (
        " ".join(words_in(given, "title").split())[:120] if "title" in given else _TITLE[language]
    )
    talk = TalkFile(title, language.value, language.value, grade, problems=problems)
    out = words_in(given, "out", "a file to write")
    write_bytes(out, talk_file_bytes(talk))
    return {"file": out, "title": title, "problems": len(problems), "children": 0, "events": 0}


_TITLE = {Language.EN: "Number talk", Language.ES: "Charla numérica"}
