"""Groups and what is left over, in the words that a sharing is told with."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse

EN, ES = Language.EN, Language.ES
CASES = [
    ("17 / 5", "five goes into seventeen three times with two left", EN, "17 / 5 = 3", "3 r 2"),
    ("96 / 8", "eight goes into ninety six twelve times", EN, "96 / 8 = 12", "12"),
    ("17 / 5", "el cinco cabe tres veces y me sobran dos", ES, "17 / 5 = 3", "3 r 2"),
    ("17 / 5", "cinco cabe tres veces en diecisiete y sobran dos", ES, "17 / 5 = 3", "3 r 2"),
    ("50 / 6", "eight groups of six and two left over", EN, "8 x 6 = 48", "8 r 2"),
    ("50 / 6", "ocho grupos de seis y sobran dos", ES, "8 x 6 = 48", "8 r 2"),
]
SAID_AGAIN = [
    ("three fives is fifteen and two left over so three remainder two", "3 r 2"),
    ("three fives is fifteen and two left over so three and two fifths", "3 2/5"),
    ("three fives is fifteen and four left over so three remainder four", "3 r 4"),
]


@pytest.mark.parametrize(("problem", "words", "language", "step", "answer"), CASES)
def test_groups_and_the_rest_are_heard(problem, words, language, step, answer):
    heard = read(parse(problem), words, language)
    assert heard.told[0].step.text == step
    assert heard.answer_text == answer


@pytest.mark.parametrize(("words", "answer"), SAID_AGAIN)
def test_the_last_word_on_what_is_left_over_stands(words, answer):
    """Right or wrong: the groups named again are no rest, and a rest may be shared out."""
    assert read(parse("17 / 5"), words).answer_text == answer
