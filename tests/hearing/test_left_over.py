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
NAMED = [
    ("38 / 6", "five sixes is thirty and then there's eight so five remainder eight", EN, "5 r 8"),
    ("31 / 5", "cinco por cinco veinticinco, toca a cinco y sobran seis", ES, "5 r 6"),
    ("78 / 6", "ten sixes is sixty and there's eighteen left over", EN, None),
    ("67 / 3", "sixty over three is twenty, six over three is two, so twenty two with one left", EN,
     "22 r 1"),
    ("85 / 4", "ochenta entre cuatro veinte, cuatro entre cuatro uno, toca a veintiuno y sobra uno",
     ES, "21 r 1"),
    ("29 / 4", "twenty over four is five, eight over four is two, so it's seven and one left over",
     EN, "7 r 1"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "words", "language", "answer"), NAMED)
def test_groups_named_or_put_together_stand_with_their_rest(problem, words, language, answer):
    """A rest that makes more groups is an answer where the groups are named with it."""
    assert read(parse(problem), words, language).answer_text == answer


@pytest.mark.parametrize(("problem", "words", "language", "step", "answer"), CASES)
def test_groups_and_the_rest_are_heard(problem, words, language, step, answer):
    heard = read(parse(problem), words, language)
    assert heard.told[0].step.text == step
    assert heard.answer_text == answer


@pytest.mark.parametrize(("words", "answer"), SAID_AGAIN)
def test_the_last_word_on_what_is_left_over_stands(words, answer):
    """Right or wrong: the groups named again are no rest, and a rest may be shared out."""
    assert read(parse("17 / 5"), words).answer_text == answer
