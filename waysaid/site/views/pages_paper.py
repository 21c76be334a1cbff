"""The papers of a plan as PDFs: the sheet to write a talk down on."""

from django.http import HttpRequest, HttpResponse
from django.utils.text import slugify
from django.views.decorators.http import require_safe

from waysaid.paper import Paper, Sheet, paper_pdf, recording_sheet
from waysaid.site.on_paper import plan_on_paper
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks
from waysaid.site.views.pages_plan import own_plan

SHEETS = (Sheet.A4, Sheet.LETTER)
"""What a school's printer holds."""


@require_safe
@asks(Act.PLAN)
def recording(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return the sheet on which a talk on this plan is written down by hand."""
    plan = own_plan(request, plan_id)
    shown = plan_on_paper(plan, names=bool(request.GET.get("names")))
    return pdf_of(request, recording_sheet(shown), f"{plan.title} sheet")


def pdf_of(request: HttpRequest, paper: Paper, name: str) -> HttpResponse:
    """Return a paper as a PDF on the sheet asked for."""
    asked = request.GET.get("size", "")
    sheet = next((each for each in SHEETS if each.value == asked), Sheet.A4)
    response = HttpResponse(paper_pdf(paper, sheet), content_type="application/pdf")
    file = f"{slugify(name) or 'paper'}-{sheet.value}.pdf"
    response.headers["Content-Disposition"] = f'inline; filename="{file}"'
    return response
