"""Whatever a child is called, and whatever she said, it is printed."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.paper.papers import plan
from tests.paper.pdf_read import elements, opened
from waysaid.paper import (
    Chart,
    ProblemOnPaper,
    Sheet,
    Size,
    ToldOnPaper,
    chart_pdf,
    paper_pdf,
    recording_sheet,
)

ODD = ("smile 😀", "李", "נועה", "x\x07y", "a\ud800b", "\ue000", "▢", "\u200b", "\\", '"', "#", "")


def check(pdf):
    assert pdf.Root.MarkInfo.Marked
    assert str(pdf.Root.Lang) == "en"
    assert any(str(each.S) == "/H1" for each in elements(pdf.Root.StructTreeRoot))


@pytest.mark.parametrize("odd", ODD)
def test_letters_that_our_fonts_do_not_have_are_no_reason_to_print_nothing(odd):
    check(opened(paper_pdf(recording_sheet(plan(names=(odd,), questions=(odd,))), Sheet.A4)))
    told = ProblemOnPaper("39 + 27", (ToldOnPaper(odd, words=odd),))
    check(opened(chart_pdf(Chart("Thursday", odd, "en", (told,), "Noticed"), Size.A4)))


@given(st.text(max_size=30))
@settings(max_examples=count(test=30, sweep=1000), deadline=None)
def test_any_text_is_printed(text):
    check(opened(paper_pdf(recording_sheet(plan(names=(text,), norms=(text,))), Sheet.A4)))
