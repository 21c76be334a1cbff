"""Settings: the language of the pages, where the data is, a copy of it, what is old, licences."""

from datetime import timedelta
from importlib.metadata import version

from django.conf import settings
from django.db import connection
from django.db.models import QuerySet
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.views.decorators.http import require_http_methods, require_POST

from waysaid.site.backups import can_copy, copy_of_data
from waysaid.site.erasing import forget_talks
from waysaid.site.leanings import erase_leanings, leanings_of
from waysaid.site.models import Language, SchoolClass, Talk
from waysaid.site.refusal import not_here
from waysaid.site.views.guards import asks, teacher_of
from waysaid.site.views.pages_home import speak

AGES = (90, 180, 365)
"""Days after which talks may be taken away together: a term, half a year, a year (our choice)."""


@require_http_methods(["GET", "HEAD", "POST"])
@asks(None)
def settings_page(request: HttpRequest) -> HttpResponse:
    """Show the settings; take the language of all her classes' desks and of these pages."""
    if request.method == "POST" and request.POST.get("language") in Language.values:
        language = request.POST["language"]
        SchoolClass.objects.filter(owner=teacher_of(request)).update(desk_language=language)
        response = redirect("settings")
        speak(response, language)
        return response
    classes = SchoolClass.objects.filter(owner=teacher_of(request))
    context = {
        "here": "settings",
        "leanings": [(each, found) for each in classes if (found := leanings_of(each))],
        "languages": Language.choices,
        "version": version("waysaid"),
        "local": can_copy(),
        "folder": settings.DATA if not settings.SCHOOL_SERVER else "",
        "database": connection.vendor,
        "ages": [(days, _older(request, days).count()) for days in AGES],
    }
    return render(request, "waysaid/settings.html", context)


@require_POST
@asks(None)
def forget_leanings(request: HttpRequest) -> HttpResponse:
    """Let corrections of one of her classes count no more: those of a key, or all."""
    own = SchoolClass.objects.filter(owner=teacher_of(request))
    asked = request.POST.get("class", "")
    school_class = own.filter(pk=int(asked)).first() if asked.isdecimal() else None
    if school_class is None:
        raise not_here()
    erase_leanings(school_class, request.POST.get("key"))
    return redirect("settings")


@require_POST
@asks(None)
def backup(request: HttpRequest) -> HttpResponse:
    """Return a copy of the whole data; on a school's server there is nothing here."""
    if not can_copy():
        raise not_here()
    response = HttpResponse(copy_of_data(), content_type="application/vnd.sqlite3")
    name = f"waysaid-{timezone.localtime():%Y-%m-%d-%H%M}.sqlite3"
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response


@require_http_methods(["GET", "HEAD", "POST"])
@asks(None)
def forget_old_talks(request: HttpRequest) -> HttpResponse:
    """Ask, then take away the talks of all her classes that are older than so many days."""
    asked = (request.POST if request.method == "POST" else request.GET).get("days", "")
    days = int(asked) if asked.isdigit() and int(asked) in AGES else AGES[-1]
    old = _older(request, days)
    if request.method == "POST":
        forget_talks(list(old))
        return redirect("settings")
    context = {"here": "settings", "days": days, "talks": old}
    return render(request, "waysaid/forget_old.html", context)


def _older(request: HttpRequest, days: int) -> QuerySet[Talk]:
    before = timezone.now() - timedelta(days=days)
    return Talk.objects.filter(school_class__owner=teacher_of(request), made_at__lt=before)
