"""The recording sheet: room for what is said, nothing that was worked out before it."""

import pytest

from tests.paper.papers import plan
from tests.paper.pdf_read import bare, check_tagged, elements, figures, opened, text_of
from waysaid.number import Language
from waysaid.paper import Sheet, empty_sheet, paper_pdf, recording_sheet


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("sheet", "wide"), [(Sheet.A4, 595), (Sheet.LETTER, 612)])
def test_it_is_a_tagged_pdf_on_its_paper(language, sheet, wide):
    pdf = opened(paper_pdf(recording_sheet(plan(language)), sheet))
    check_tagged(pdf, language)
    assert [str(each.Alt) for each in figures(pdf)] == ["Dots in rows."]
    assert all(abs(float(page.mediabox[2]) - wide) < 2 for page in pdf.pages)


def test_each_problem_has_a_table_with_room_for_ten_ways():
    pdf = opened(paper_pdf(recording_sheet(plan()), Sheet.A4))
    tree = list(elements(pdf.Root.StructTreeRoot))
    tables = [each for each in tree if str(each.S) == "/Table"]
    assert len(tables) == 3
    for table in tables:
        rows = [each for each in elements(table) if str(each.S) == "/TR"]
        assert len(rows) == 1 + 10
        assert sum(str(each.S) == "/TH" for each in elements(table)) == 3


def test_its_words_can_be_selected_and_are_never_markup():
    text = text_of(opened(paper_pdf(recording_sheet(plan()), Sheet.A4)))
    for words in ("40 + 26", "One has moved across.", "another #way*", "What stayed the same?"):
        assert bare(words) in text


def test_no_answer_way_or_slip_is_on_it_and_names_only_when_wanted():
    text = text_of(opened(paper_pdf(recording_sheet(plan()), Sheet.A4)))
    for words in ("66", "56", "fill up to a ten", "Wren"):
        assert bare(words) not in text
    names = ("Ana", "Bo", "Cy", "Di", "Eli", "Fay", "Gus", "Hal", "Ida")
    named = text_of(opened(paper_pdf(recording_sheet(plan(names=names)), Sheet.A4)))
    assert "".join(names) in named, "read out in the order of the class list"


def test_an_empty_sheet_has_as_many_problems_as_wanted_and_asks_nothing_of_a_plan():
    pdf = opened(paper_pdf(empty_sheet("2B", Language.ES, 4), Sheet.LETTER))
    check_tagged(pdf, "es")
    tree = list(elements(pdf.Root.StructTreeRoot))
    assert sum(str(each.S) == "/Table" for each in tree) == 4
    assert bare("Problema 4") in text_of(pdf)
