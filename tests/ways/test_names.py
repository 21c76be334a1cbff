"""What families are called, and what is told of them."""

from pathlib import Path

import pytest

from waysaid.number import Language, parse
from waysaid.ways import FAMILY_NOTES, Family, Vocabulary, family_name, published_names, ways
from waysaid.ways.family_notes import OUR_GUESS
from waysaid.ways.sources import SOURCES as WAYS_SOURCES

SOURCES = (Path(__file__).parents[1] / "published" / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("family", Family)
def test_a_published_name_has_a_source_that_is_listed(family):
    for named in published_names(family).values():
        assert f"`{named.source}`" in SOURCES
        assert named.source in WAYS_SOURCES
        assert named.name == named.name.strip() != ""


@pytest.mark.parametrize("words", Vocabulary)
@pytest.mark.parametrize("language", Language)
def test_every_family_has_one_name_of_its_own_in_any_vocabulary(words, language):
    names = [family_name(family, language, words) for family in Family]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize("words", [each for each in Vocabulary if each is not Vocabulary.OURS])
def test_a_vocabulary_changes_some_names_in_english_and_none_in_spanish(words):
    def told(language, which):
        return [family_name(family, language, which) for family in Family]

    assert told(Language.EN, words) != told(Language.EN, Vocabulary.OURS)
    assert told(Language.ES, words) == told(Language.ES, Vocabulary.OURS)


@pytest.mark.parametrize("family", Family)
def test_a_family_is_told_with_a_source_and_examples_of_its_own(family):
    note = FAMILY_NOTES[family]
    assert note.source == OUR_GUESS or f"`{note.source}`" in SOURCES
    assert note.source == OUR_GUESS or note.source in WAYS_SOURCES
    assert 0 <= note.grade <= 6
    assert family not in note.leads_to
    assert note.does(Language.EN).endswith(".")
    assert note.does(Language.ES).endswith(".")
    for example in note.examples:
        assert family in {way.family for way in ways(parse(example))}, example
