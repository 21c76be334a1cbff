"""The class's record: take it along, or take it away, a child's or the whole."""

from typing import Any

from django.conf import settings
from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.text import slugify
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.site.backups import can_copy
from waysaid.site.erasing import forget_child, forget_class, mentions_of
from waysaid.site.exporting import child_record, class_record
from waysaid.site.keep_dates import is_end
from waysaid.site.keeping import keeping_of, say
from waysaid.site.models import Child, SchoolClass
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class, teacher_of

MOST_DAYS = 3650
"""Days after a year's end: ten years (our choice)."""


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def record_page(request: HttpRequest) -> HttpResponse:
    """Say what is kept and how long, and offer to take it along or away."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    error = _keep(request, school_class) if request.method == "POST" else ""
    if request.method == "POST" and not error:
        return redirect("/class/record#long")
    context = {
        "here": "class",
        "part": "record",
        "school_class": school_class,
        "children": school_class.children.all(),
        "talks": school_class.talks.count(),
        "plans": school_class.plans.count(),
        "keeping": keeping_of(school_class),
        "most_days": settings.KEEP_DAYS,
        "due": say(school_class, timezone.localdate()),
        "can_copy": can_copy(),
        "error": error,
    }
    return render(request, "waysaid/class_record.html", context, status=400 if error else 200)


def _keep(request: HttpRequest, school_class: SchoolClass) -> str:
    """Take how long things are kept; return one sentence for what cannot be."""
    kept = keeping_of(school_class)
    days, ends = request.POST.get("days", ""), request.POST.get("ends", "").strip()
    if not (days.isascii() and days.isdigit() and int(days[:6]) <= MOST_DAYS):
        return _("Give the days after the year’s end as a whole number from 0 to %(most)s.") % {
            "most": MOST_DAYS
        }
    if not is_end(ends):
        return _("Give the year’s end as month and day, such as 07-31.")
    kept.on, kept.days, kept.ends = request.POST.get("on") == "yes", int(days), ends
    kept.said_on = None
    kept.save()
    return ""


@require_safe
@asks(Act.KEEP)
def record_json(request: HttpRequest) -> HttpResponse:
    """Return everything kept of the class as one JSON file."""
    school_class = _class(request)
    return _file(class_record(school_class), school_class.name)


@require_safe
@asks(Act.KEEP)
def child_record_page(request: HttpRequest, child_id: int) -> HttpResponse:
    """Show everything kept of one child, for a family that asks; nothing of another."""
    child: Child = get_object_or_404(_class(request).children, pk=child_id)
    context = {"here": "class", "child": child, "record": child_record(child)}
    return render(request, "waysaid/child_record.html", context)


@require_safe
@asks(Act.KEEP)
def child_json(request: HttpRequest, child_id: int) -> HttpResponse:
    """Return everything kept of one child as one JSON file."""
    child: Child = get_object_or_404(_class(request).children, pk=child_id)
    return _file(child_record(child), child.name)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def forget_child_page(request: HttpRequest, child_id: int) -> HttpResponse:
    """Ask what is to go, then take it away."""
    school_class = _class(request)
    child: Child = get_object_or_404(school_class.children, pk=child_id)
    if request.method == "POST":
        left = forget_child(
            child,
            said_too=request.POST.get("what") == "all",
            in_words=request.POST.get("in_words") == "yes",
        )
        return _still_in(request, left) if left else redirect("class-record")
    context = {
        "here": "class",
        "school_class": school_class,
        "child": child,
        "mentions": mentions_of(child),
        "can_copy": can_copy(),
    }
    return render(request, "waysaid/forget_child.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def forget_class_page(request: HttpRequest) -> HttpResponse:
    """Ask for the class's name as a second thought, then take the class away."""
    school_class = _class(request)
    error = ""
    if request.method == "POST":
        if request.POST.get("name", "").strip().casefold() == school_class.name.casefold():
            left = forget_class(school_class, backups_too=request.POST.get("backups") == "yes")
            return _still_in(request, left) if left else redirect("home")
        error = _("Type the class’s name, “%(name)s”, to delete it.") % {"name": school_class.name}
    context = {
        "here": "class",
        "school_class": school_class,
        "error": error,
        "can_copy": can_copy(),
    }
    return render(request, "waysaid/forget_class.html", context, status=400 if error else 200)


def _file(record: dict[str, Any], of: str) -> HttpResponse:
    options = {"indent": 1, "ensure_ascii": False}
    response = JsonResponse(record, json_dumps_params=options)
    name = f"{slugify(of) or 'class'}-{timezone.localdate():%Y-%m-%d}.json"
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response


def _still_in(request: HttpRequest, left: list[str]) -> HttpResponse:
    """Say which backups could not be changed: what was deleted here is still in them."""
    return render(request, "waysaid/still_in.html", {"here": "class", "left": left})


def _class(request: HttpRequest) -> SchoolClass:
    """Return the class of the moment, which must be this teacher's own."""
    teacher_of(request)
    school_class = current_class(request)
    if school_class is None:
        raise not_here()
    return school_class
