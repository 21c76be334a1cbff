"""`waysaid months`: the evidence of many classes in, family by grade by month out."""

from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from typing import Any, cast

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, language_in, words_in
from waysaid.number import Language
from waysaid.ways import Family, family_name


def answer_months(given: Given) -> Answer:
    """Return the rows of the tables in `folder`. Raises `BadInputError`."""
    from waysaid.paper import TableError, months

    folder = words_in(given, "folder", "a folder of tables")
    try:
        return {"rows": [asdict(row) for row in months(Path(folder))]}
    except TableError as error:
        raise BadInputError(error.sentence(language_in(given))) from None


def show_months(answer: Answer, language: Language) -> Iterator[str]:
    """Yield a line a row: the month, the grade, the family, how often, in how many talks."""
    for row in cast(list[dict[str, Any]], answer["rows"]):
        name = family_name(Family(row["family"]), language)
        said = _SAID[language].format(**{**row, "family": name})
        yield f"{row['year']}-{row['month']:02}  {said}"


_SAID = {
    Language.EN: "grade {grade}  {family}: {times} times, in {talks} talks",
    Language.ES: "grado {grade}  {family}: {times} veces, en {talks} charlas",
}
