"""The pack for a substitute: what to listen for and to say, and nobody's history."""

import pytest

from tests.paper.papers import plan
from tests.paper.pdf_read import bare, check_tagged, figures, opened, text_of
from waysaid.paper import Sheet, paper_pdf, substitute_pack


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("sheet", [Sheet.A4, Sheet.LETTER])
def test_it_is_tagged_with_words_for_each_drawing(language, sheet):
    pdf = opened(paper_pdf(substitute_pack(plan(language)), sheet))
    check_tagged(pdf, language)
    words = [str(each.Alt) for each in figures(pdf)]
    assert words == ["a line to 66", "a line to 66", "Dots in rows."]


def test_the_string_its_reasons_ways_slips_links_and_questions_are_in_it():
    text = text_of(opened(paper_pdf(substitute_pack(plan()), Sheet.A4)))
    for words in (
        "39 + 27", "One has moved across.", "fill up to a ten", "39 + 1 = 40",
        "56: The ten from 9 + 7 may have been lost.", "What stayed the same?",
        "one moved across", "another #way*", "We listen to each other.",
    ):  # fmt: skip
        assert bare(words) in text


@pytest.mark.parametrize(
    ("language", "say", "not_say"), [("en", "What to say", "good job"), ("es", "Qué decir", "Bien")]
)
def test_it_says_what_to_say_and_what_not_to(language, say, not_say):
    text = text_of(opened(paper_pdf(substitute_pack(plan(language)), Sheet.A4)))
    assert text.index(bare(say)) < text.index(bare(not_say)) < text.index(bare("39 + 27"))


def test_names_are_in_it_only_when_wanted():
    assert "Wren" not in text_of(opened(paper_pdf(substitute_pack(plan()), Sheet.A4)))
    named = paper_pdf(substitute_pack(plan(names=("Wren", "Ravi"))), Sheet.A4)
    assert "Wren" in text_of(opened(named))


def test_an_empty_plan_makes_a_pack_too():
    bare_plan = plan(signals=(), norms=(), questions=(), links=())
    assert opened(paper_pdf(substitute_pack(bare_plan), Sheet.A4)).pages
