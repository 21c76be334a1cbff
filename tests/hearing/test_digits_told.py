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
