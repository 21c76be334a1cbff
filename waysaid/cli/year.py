"""`waysaid year`: a grade in, the year's talks out as files."""

import json
from collections.abc import Iterator
from pathlib import Path

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, kind_of, whole_in, words_in
from waysaid.number import Language
from waysaid.strings import (
    Curriculum,
    Year,
    YearError,
    lay_out_year,
    numbered_days,
    year_told,
)

GRADES = range(7)


def answer_year(given: Given) -> Answer:
    """Lay out the year of `grade` and write it into the folder `out`.

    `curriculum` is ccss and `seed` 1 where they are not given. Raises `BadInputError`.
    """
    folder = words_in(given, "out", "a folder to write into")
    year = _year(given)
    name = f"grade-{year.grade}.json"
    _write(Path(folder), name, json.dumps(year_told(year), ensure_ascii=False, indent=1) + "\n")
    ideas = {talk.idea.slug for talk in year.talks}
    return {
        "grade": year.grade,
        "curriculum": year.curriculum.value,
        "seed": year.seed,
        "talks": len(year.talks),
        "ideas": len(ideas),
        "out": folder,
        "files": [name],
    }


def show_year(answer: Answer, language: Language) -> Iterator[str]:
    """Yield one line: what was written where."""
    yield _SAID[language].format(**answer)


_SAID = {
    Language.EN: "{talks} talks on {ideas} ideas are in {out}.",
    Language.ES: "{talks} charlas sobre {ideas} ideas están en {out}.",
}


def _year(given: Given) -> Year:
    grade = whole_in(given, "grade", None)
    if grade not in GRADES:
        raise BadInputError(f"“grade” is {grade}; a grade from 0 (kindergarten) to 6 would fit.")
    curriculum = kind_of(Curriculum, given.get("curriculum", Curriculum.CCSS), "curriculum")
    try:
        return lay_out_year(grade, numbered_days(), curriculum, whole_in(given, "seed", 1))
    except YearError as error:
        raise BadInputError(str(error)) from None


def _write(folder: Path, name: str, said: str) -> None:
    try:
        folder.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(said, encoding="utf-8")
    except OSError as error:
        raise BadInputError(
            f"cannot write ‘{folder / name}’ ({error.strerror}); a folder to write into would fit."
        ) from None
