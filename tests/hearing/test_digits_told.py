"""Tens told as digits: read as the tens they stand for, and marked as told so."""

import pytest

from waysaid.hearing import Part, read
from waysaid.number import Language, parse

TOLD_SO = [
    ("the three and the two so thirty and twenty is fifty", Language.EN),
    ("three and two is five so that's fifty", Language.EN),
    ("el tres y el dos o sea treinta y veinte son cincuenta", Language.ES),
]
TOLD_OTHERWISE = [
    ("thirty and twenty is fifty", Language.EN),
    ("three tens and two tens is fifty", Language.EN),
    ("treinta y veinte son cincuenta", Language.ES),
]


def first(words, language):
    return read(parse("37 + 25"), words, language).told[0]


@pytest.mark.parametrize(("words", "language"), TOLD_SO)
def test_tens_told_as_digits_are_marked(words, language):
    told = first(words, language)
    assert told.step.text == "30 + 20 = 50"
    assert told.by_digits


@pytest.mark.parametrize(("words", "language"), TOLD_OTHERWISE)
def test_tens_told_as_tens_are_not(words, language):
    told = first(words, language)
    assert told.step.text == "30 + 20 = 50"
    assert not told.by_digits


def test_a_ten_that_nobody_said_is_unsaid():
    told = first("three and two is five so that's fifty", Language.EN)
    assert {Part.LEFT, Part.RIGHT} <= set(told.unsaid)


def test_digits_of_ones_are_what_they_are():
    told = read(parse("37 + 25"), "seven and five is twelve").told[0]
    assert told.step.text == "7 + 5 = 12"
    assert not told.by_digits


AS_DIGITS = [
    ("27 + 35", "two and three is five, seven and five is twelve, five and twelve so seventeen",
     Language.EN, "2 + 3 = 5"),
    ("47 + 36", ("seven and six is thirteen and four and three is seven so seven hundred and "
     "thirteen"), Language.EN, "4 + 3 = 7"),
    ("53 + 18", "cinco y uno seis, y tres y ocho once, seiscientos once", Language.ES,
     "5 + 1 = 6"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "words", "language", "step"), AS_DIGITS)
def test_digits_that_the_work_goes_on_with_are_no_tens(problem, words, language, step):
    told = read(parse(problem), words, language).told
    assert [one.unsaid for one in told if one.step.text == step] == [()]


def test_digits_that_the_work_goes_on_with_as_tens_are_tens():
    told = read(parse("27 + 35"), "two and three is five and seven and five is twelve, sixty two")
    assert told.told[0].step.text == "20 + 30 = 50"
