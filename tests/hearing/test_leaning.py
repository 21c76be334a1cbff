"""What a class is known to mean orders readings that the words leave equal, and no others."""

import pytest

from tests.hearing.said import WRITTEN, sentences
from waysaid.hearing import read
from waysaid.hearing.read import leant
from waysaid.hearing.spoken import Explained, Share
from waysaid.number import parse
from waysaid.ways import Family

pytestmark = pytest.mark.slow

LISTED = [one for path in WRITTEN for one in sentences(path) if not one.aside][::18]


def share(family: Family | None, sure: int) -> Share:
    return Share(Explained((), (), family, None, (), 0), sure)


FOUND = [share(Family.BRIDGE, 40), share(None, 40), share(Family.JUMP, 40), share(Family.SPLIT, 9)]


def families(found: list[Share]) -> list[Family | None]:
    return [one.explained.family for one in found]


def test_of_equal_readings_the_family_meant_before_comes_first() -> None:
    found = leant(FOUND, {Family.JUMP: 1})
    assert families(found) == [Family.JUMP, Family.BRIDGE, None, Family.SPLIT]


def test_a_less_sure_reading_stays_behind_however_often_it_was_meant() -> None:
    assert leant(FOUND, {Family.SPLIT: 1000}) == FOUND


def test_with_nothing_known_the_order_stays() -> None:
    assert leant(FOUND, {}) == FOUND


@pytest.mark.parametrize("family", [Family.JUMP, Family.KNOWN_FACT])
def test_where_no_reading_is_as_sure_as_the_best_nothing_changes(family: Family) -> None:
    for one in LISTED:
        plain = read(parse(one.problem), one.said, one.language)
        leaning = read(parse(one.problem), one.said, one.language, leaning={family: 99})
        assert leaning.sure == plain.sure
        if all(rival.sure != plain.sure for rival in plain.rivals):
            assert leaning == plain
