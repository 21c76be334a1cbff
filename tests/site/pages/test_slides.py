"""A plan's slides: the teacher's own, with her class's signals, and nothing for anybody else."""

import io

import pptx
import pytest

from tests.site.pages.test_plan import plan  # noqa: F401
from waysaid.site.models import Plan

PPTX = "application/vnd.openxmlformats-officedocument.presentationml.presentation"


@pytest.fixture
def deck(cast, plan):  # noqa: F811
    cast.school_class.own_names = {"bridge": "up to a ten"}
    cast.school_class.save()
    answer = cast.owner.get(f"/plans/{plan.pk}/slides.pptx")
    assert answer.headers["Content-Type"] == PPTX
    assert 'filename="thursday.pptx"' in answer.headers["Content-Disposition"]
    return pptx.Presentation(io.BytesIO(answer.content))


def test_the_slides_are_the_plans_problems_with_the_classs_signals(cast, deck):
    titles = [slide.shapes.title.text_frame.text for slide in deck.slides]
    assert titles[1:-1] == ["40 + 26", "39 + 26", "39 + 27"]
    words = {each.text_frame.text for each in deck.slides[1].shapes if each.has_text_frame}
    assert {signal["word"] for signal in cast.school_class.signals} <= words


def test_the_notes_call_the_families_as_the_class_does(deck):
    assert "up to a ten: 39 + 1 = 40" in deck.slides[2].notes_slide.notes_text_frame.text


def test_the_plans_name_is_on_no_slide(deck):
    said = "".join(each.text_frame.text for slide in deck.slides for each in slide.placeholders)
    assert "Thursday" not in said


def test_nobody_else_gets_them(cast, deck):
    address = f"/plans/{Plan.objects.get().pk}/slides.pptx"
    assert cast.colleague.get(address).status_code == 404
    assert cast.outsider.get(address).status_code == 403
    assert cast.panel.get(address).status_code == 403
