"""What a person sees when something could not be done: one plain sentence, never a false saved."""

import sys

from django.db import DatabaseError
from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import render
from django.utils.translation import gettext as _

from waysaid.site.refusal import RefusalError, not_here

INSUFFICIENT_STORAGE = 507


def disk_refusal(error: DatabaseError) -> RefusalError:
    """Return what to say when the database refused; nothing of the request was saved."""
    said = str(error).lower()
    if "full" in said or "no space" in said:
        return RefusalError(
            INSUFFICIENT_STORAGE,
            _("Not saved: the disk is full. Make room on it, and this will be tried again."),
        )
    if "readonly" in said or "read-only" in said or "unable to open" in said:
        return RefusalError(
            503,
            _(
                "Not saved: the data folder cannot be written to. "
                "Allow writing, and this will be tried again."
            ),
        )
    return RefusalError(
        503, _("Not saved: the disk did not answer in time. This will be tried again.")
    )


def answer(request: HttpRequest, refusal: RefusalError) -> HttpResponse:
    """Return the refusal as JSON to a script and as a page to a person."""
    if wants_json(request):
        return JsonResponse({"error": refusal.sentence}, status=refusal.status)
    context = {"sentence": refusal.sentence}
    return render(request, "waysaid/sentence.html", context, status=refusal.status)


def wants_json(request: HttpRequest) -> bool:
    """Tell whether a script asked, and not a person."""
    if request.content_type == "application/json":
        return True
    return request.path.endswith(".json") or "application/json" in request.headers.get("Accept", "")


def csrf_refused(request: HttpRequest, reason: str = "") -> HttpResponse:
    """Answer a form or a script that does not carry this page's own mark."""
    return answer(request, RefusalError(403, _("This page is out of date; load it again.")))


def page_not_found(request: HttpRequest, exception: Exception) -> HttpResponse:
    """Answer an address with nothing behind it."""
    return answer(request, not_here())


def server_error(request: HttpRequest) -> HttpResponse:
    """Answer when something went wrong that no view foresaw; a refusing disk is told as one."""
    error = sys.exc_info()[1]
    if isinstance(error, DatabaseError):
        refusal = disk_refusal(error)
    else:
        refusal = RefusalError(
            500, _("Something went wrong here. What was saved before is still saved.")
        )
    try:
        return answer(request, refusal)
    except Exception:
        return HttpResponse(refusal.sentence, status=refusal.status, content_type="text/plain")
