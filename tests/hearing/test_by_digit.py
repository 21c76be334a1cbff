"""Long division told digit by digit: the digits shared, and no answer but the one said."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.hearing import read
from waysaid.number import Language, parse, text
from waysaid.ways import Family

TOLD = [
    (
        "4 into 9 goes twice, carry the one, 4 into 12 goes three times, so 23",
        "92 / 4: 9 / 4 = 2, 12 / 4 = 3: 23",
    ),
    (
        "how many fours in nine, two, one left, how many fours in twelve, three, twenty three",
        "92 / 4: 9 / 4 = 2, 12 / 4 = 3: 23",
    ),
    (
        "fours into nine goes two times remainder 1, bring down the two, 4 into 12 goes three, 23",
        "92 / 4: 9 / 4 = 2, 12 / 4 = 3: 23",
    ),
    (
        "nine divided by six is one and six divided by six is one so eleven",
        "96 / 6: 9 / 6 = 1, 6 / 6 = 1: 11",
    ),
    (
        "nine divided by three is three and one left so three remainder one",
        "91 / 3: 9 / 3 = 3: 3 r 1",
    ),
    (
        "nueve entre cuatro a dos y me sobra uno, bajo el dos, doce entre cuatro a tres, 23",
        "92 / 4: 9 / 4 = 2, 12 / 4 = 3: 23",
    ),
    (
        "tres en ocho cabe dos veces y sobran dos, tres en 24 ocho veces, entonces 28",
        "84 / 3: 8 / 3 = 2, 24 / 3 = 8: 28",
    ),
]


@pytest.mark.parametrize(("said", "meant"), TOLD)
def test_digits_are_shared_as_they_were_told(said, meant):
    problem, steps, answer = meant.split(": ")
    language = Language.ES if " entre " in said or " en " in said else Language.EN
    reading = read(parse(problem), said, language)
    assert ", ".join(text(told.step.equation) for told in reading.told) == steps
    assert reading.answer_text == answer
    on_paper = any(word in said for word in ("carry", "bring down", "bajo el"))
    assert reading.family is (Family.COLUMN if on_paper else Family.BREAK_UP)


@given(st.integers(3, 9), st.integers(11, 33), st.integers(0, 99))
def test_the_answer_of_work_by_digits_is_the_number_said(size, groups, off):
    """Whatever was said in the end, and never what is left of a digit."""
    whole, said = size * groups, groups + off % 3
    first, rest = divmod(whole // 10, size)
    if whole > 99 or not first or first * size == whole // 10:
        return
    line = f"{size} into {whole // 10} goes {first} times remainder {rest}, "
    line += f"{size} into {10 * rest + whole % 10} goes {groups % 10} times, so {said}"
    reading = read(parse(f"{whole} / {size}"), line, Language.EN)
    assert reading.answer_text == str(said)
