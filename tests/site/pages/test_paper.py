"""The papers of a plan: PDFs of the teacher's own, with names only where she asks for them."""

import pytest

from tests.paper.pdf_read import bare, check_tagged, opened, text_of
from waysaid.number import parse
from waysaid.site.models import Plan
from waysaid.site.planning import row_of

PAPERS = ("sheet",)


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
def test_a_paper_speaks_the_language_of_the_desk(cast, plan, paper):
    cast.school_class.desk_language = "es"
    cast.school_class.save()
    check_tagged(opened(cast.owner.get(f"/plans/{plan.pk}/{paper}.pdf").content), "es")


def test_names_are_on_a_paper_only_when_they_are_asked_for(cast, plan):
    path = f"/plans/{plan.pk}/sheet.pdf"
    assert "Aroha" not in text_of(opened(cast.owner.get(path).content))
    assert "Aroha" in text_of(opened(cast.owner.get(f"{path}?names=on").content))


@pytest.mark.parametrize("paper", PAPERS)
def test_a_paper_is_nobody_elses(cast, plan, paper):
    path = f"/plans/{plan.pk}/{paper}.pdf"
    assert cast.colleague.get(path).status_code == 404
    assert cast.outsider.get(path).status_code == 403
    assert f'action="{path}"' in cast.owner.get(f"/plans/{plan.pk}").text
