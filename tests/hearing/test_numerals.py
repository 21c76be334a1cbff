"""Numbers in talk: as the tool says them, as children say them, as machines hear them."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from waysaid.hearing.lexicon import lexicon_of
from waysaid.hearing.numerals import REACH, Numeral, numerals_at
from waysaid.hearing.word import words_of
from waysaid.number import Language, decimal, mixed, number_words, parts, percent


def numerals(line: str, language: Language = Language.EN, place: int = 0) -> tuple[Numeral, ...]:
    lexicon = lexicon_of(language)
    return numerals_at(words_of(line, lexicon), place, lexicon)


def reads_whole(line, leaf, language, noise):
    end = len(words_of(line, lexicon_of(language)))
    return any(
        (one.leaf, one.end) == (leaf, end) and one.noise <= noise
        for one in numerals(line, language)
    )


@pytest.mark.parametrize("language", Language)
def test_every_number_to_ten_thousand_is_heard_as_it_is_said(language):
    for value in (*range(10_001), 123_456, 999_999, 1_000_000):
        assert reads_whole(number_words(value, language), value, language, 0), value


@settings(max_examples=count(test=300, sweep=10_000), deadline=None)
@given(st.integers(0, 10**6), st.integers(1, 3), st.sampled_from(Language))
def test_decimals_are_heard_as_they_are_said(top, places, language):
    leaf = decimal(Fraction(top % 10**5, 10**places), places)
    assert reads_whole(number_words(leaf, language), leaf, language, 0)


@settings(max_examples=count(test=300, sweep=10_000), deadline=None)
@given(st.integers(1, 99), st.integers(1, 19), st.integers(2, 20), st.sampled_from(Language))
def test_fractions_are_heard_as_they_are_said(whole, top, bottom, language):
    for leaf in (parts(top, bottom), mixed(whole, top % bottom or 1, bottom)):
        assert reads_whole(number_words(leaf, language), leaf, language, 2)


@pytest.mark.parametrize(
    ("line", "leaf", "noise"),
    [
        ("a hundred and six", 106, 0),
        ("one oh six", 106, 0),
        ("one sixty", 160, 0),
        ("one twenty five", 125, 0),
        ("two fifty", 250, 1),
        ("twelve hundred", 1200, 0),
        ("a couple", 2, 0),
        ("a dozen", 12, 0),
        ("point seven five", decimal(Fraction(3, 4)), 0),
        ("sixty five hundredths", decimal(Fraction(13, 20)), 0),
        ("three quarters", Fraction(3, 4), 0),
        ("a third", Fraction(1, 3), 0),
        ("half", Fraction(1, 2), 0),
        ("two and a half", Fraction(5, 2), 0),
        ("one and three quarters", Fraction(7, 4), 0),
        ("ten percent", percent(Fraction(1, 10)), 0),
        ("50 %", percent(Fraction(1, 2)), 0),
        ("two tens and four", 24, 0),
        ("4 tens", 40, 0),
        ("30 7", 37, 1),
        ("for", 4, 2),
        ("sevn", 7, 2),
        ("twentey", 20, 2),
        ("fourty", 40, 1),
        ("sixes", 6, 0),
        ("6/4", parts(6, 4), 0),
        ("1 2/4", mixed(1, 2, 4), 0),
        ("1,000", 1000, 0),
        ("0.650", decimal(Fraction(13, 20), 3), 0),
    ],
)
def test_english_numbers_are_heard(line, leaf, noise):
    assert reads_whole(line, leaf, Language.EN, noise)


@pytest.mark.parametrize(
    ("line", "leaf", "noise"),
    [
        ("treinta y siete", 37, 0),
        ("treinta siete", 37, 1),
        ("treintaisiete", 37, 1),
        ("veinte y cuatro", 24, 1),
        ("ciento seis", 106, 0),
        ("coma cinco", decimal(Fraction(1, 2)), 0),
        ("tres cuartos", Fraction(3, 4), 0),
        ("uno y medio", Fraction(3, 2), 0),
        ("diez por ciento", percent(Fraction(1, 10)), 0),
        ("tres decenas y dos", 32, 0),
        ("seises", 6, 0),
        ("ciete", 7, 2),
        ("seiz", 6, 2),
        ("bente", 20, 2),
        ("0,65", decimal(Fraction(13, 20)), 0),
    ],
)
def test_spanish_numbers_are_heard(line, leaf, noise):
    assert reads_whole(line, leaf, Language.ES, noise)


@pytest.mark.parametrize("line", ["there", "light", "because", "🙂", "and"])
def test_words_that_are_no_number_are_none(line):
    assert numerals(line) == ()


def test_a_number_does_not_go_over_a_pause():
    assert [one.leaf for one in numerals("thirty, seven")] == [30]


def test_several_and_places_are_told():
    assert [one.many for one in numerals("sixes")] == [True]
    assert [(one.leaf, one.places) for one in numerals("two tens")] == [(20, True), (2, False)]


WORDS = st.sampled_from(
    [
        "one",
        "two",
        "twenty",
        "hundred",
        "thousand",
        "and",
        "a",
        "point",
        "half",
        "quarters",
        "tens",
        "percent",
        "over",
        "oh",
        "3",
        "40",
        "3/4",
        "for",
        "sevn",
        "dos",
        "veinte",
        "treinta",
        "y",
        "mil",
        "ciento",
        "coma",
        "medio",
        "🙂",
        ",",
        "1.5",
    ]
)


@settings(max_examples=count(test=500, sweep=20_000), deadline=None)
@given(st.lists(WORDS, max_size=30), st.sampled_from(Language))
def test_readings_are_in_the_line_longest_first_and_bounded(said, language):
    lexicon = lexicon_of(language)
    words = words_of(" ".join(said), lexicon)
    for place in range(len(words)):
        found = numerals_at(words, place, lexicon)
        ends = [one.end for one in found]
        assert ends == sorted(ends, reverse=True)
        assert all(one.start == place < one.end <= min(len(words), place + REACH) for one in found)
        assert all(one.noise in {0, 1, 2} for one in found)
    assert numerals_at(words, len(words), lexicon) == ()
