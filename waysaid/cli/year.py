"""`waysaid year`: a grade in, the year's talks out as files."""

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import cast

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, kind_of, language_in, whole_in, words_in
from waysaid.number import Language
from waysaid.strings import (
    GRADES,
    Curriculum,
    SchoolDay,
    Year,
    YearError,
    lay_out_year,
    numbered_days,
    school_days,
    year_told,
)


def answer_year(given: Given) -> Answer:
    """Lay out the year of `grade` and write it into the folder `out`.

    Its days are those that `calendar`, an iCalendar file, leaves, from `first` to `last` where they
    are given; without any, 180 days without dates, and no calendar is written. `curriculum` is ccss
    and `seed` 1 where they are not given. Raises `BadInputError`.
    """
    # Only here: what writes paper is slow to load.
    from waysaid.paper import year_calendar

    folder = Path(words_in(given, "out", "a folder to write into"))
    year = _year(given)
    name, files = f"grade-{year.grade}", {}
    files[f"{name}.json"] = year_text(year)
    if any(talk.day.date for talk in year.talks):
        files[f"{name}.ics"] = year_calendar(year, language_in(given)).decode()
    for file, said in files.items():
        write_in(folder, file, said)
    ideas = {talk.idea.slug for talk in year.talks}
    return {
        "grade": year.grade,
        "curriculum": year.curriculum.value,
        "seed": year.seed,
        "talks": len(year.talks),
        "ideas": len(ideas),
        "out": str(folder),
        "files": list(files),
    }


def year_text(year: Year) -> str:
    """Return the file that a year is: a talk a line, so that two years are easily compared."""
    told = year_told(year)
    talks = cast("list[object]", told.pop("talks"))
    head = json.dumps(told)[:-1]
    rows = ",\n".join(json.dumps(talk, ensure_ascii=False) for talk in talks)
    return f'{head}, "talks": [\n{rows}\n]}}\n'


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
    days = _days(given)
    if not days:
        raise BadInputError("no school day is left; a last day behind the first would fit.")
    try:
        return lay_out_year(grade, days, curriculum, whole_in(given, "seed", 1))
    except YearError as error:
        raise BadInputError(str(error)) from None


def _days(given: Given) -> tuple[SchoolDay, ...]:
    first, last = _date(given, "first"), _date(given, "last")
    if "calendar" in given:
        return _days_of(words_in(given, "calendar", "an iCalendar file"), first, last, given)
    if first is None and last is None:
        return numbered_days()
    if first is None or last is None:
        raise BadInputError("“first” or “last” is given alone; both, or a calendar, would fit.")
    return school_days(first, last)


def _days_of(
    name: str, first: date | None, last: date | None, given: Given
) -> tuple[SchoolDay, ...]:
    from waysaid.paper import CalendarError, read_calendar

    try:
        read = read_calendar(Path(name).read_bytes(), first, last)
    except OSError as error:
        raise BadInputError(
            f"cannot read ‘{name}’ ({error.strerror}); an iCalendar file would fit."
        ) from None
    except CalendarError as error:
        raise BadInputError(f"{name}: {error.sentence(language_in(given))}") from None
    return school_days(read.first, read.last, read.off)


def _date(given: Given, name: str) -> date | None:
    if name not in given:
        return None
    said = words_in(given, name, "a date such as 2026-09-01")
    try:
        return date.fromisoformat(said)
    except ValueError:
        raise BadInputError(f"“{name}” is ‘{said}’; a date such as 2026-09-01 would fit.") from None


def write_in(folder: Path, name: str, said: str) -> None:
    """Write a file into a folder, which is made where there is none. Raises `BadInputError`."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(said, encoding="utf-8", newline="")
    except OSError as error:
        raise BadInputError(
            f"cannot write ‘{folder / name}’ ({error.strerror}); a folder to write into would fit."
        ) from None
