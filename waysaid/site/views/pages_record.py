"""The class's record: take it along, or take it away, a child's or the whole."""

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.text import slugify
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.site.erasing import class_record, forget_child, forget_class
from waysaid.site.models import Child, SchoolClass
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class, teacher_of


@require_safe
@asks(Act.KEEP)
def record_page(request: HttpRequest) -> HttpResponse:
    """Say what is kept, and offer to take it along or away."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    context = {
        "here": "class",
        "part": "record",
        "school_class": school_class,
        "children": school_class.children.all(),
        "talks": school_class.talks.count(),
        "plans": school_class.plans.count(),
    }
    return render(request, "waysaid/class_record.html", context)


@require_safe
@asks(Act.KEEP)
def record_json(request: HttpRequest) -> HttpResponse:
    """Return everything kept of the class as one JSON file."""
    school_class = _class(request)
    name = f"{slugify(school_class.name) or 'class'}-{timezone.localdate():%Y-%m-%d}.json"
    response = JsonResponse(
        class_record(school_class), json_dumps_params={"indent": 1, "ensure_ascii": False}
    )
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def forget_child_page(request: HttpRequest, child_id: int) -> HttpResponse:
    """Ask what is to go, then take it away."""
    school_class = _class(request)
    child: Child = get_object_or_404(school_class.children, pk=child_id)
    if request.method == "POST":
        forget_child(child, said_too=request.POST.get("what") == "all")
        return redirect("class-record")
    context = {"here": "class", "school_class": school_class, "child": child}
    return render(request, "waysaid/forget_child.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def forget_class_page(request: HttpRequest) -> HttpResponse:
    """Ask for the class's name as a second thought, then take the class away."""
    school_class = _class(request)
    error = ""
    if request.method == "POST":
        if request.POST.get("name", "").strip().casefold() == school_class.name.casefold():
            forget_class(school_class)
            return redirect("home")
        error = _("Type the class’s name, “%(name)s”, to delete it.") % {"name": school_class.name}
    context = {"here": "class", "school_class": school_class, "error": error}
    return render(request, "waysaid/forget_class.html", context, status=400 if error else 200)


def _class(request: HttpRequest) -> SchoolClass:
    """Return the class of the moment, which must be this teacher's own."""
    teacher_of(request)
    school_class = current_class(request)
    if school_class is None:
        raise not_here()
    return school_class
