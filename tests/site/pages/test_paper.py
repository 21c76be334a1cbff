"""The papers of a plan: PDFs of the teacher's own, with names only where she asks for them."""

import pytest

from tests.counts import count
from tests.paper.pdf_read import bare, check_tagged, opened, text_of
from tests.site.made import answer as answer_heard
from tests.site.made import child_id, problem_id, sent, way
from waysaid.number import Language, parse
from waysaid.paper import (
    Sheet,
    family_page,
    paper_pdf,
    press,
    recording_sheet,
    substitute_pack,
)
from waysaid.site.models import Plan
from waysaid.site.on_paper import plan_on_paper, problems_on_paper
from waysaid.site.planning import plan_of_starter, row_of
from waysaid.strings import starters

PAPERS = ("sheet", "substitute", "family")


@pytest.fixture
def plan(cast):
    rows = [row_of(parse(each)) for each in ("40 + 26", "39 + 27", "image frame 10: 7")]
    return Plan.objects.create(school_class=cast.school_class, title="Thursday", problems=rows)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize(("size", "wide"), [("a4", 595), ("letter", 612), ("x", 595)])
def test_a_paper_is_a_tagged_pdf_on_the_sheet_asked_for(cast, plan, paper, size, wide):
    answer = cast.owner.get(f"/plans/{plan.pk}/{paper}.pdf?size={size}")
    assert answer.headers["Content-Type"] == "application/pdf"
    pdf = opened(answer.content)
    check_tagged(pdf, "en")
    assert abs(float(pdf.pages[0].mediabox[2]) - wide) < 2
    assert bare("39 + 27") in text_of(pdf)


@pytest.mark.parametrize("paper", PAPERS)
def test_a_paper_speaks_the_language_of_the_desk_and_at_home_that_of_the_board(cast, plan, paper):
    cast.school_class.desk_language = "en" if paper == "family" else "es"
    cast.school_class.board_language = "es"
    cast.school_class.save()
    check_tagged(opened(cast.owner.get(f"/plans/{plan.pk}/{paper}.pdf").content), "es")


@pytest.mark.parametrize("paper", ["sheet", "substitute"])
def test_names_are_on_a_paper_only_when_they_are_asked_for(cast, plan, paper):
    path = f"/plans/{plan.pk}/{paper}.pdf"
    assert "Aroha" not in text_of(opened(cast.owner.get(path).content))
    assert "Aroha" in text_of(opened(cast.owner.get(f"{path}?names=on").content))


def test_a_talk_without_a_plan_has_an_empty_sheet(cast):
    pdf = opened(cast.owner.get("/plans/sheet.pdf?size=letter").content)
    check_tagged(pdf, "en")
    assert bare("Problem 6:") in text_of(pdf)
    assert 'action="/plans/sheet.pdf"' in cast.owner.get("/talks/written").text
    assert cast.outsider.get("/plans/sheet.pdf").status_code == 403


@pytest.mark.parametrize("paper", PAPERS)
def test_a_paper_is_nobody_elses(cast, plan, paper):
    path = f"/plans/{plan.pk}/{paper}.pdf"
    assert cast.colleague.get(path).status_code == 404
    assert cast.outsider.get(path).status_code == 403
    assert f'action="{path}"' in cast.owner.get(f"/plans/{plan.pk}").text


def test_the_page_for_families_names_no_child_and_comes_in_the_language_asked_for(cast, plan):
    path = f"/plans/{plan.pk}/family.pdf?names=on"
    for language, word in (("en", "Our number talk"), ("es", "Nuestra charla")):
        pdf = opened(cast.owner.get(f"{path}&language={language}").content)
        check_tagged(pdf, language)
        assert bare(word) in text_of(pdf)
        assert "Aroha" not in text_of(pdf)
    check_tagged(opened(cast.owner.get(f"{path}&language=xx").content), "en")


def test_a_substitutes_pack_tells_nothing_of_the_talks_before(cast, plan):
    before = cast.owner.get(f"/plans/{plan.pk}/substitute.pdf?names=on").content
    told = way(problem_id(cast.talk), child_id(cast.school_class), 1, words="a secret word")
    answer = sent(told, answer_heard(problem_id(cast.talk), "56", 2))
    path = f"/talks/{cast.talk.pk}/events"
    assert cast.owner.post(path, answer, content_type="application/json").status_code == 200
    assert cast.owner.get(f"/plans/{plan.pk}/substitute.pdf?names=on").content == before


def test_a_talk_has_its_page_for_families_with_the_problems_it_came_to(cast):
    path = f"/talks/{cast.talk.pk}/family.pdf"
    text = text_of(opened(cast.owner.get(f"{path}?language=es").content))
    assert bare("39 + 27") in text
    assert "66" not in text
    assert f'action="{path}"' in cast.owner.get(f"/talks/{cast.talk.pk}/back").text
    assert cast.colleague.get(path).status_code == 404


MANY = count(test=6, sweep=len(starters()))


@pytest.mark.parametrize(
    "starter", starters()[:: len(starters()) // MANY], ids=lambda one: one.slug
)
@pytest.mark.parametrize("language", list(Language))
def test_our_own_fonts_print_every_starter(cast, starter, language, monkeypatch):
    compiled = press._compiled

    def with_own_fonts(*given, system_fonts, **more):
        assert not system_fonts
        return compiled(*given, system_fonts=False, **more)

    monkeypatch.setattr(press, "_compiled", with_own_fonts)
    cast.school_class.desk_language = language.value
    plan = plan_of_starter(cast.school_class, starter)
    shown = plan_on_paper(plan)
    home = problems_on_paper([row["text"] for row in plan.problems], None, language)
    for paper in (recording_sheet(shown), substitute_pack(shown), family_page(home)):
        check_tagged(opened(paper_pdf(paper, Sheet.A4)), language.value)
