"""Every paper has its words in both languages, with the same places to fill."""

import pytest

from waysaid.number import Language
from waysaid.paper.words import paper_words

PAPERS = ("recording", "substitute", "family", "report")


@pytest.mark.parametrize("paper", PAPERS)
def test_both_languages_say_the_same_things(paper):
    english, spanish = (paper_words(paper, language) for language in Language)
    assert english.texts.keys() == spanish.texts.keys()
    assert english.lists.keys() == spanish.lists.keys()
    for name, text in english.texts.items():
        assert text.count("{}") == spanish[name].count("{}")
        assert text != spanish[name] or text == "{}: {}"
    for name, items in english.lists.items():
        assert len(items) == len(spanish.lists[name])
