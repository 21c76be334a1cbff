"""Hand a class over to next year's teacher, and take what was handed over."""

from datetime import date
from typing import Any

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from waysaid.site.handed_file import LARGEST_BYTES, BadHandedError, read_handed
from waysaid.site.handing import (
    LEAVE_OUT,
    LIFE,
    NEW,
    Chosen,
    chosen_of,
    hand_to,
    take,
    waiting_for,
    without_ids,
)
from waysaid.site.models import SchoolClass
from waysaid.site.people_models import HandedOver
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.sharing import can_share
from waysaid.site.views.guards import asks, current_class, teacher_of
from waysaid.site.wording import wording_of
from waysaid.ways import Family


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def hand_page(request: HttpRequest) -> HttpResponse:
    """Ask what is to be handed over; give it as a file, or let it wait for a colleague."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _hand(request, school_class)
    chosen = _chosen(request, school_class)
    if not (chosen.children or chosen.strings):
        return _hand(request, school_class, _("Choose something to hand over."))
    if not chosen.children and (chosen.ways or chosen.picture):
        sentence = _("A child’s ways and the class picture go with names: choose the children.")
        return _hand(request, school_class, sentence)
    if request.POST.get("do") == "file":
        content = without_ids(chosen_of(school_class, chosen))
        response = JsonResponse(content, json_dumps_params={"indent": 1, "ensure_ascii": False})
        name = f"handed-over-{timezone.localdate():%Y-%m-%d}.json"
        response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
        return response
    account = request.POST.get("account", "").strip()
    if not can_share() or not account:
        return _hand(request, school_class, _("Type the name your colleague signs in with."))
    hand_to(school_class, account, chosen)
    return redirect("class-hand")


def _chosen(request: HttpRequest, school_class: SchoolClass) -> Chosen:
    there = {child.key for child in school_class.children.all()}
    what = set(request.POST.getlist("what"))
    names = set(request.POST.getlist("child")) & there if "names" in what else set()
    return Chosen(frozenset(names), "ways" in what, "picture" in what, "strings" in what)


def _hand(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    context = {
        "here": "class",
        "part": "record",
        "school_class": school_class,
        "children": school_class.children.all(),
        "waiting": school_class.handing_over.filter(expires_at__gt=timezone.now()).exclude(
            giver=""
        ),
        "taken": school_class.handed_over.exists(),
        "can_share": can_share(),
        "days": LIFE.days,
        "typed": request.POST,
        "what": request.POST.getlist("what"),
        "error": error,
    }
    return render(request, "waysaid/hand_over.html", context, status=400 if error else 200)


@require_POST
@asks(Act.KEEP)
def withdraw(request: HttpRequest, handed_id: int) -> HttpResponse:
    """Take back what still waits for a colleague."""
    school_class = current_class(request)
    if school_class is None:
        raise not_here()
    get_object_or_404(school_class.handing_over, pk=handed_id).delete()
    return redirect("class-hand")


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.CLASS)
def handed_page(request: HttpRequest) -> HttpResponse:
    """Show what the class took and what waits for its teacher; take a file."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    error = ""
    if request.method == "POST" and request.POST.get("do") == "forget":
        school_class.handed_over.all().delete()
        return redirect("class-handed")
    if request.method == "POST":
        sent = request.FILES.get("file")
        try:
            content = read_handed(bytes(sent.read(LARGEST_BYTES + 1)) if sent else b"")
        except BadHandedError as bad:
            error = str(bad)
        else:
            handed = HandedOver.objects.create(
                to=teacher_of(request).username,
                came_from=school_class,
                content=content,
                expires_at=timezone.now() + LIFE,
            )
            return redirect("handed-take", handed_id=handed.pk)
    names = {child.key: child.name for child in school_class.children.all()}
    context = {
        "here": "class",
        "part": "record",
        "school_class": school_class,
        "waiting": waiting_for(teacher_of(request).username),
        "children": [
            {**_row(school_class, row), "name": names[row["child"]]}
            for handed in school_class.handed_over.all()
            for row in handed.content.get("children", ())
            if row["child"] in names
        ],
        "error": error,
    }
    return render(request, "waysaid/handed.html", context, status=400 if error else 200)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.CLASS)
def take_page(request: HttpRequest, handed_id: int) -> HttpResponse:
    """Show what was handed over to her, and take it into the class, or leave it."""
    school_class = current_class(request)
    waiting = {each.pk: each for each in waiting_for(teacher_of(request).username)}
    if school_class is None or handed_id not in waiting:
        raise not_here()
    handed = waiting[handed_id]
    rows = handed.content.get("children", [])
    if request.method == "POST":
        if request.POST.get("do") == "leave":
            handed.delete()
        else:
            goes = {at: request.POST.get(f"goes-{at}", LEAVE_OUT) for at in range(len(rows))}
            take(handed, school_class, goes)
        return redirect("class-handed")
    there = list(school_class.children.all())
    by_name = {child.name.casefold(): child.key for child in there}
    context = {
        "here": "class",
        "school_class": school_class,
        "handed": handed,
        "rows": [
            {**_row(school_class, row), "to": by_name.get(row["name"].casefold(), NEW)}
            for row in rows
        ],
        "strings": handed.content.get("strings", []),
        "there": there,
    }
    return render(request, "waysaid/handed_take.html", context)


def _row(school_class: SchoolClass, row: dict[str, Any]) -> dict[str, Any]:
    """Return what was handed over of a child, families by the names this class has for them."""
    wording = wording_of(school_class)
    families = [
        {
            "name": wording.name(Family(each["family"])),
            "first": _day(each["first"]),
            "latest": _day(each["latest"]),
        }
        for each in row.get("families", ())
    ]
    ways = [{**each, "day": _day(each["day"])} for each in row.get("ways", ())]
    return {**row, "families": families, "ways": ways}


def _day(given: str) -> date | None:
    return date.fromisoformat(given) if given else None
