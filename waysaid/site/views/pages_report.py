"""The report over several talks, as a PDF for the teacher's own file."""

from datetime import date

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.utils.translation import gettext as _
from django.views.decorators.http import require_safe

from waysaid.paper import class_report
from waysaid.site.class_report import half_term, report_of
from waysaid.site.refusal import RefusalError
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class
from waysaid.site.views.pages_paper import pdf_of

LONGEST = 366
"""Days between the first and the last: a report is over weeks or months (our choice)."""


@require_safe
@asks(Act.LOOK_BACK)
def report(request: HttpRequest) -> HttpResponse:
    """Return the report over the talks between two days; over half a term where none are named."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    start, end = half_term()
    first = _day(request.GET.get("from", start.isoformat()))
    last = _day(request.GET.get("to", end.isoformat()))
    if not 0 <= (last - first).days < LONGEST:
        raise RefusalError(
            400, _("A report begins with a day up to a year before the one it ends with.")
        )
    paper = class_report(report_of(school_class, first, last))
    return pdf_of(request, paper, f"report {first} {last}")


def _day(typed: str) -> date:
    try:
        found = date.fromisoformat(typed)
    except ValueError:
        found = date.min
    if not date(2000, 1, 1) <= found <= date(2999, 12, 31):
        raise RefusalError(
            400, _("“%s” is no day of a report; one such as 2026-11-05 would fit.") % typed[:20]
        )
    return found
