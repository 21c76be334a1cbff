"""The class page: who is in it."""

from django.db import transaction
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from waysaid.site.models import Child, SchoolClass
from waysaid.site.names import MOST_NAMES, BadNamesError, read_names, told_apart
from waysaid.site.views.guards import current_class, teachers_own


@require_http_methods(["GET", "HEAD", "POST"])
@teachers_own
def class_page(request: HttpRequest) -> HttpResponse:
    """Show the class list; take names to add."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method == "POST":
        try:
            add_children(school_class, request.POST.get("names", ""))
        except BadNamesError as error:
            most = {"found": str(error), "most": MOST_NAMES}
            sentence = _("There are %(found)s names here; a class has at most %(most)s.") % most
            return _page(request, school_class, sentence)
        return redirect("class")
    return _page(request, school_class)


def add_children(school_class: SchoolClass, pasted: str) -> None:
    """Add the names of a pasted list behind the others. Raises `BadNamesError` for too many."""
    with transaction.atomic():
        there = list(school_class.children.values_list("name", flat=True))
        new = told_apart(read_names(pasted), there)
        if len(there) + len(new) > MOST_NAMES * 2:
            raise BadNamesError(len(there) + len(new))
        Child.objects.bulk_create(
            Child(school_class=school_class, name=name, order=len(there) + place)
            for place, name in enumerate(new)
        )


def _page(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    children = school_class.children.filter(active=True)
    context = {"school_class": school_class, "children": children, "error": error}
    return render(request, "waysaid/class.html", context, status=400 if error else 200)
