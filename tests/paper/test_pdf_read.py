"""The reader that the papers' tests trust sees each fault that it is there for."""

import pikepdf
import pytest

from tests.paper.papers import plan
from tests.paper.pdf_read import bare, check_tagged, elements, figures, opened, text_of
from waysaid.paper import Sheet, paper_pdf, substitute_pack


@pytest.fixture
def pdf():
    return opened(paper_pdf(substitute_pack(plan()), Sheet.A4))


def test_a_paper_in_order_is_let_through(pdf):
    check_tagged(pdf, "en")


def test_another_language_is_seen(pdf):
    with pytest.raises(AssertionError):
        check_tagged(pdf, "es")


@pytest.mark.parametrize("part", ["/MarkInfo", "/StructTreeRoot", "/Lang"])
def test_a_part_that_is_missing_is_seen(pdf, part):
    del pdf.Root[part]
    with pytest.raises((AssertionError, AttributeError)):
        check_tagged(pdf, "en")


@pytest.mark.parametrize("alt", [None, "", " "])
def test_a_drawing_without_words_is_seen(pdf, alt):
    figure = figures(pdf)[-1]
    del figure["/Alt"]
    if alt is not None:
        figure["/Alt"] = alt
    with pytest.raises((AssertionError, AttributeError)):
        check_tagged(pdf, "en")


def test_a_title_that_is_no_heading_is_seen(pdf):
    heading = next(each for each in elements(pdf.Root.StructTreeRoot) if str(each.S) == "/H1")
    heading["/S"] = pikepdf.Name("/P")
    with pytest.raises(AssertionError):
        check_tagged(pdf, "en")


def test_words_are_read_as_they_were_written_and_others_are_not_found(pdf):
    text = text_of(pdf)
    assert bare("The ten from 9 + 7 may have been lost.") in text
    assert bare("The ten from 9 + 8") not in text
