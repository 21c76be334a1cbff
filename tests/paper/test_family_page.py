"""The page that goes home: the problems and what to ask, no child, no answer, no judging."""

import re

import pytest

from tests.paper.papers import plan
from tests.paper.pdf_read import bare, check_tagged, figures, opened, text_of
from waysaid.paper import Sheet, family_page, paper_pdf


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("sheet", [Sheet.A4, Sheet.LETTER])
def test_it_is_one_tagged_page(language, sheet):
    pdf = opened(paper_pdf(family_page(plan(language)), sheet))
    check_tagged(pdf, language)
    assert len(pdf.pages) == 1
    assert [str(each.Alt) for each in figures(pdf)] == ["Dots in rows."]


@pytest.mark.parametrize("language", ["en", "es"])
def test_of_the_plan_it_has_the_problems_and_the_day_and_nothing_else(language):
    named = plan(language, names=("Wren", "Ravi"))
    text = text_of(opened(paper_pdf(family_page(named), Sheet.A4)))
    for words in ("40 + 26", "39 + 27", "2B · Thursday"):
        assert bare(words) in text
    for words in ("66", "56", "Wren", "Ravi", "One has moved", "fill up", "Moving one across"):
        assert bare(words) not in text


@pytest.mark.parametrize("language", ["en", "es"])
def test_it_judges_no_answer(language):
    text = text_of(opened(paper_pdf(family_page(plan(language)), Sheet.A4))).lower()
    judging = r"correct|incorrect|wrong|right|score|mistake|incorrect|error|equivoc|punt(os|aje)"
    assert re.search(judging, text) is None
