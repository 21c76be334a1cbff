"""`waysaid bank`: the years of every grade, each of their statements worked out again, as files."""

import json
from collections.abc import Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from multiprocessing import get_context
from pathlib import Path

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, kind_of, whole_in, words_in
from waysaid.cli.year import write_in, year_text
from waysaid.number import Language
from waysaid.strings import Curriculum, faults, lay_out_year, numbered_days

SHARES = ((0, 1, 2, 3), (4, 5, 6))
"""The grades that each core works, in order: what one leaves the next takes up again."""


def answer_bank(given: Given, shares: Sequence[Sequence[int]] | None = None) -> Answer:
    """Lay out a year of 180 days for each grade of `shares` and write them into the folder `out`.

    All grades where no `shares` are given. `curriculum` is ccss and `seed` 1 where they are not
    given. Raises `BadInputError`, also where a statement of a year does not hold.
    """
    shares = SHARES if shares is None else shares
    folder = Path(words_in(given, "out", "a folder to write into"))
    curriculum = kind_of(Curriculum, given.get("curriculum", Curriculum.CCSS), "curriculum")
    seed = whole_in(given, "seed", 1)
    with ProcessPoolExecutor(len(shares), mp_context=get_context("spawn")) as pool:
        worked = list(pool.map(partial(_years, curriculum, seed), shares))
    made = [one for share in worked for one in share]
    wrong = [said for _, faulty, _ in made for said in faulty]
    if wrong:
        raise BadInputError(f"the bank is not written, since a statement is false: {wrong[0]}")
    grades = [grade for share in shares for grade in share]
    files = [f"grade-{grade}.json" for grade in grades]
    for name, (said, _, _) in zip(files, made, strict=True):
        write_in(folder, name, said)
    talks = sum(many for _, _, many in made)
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


_Made = tuple[str, list[str], int]


def _years(curriculum: Curriculum, seed: int, grades: Sequence[int]) -> list[_Made]:
    return [_year(curriculum, seed, grade) for grade in grades]


def _year(curriculum: Curriculum, seed: int, grade: int) -> _Made:
    """Return a year as text, what is wrong with it when it is read again, and how many talks."""
    said = year_text(lay_out_year(grade, numbered_days(), curriculum, seed))
    told = json.loads(said)
    return said, list(faults(told)), len(told["talks"])
