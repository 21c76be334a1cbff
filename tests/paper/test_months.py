"""Family by grade by month: DuckDB's answer is what counting by hand gives."""

from collections import Counter
from datetime import date, timedelta
from random import Random

import pytest

from waysaid.growth import USED, How, Shown
from waysaid.number import Language
from waysaid.paper import TableError, months, write_evidence_parquet
from waysaid.ways import Family

FIRST = date(2026, 9, 1)


def pieces(dice, many):
    for order in range(many):
        day = FIRST + timedelta(days=dice.randrange(200))
        family = dice.choice((None, Family.BRIDGE, Family.ADJUST, Family.COLUMN))
        talk = f"t{dice.randrange(30)}"
        yield Shown(talk, day, order, str(dice.randrange(9)), dice.choice(tuple(How)), "", family)


@pytest.mark.parametrize("seed", range(4))
def test_each_row_is_found_again_by_counting(tmp_path, seed):
    dice = Random(seed)
    counted, talks = Counter(), {}
    for grade in (0, 2, 6):
        folder = tmp_path / f"grade={grade}"
        folder.mkdir()
        for name in ("a", "b"):
            told = list(pieces(dice, 300))
            write_evidence_parquet(told, folder / f"{name}.parquet")
            for piece in told:
                if piece.family is not None and piece.how in USED:
                    key = (piece.family, grade, piece.day.year, piece.day.month)
                    counted[key] += 1
                    talks.setdefault(key, set()).add(piece.talk)
    found = {(r.family, r.grade, r.year, r.month): (r.times, r.talks) for r in months(tmp_path)}
    assert found
    assert found == {key: (times, len(talks[key])) for key, times in counted.items() if times >= 10}


def test_so_few_that_they_could_be_one_child_s_are_left_out(tmp_path):
    (tmp_path / "grade=2").mkdir()
    piece = Shown("t", FIRST, 0, "1", How.SAID, "37 + 25", Family.BRIDGE)
    write_evidence_parquet([piece] * 9, tmp_path / "grade=2" / "a.parquet")
    assert months(tmp_path) == ()


@pytest.mark.parametrize("language", Language)
def test_a_folder_that_cannot_be_used_is_told_in_one_sentence(tmp_path, language):
    with pytest.raises(TableError) as error:
        months(tmp_path)
    assert error.value.sentence(language).count(". ") == 0
    (tmp_path / "grade=2").mkdir()
    (tmp_path / "grade=2" / "a.parquet").write_bytes(b"PAR1 and nothing")
    with pytest.raises(TableError) as error:
        months(tmp_path)
    assert "Parquet" in error.value.sentence(language)
