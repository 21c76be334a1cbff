"""The report for the teacher's own file: words, cautions first, nobody measured."""

import re

import pytest

from tests.paper.pdf_read import bare, check_tagged, elements, opened, text_of
from waysaid.growth import caution
from waysaid.number import Language
from waysaid.paper import (
    ClassReport,
    FamilyReported,
    Sheet,
    TalkReported,
    VoiceReported,
    class_report,
    paper_pdf,
)


def report(language="en", **changed):
    """Return a report over two talks; all of it made up."""
    given = {
        "talks": (TalkReported("Monday", ("40 + 26", "39 + 27")), TalkReported("Friday", ())),
        "families": (FamilyReported("fill up", "Monday, 39 + 27", "Friday", "3 times"),),
        "nobody": ("shift both",),
        "noticed": ("“one #went across” (Wren, Monday)",),
        "heard": (VoiceReported("Wren", "Monday"), VoiceReported("Ravi", "Friday")),
        "unheard": ("Mei",),
        **changed,
    }
    return ClassReport("2B", "5 October 2026", "27 November 2026", language, **given)


def pdf_of(language="en", **changed):
    return opened(paper_pdf(class_report(report(language, **changed)), Sheet.A4))


@pytest.mark.parametrize("language", ["en", "es"])
def test_it_is_tagged_with_a_table_for_talks_ways_and_voices(language):
    pdf = pdf_of(language)
    check_tagged(pdf, language)
    roles = [str(each.S) for each in elements(pdf.Root.StructTreeRoot)]
    assert roles.count("/Table") == 3
    assert roles.count("/TH") == 2 + 4 + 2


@pytest.mark.parametrize("language", ["en", "es"])
def test_its_cautions_stand_before_any_child(language):
    text = text_of(pdf_of(language))
    assert text.index(bare(caution(Language(language)))) < text.index("Wren")


def test_all_of_it_can_be_selected_and_is_never_markup():
    text = text_of(pdf_of())
    for words in ("2B", "27 November 2026", "39 + 27", "fill up", "shift both", "one #went across"):
        assert bare(words) in text


@pytest.mark.parametrize("language", ["en", "es"])
def test_nobody_is_measured(language):
    text = text_of(pdf_of(language)).lower()
    assert re.search(r"%|percent|por ciento|rank|score|average|promedio|best|mejor", text) is None


def test_voices_keep_the_order_of_the_class_list():
    text = text_of(pdf_of())
    assert text.index(bare("Who was heard")) < text.rindex("Wren") < text.rindex("Ravi")


def test_without_talks_it_says_so_and_names_nobody():
    text = text_of(pdf_of(talks=()))
    assert bare("No talk was held between these days.") in text
    assert "Mei" not in text
