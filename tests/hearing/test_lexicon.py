"""Lexicons: whole, folded, and a third language as a file."""

import tomllib
from pathlib import Path

import pytest

from waysaid.hearing.lexicon import lexicon_of, read_lexicon
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.numerals import numerals_at
from waysaid.hearing.phrase import phrases_of
from waysaid.hearing.word import words_of
from waysaid.number import Language

FRENCH = (Path(__file__).parent / "words" / "fr.toml").read_text(encoding="utf-8")


@pytest.mark.parametrize("language", Language)
def test_every_meaning_has_plain_phrases_in_every_language(language):
    found = lexicon_of(language).phrases.values()
    plain = {meaning for group in found for meaning, noise in group if noise == 0}
    assert plain == set(Meaning)


@pytest.mark.parametrize("language", Language)
def test_every_phrase_is_cut_into_its_own_words(language):
    lexicon = lexicon_of(language)
    for phrase in lexicon.phrases:
        if phrase[0].isalpha():
            assert tuple(word.text for word in words_of(" ".join(phrase), lexicon)) == phrase


@pytest.mark.parametrize(
    ("language", "said", "meaning"),
    [
        (Language.EN, "take away", Meaning.MINUS),
        (Language.EN, "thats", Meaning.EQUALS),
        (Language.EN, "wait no", Meaning.CORRECT),
        (Language.EN, "to", Meaning.TO),
        (Language.EN, "the other one", Meaning.OTHER),
        (Language.EN, "off by heart", Meaning.KNEW),
        (Language.EN, "left", Meaning.LEFT_OVER),
        (Language.ES, "le quito", Meaning.TAKE),
        (Language.ES, "se lo doy", Meaning.GIVE),
        (Language.ES, "los dos", Meaning.BOTH),
        (Language.ES, "me lo se", Meaning.KNEW),
        (Language.ES, "lo que queda", Meaning.REST),
    ],
)
def test_what_children_say_has_its_meaning(language, said, meaning):
    found = lexicon_of(language).phrases[tuple(said.split())]
    assert (meaning, 0) in found


def test_choices_make_every_phrase():
    assert phrases_of("just/ knew/know it") == (
        ("just", "knew", "it"),
        ("just", "know", "it"),
        ("knew", "it"),
        ("know", "it"),
    )
    assert phrases_of("/") == (("/",),)
    assert phrases_of("") == ((),)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("soixante et onze", 71),
        ("soixante-dix-sept", 77),
        ("quatre-vingt-dix-neuf", 99),
        ("quatre-vingts", 80),
        ("vingt et un", 21),
        ("deux cent quatre-vingt-douze", 292),
    ],
)
def test_a_third_language_is_a_file(said, value):
    french = read_lexicon(FRENCH)
    words = words_of(said, french)
    first = numerals_at(words, 0, french)[0]
    assert (first.leaf, first.end, first.noise) == (value, len(words), 0)
    assert (Meaning.TAKE, 0) in french.phrases["enleve",]


def test_a_faulty_file_is_refused():
    with pytest.raises(tomllib.TOMLDecodeError):
        read_lexicon("code = ")
    with pytest.raises(ValueError, match="nonsense"):
        read_lexicon('code = "xx"\n[plain]\nnonsense = ["a"]\n')
    with pytest.raises(KeyError):
        read_lexicon('code = "xx"\n')
