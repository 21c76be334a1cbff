"""Words of a line: exact places, pauses, digits, signs."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from waysaid.hearing.fold import fold
from waysaid.hearing.lexicon import lexicon_of
from waysaid.hearing.word import Pause, words_of
from waysaid.number import Language

TALK = st.text(alphabet="ab é'’-–3 70,./%s½:=>+x\n", max_size=200)


def texts(line: str, language: Language = Language.EN) -> list[str]:
    return [word.text for word in words_of(line, lexicon_of(language))]


@settings(max_examples=count(test=500, sweep=20_000), deadline=None)
@given(st.one_of(st.text(max_size=300), TALK), st.sampled_from(Language))
def test_every_span_is_a_slice_in_order_and_no_word_is_empty(line, language):
    last = 0
    for word in words_of(line, lexicon_of(language)):
        start, end = word.span
        assert last <= start < end <= len(line)
        assert word.text
        last = end


@settings(max_examples=count(test=500, sweep=20_000), deadline=None)
@given(st.one_of(st.text(max_size=300), TALK), st.sampled_from(Language))
def test_every_digit_of_a_line_is_in_a_word(line, language):
    spans = [word.span for word in words_of(line, lexicon_of(language))]
    for place, character in enumerate(fold(line)):
        if character in "0123456789":
            assert any(start <= place < end for start, end in spans)


@settings(max_examples=count(test=500, sweep=20_000), deadline=None)
@given(st.text(max_size=300))
def test_folding_keeps_the_length(line):
    assert len(fold(line)) == len(line)


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("37+3is40", ["37", "+", "3", "is", "40"]),
        ("37-3", ["37", "-", "3"]),
        ("twenty-four", ["twenty", "four"]),
        ("It's 3/4, don’t", ["its", "3/4", "dont"]),
        ("1 1/4 and 1½", ["1 1/4", "and", "1 1/2"]),
        ("1,000 or 3,4", ["1,000", "or", "3", "4"]),
        ("0.65 40. 15% 50 %", ["0.65", "40", "15%", "50", "%"]),
        ("five 6's and 7s", ["five", "6s", "and", "7s"]),
        ("60/4=15", ["60/4", "=", "15"]),
        ("3x4 × 5", ["3", "x", "4", "×", "5"]),
        ("MÁS ma\u0301s", ["mas", "mas"]),
        ("🙂 ten", ["ten"]),
        ("８＋１", ["8", "1"]),
        ("", []),
    ],
)
def test_a_line_is_cut_as_it_is_meant(line, expected):
    assert texts(line) == expected


def test_spanish_reads_a_comma_as_a_point_but_not_in_a_list():
    assert texts("0,65 y 8,9,10", Language.ES) == ["0,65", "y", "8", "9", "10"]
    assert texts("72:4", Language.ES) == ["72", ":", "4"]


@pytest.mark.parametrize(
    ("line", "pauses"),
    [
        ("a, b. c", [Pause.NONE, Pause.COMMA, Pause.STOP]),
        ("a -> b => c → d", [Pause.NONE, Pause.STOP, Pause.STOP, Pause.STOP]),
        ("a — b\nc", [Pause.NONE, Pause.COMMA, Pause.STOP]),
        ("so - sixty", [Pause.NONE, Pause.COMMA]),
    ],
)
def test_pauses_are_told(line, pauses):
    assert [word.pause for word in words_of(line, lexicon_of(Language.EN))] == pauses
