"""Papers as PDFs: those of a plan, and the page that goes home after a talk."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.utils.text import slugify
from django.views.decorators.http import require_safe

from waysaid.number import Language
from waysaid.paper import (
    Paper,
    Sheet,
    empty_sheet,
    family_page,
    paper_pdf,
    recording_sheet,
    substitute_pack,
)
from waysaid.site.models import SchoolClass
from waysaid.site.on_paper import plan_on_paper, problems_on_paper
from waysaid.site.record import at_hand
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class
from waysaid.site.views.pages_back import own_talk
from waysaid.site.views.pages_plan import own_plan

SHEETS = (Sheet.A4, Sheet.LETTER)
"""What a school's printer holds."""
PROBLEMS = 6
"""Problems on an empty sheet: as many as most strings have at most, two a page (our choice)."""


@require_safe
@asks(Act.PLAN)
def recording(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return the sheet on which a talk on this plan is written down by hand."""
    plan = own_plan(request, plan_id)
    shown = plan_on_paper(plan, names=_names_wanted(request))
    return pdf_of(request, recording_sheet(shown), f"{plan.title} sheet")


@require_safe
@asks(Act.PLAN)
def empty(request: HttpRequest) -> HttpResponse:
    """Return a recording sheet for a talk without a plan."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    language = Language(school_class.desk_language)
    return pdf_of(request, empty_sheet(school_class.name, language, PROBLEMS), "sheet")


@require_safe
@asks(Act.PLAN)
def substitute(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return the pack for whoever holds the talk on this plan in the teacher's place."""
    plan = own_plan(request, plan_id)
    shown = plan_on_paper(plan, names=_names_wanted(request))
    return pdf_of(request, substitute_pack(shown), f"{plan.title} pack")


@require_safe
@asks(Act.PLAN)
def family(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return the page that goes home, with the problems of this plan."""
    plan = own_plan(request, plan_id)
    language = _language(request, plan.school_class)
    texts = [str(row["text"]) for row in plan.problems]
    shown = problems_on_paper(texts, plan.made_for, language)
    return pdf_of(request, family_page(shown), f"family {language.value}")


@require_safe
@asks(Act.LOOK_BACK)
def family_of_talk(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return the page that goes home, with the problems that this talk came to."""
    talk = own_talk(request, talk_id)
    language = _language(request, talk.school_class)
    state = at_hand(talk.pk).state
    texts = [each.text for each in state.problems if each.id in state.shown]
    shown = problems_on_paper(texts, talk.made_at, language)
    return pdf_of(request, family_page(shown), f"family {language.value}")


def pdf_of(request: HttpRequest, paper: Paper, name: str) -> HttpResponse:
    """Return a paper as a PDF on the sheet asked for."""
    asked = request.GET.get("size", "")
    sheet = next((each for each in SHEETS if each.value == asked), Sheet.A4)
    response = HttpResponse(paper_pdf(paper, sheet), content_type="application/pdf")
    file = f"{slugify(name) or 'paper'}-{sheet.value}.pdf"
    response.headers["Content-Disposition"] = f'inline; filename="{file}"'
    return response


def _names_wanted(request: HttpRequest) -> bool:
    return bool(request.GET.get("names"))


def _language(request: HttpRequest, school_class: SchoolClass) -> Language:
    """Return the language asked for; the board's where none of ours is."""
    asked = request.GET.get("language", "")
    return Language(asked if asked in set(Language) else school_class.board_language)
