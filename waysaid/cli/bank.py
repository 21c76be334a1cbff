"""`waysaid bank`: the years of every grade, each of their statements worked out again, as files."""

import json
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from multiprocessing import get_context
from pathlib import Path

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, kind_of, whole_in, words_in
from waysaid.cli.year import GRADES, write_in, year_text
from waysaid.number import Language
from waysaid.strings import Curriculum, faults, lay_out_year, numbered_days

CORES = 2
"""How many grades are worked at once: our choice, as a small machine has."""
ORDER = (4, 5, 3, 2, 6, 1, 0)
"""Those that take longest first, so that no core waits."""


def answer_bank(given: Given) -> Answer:
    """Lay out a year of 180 days for each grade and write them into the folder `out`.

    `curriculum` is ccss and `seed` 1 where they are not given. Raises `BadInputError`, also where a
    statement of a year does not hold.
    """
    folder = Path(words_in(given, "out", "a folder to write into"))
    curriculum = kind_of(Curriculum, given.get("curriculum", Curriculum.CCSS), "curriculum")
    seed = whole_in(given, "seed", 1)
    with ProcessPoolExecutor(CORES, mp_context=get_context("spawn")) as pool:
        made = dict(zip(ORDER, pool.map(partial(_year, curriculum, seed), ORDER), strict=True))
    wrong = [said for grade in GRADES for said in made[grade][1]]
    if wrong:
        raise BadInputError(f"the bank is not written, since a statement is false: {wrong[0]}")
    files = [f"grade-{grade}.json" for grade in GRADES]
    for grade, name in zip(GRADES, files, strict=True):
        write_in(folder, name, made[grade][0])
    talks = sum(made[grade][2] for grade in GRADES)
    return {
        "curriculum": curriculum.value,
        "seed": seed,
        "talks": talks,
        "out": str(folder),
        "files": files,
    }


def show_bank(answer: Answer, language: Language) -> Iterator[str]:
    """Yield one line: what was written where."""
    yield _SAID[language].format(**answer)


_SAID = {
    Language.EN: "{talks} talks are in {out}, each of their statements checked.",
    Language.ES: "{talks} charlas están en {out}, y cada afirmación está comprobada.",
}


def _year(curriculum: Curriculum, seed: int, grade: int) -> tuple[str, list[str], int]:
    """Return a year as text, what is wrong with it when it is read again, and how many talks."""
    said = year_text(lay_out_year(grade, numbered_days(), curriculum, seed))
    told = json.loads(said)
    return said, list(faults(told)), len(told["talks"])
