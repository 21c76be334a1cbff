"""The page on which a quick image is composed for a plan."""

from django.http import HttpRequest, HttpResponse, QueryDict
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from waysaid.number import Image, Language
from waysaid.site.models import Plan
from waysaid.site.picture_plan import (
    COLUMNS,
    LONGEST,
    ROWS,
    BadPictureChoiceError,
    Chosen,
    Kind,
    image_chosen,
    preview,
    seen_in,
    text_of,
    wanted,
)
from waysaid.site.planning import MOST_PROBLEMS, row_of
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks
from waysaid.site.views.pages_plan import own_plan

FIRST = Chosen(Kind.FRAME, "7")
MOST_SEEDS = 10**6


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def picture_page(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Show a quick image as it is chosen; put it into the plan."""
    plan = own_plan(request, plan_id)
    given = request.POST if request.method == "POST" else request.GET
    chosen = _chosen(given)
    try:
        image = image_chosen(chosen)
    except BadPictureChoiceError as error:
        return _page(request, plan, chosen, None, str(error))
    if request.method == "POST" and given.get("do") == "add":
        if len(plan.problems) >= MOST_PROBLEMS:
            full = _("A plan has at most %(most)s problems.") % {"most": MOST_PROBLEMS}
            return _page(request, plan, chosen, image, full)
        row = row_of(image)
        plan.problems = [*plan.problems, row]
        plan.save()
        return redirect(f"{reverse('plan', args=[plan.pk])}#row-{row['id']}")
    return _page(request, plan, chosen, image)


def _chosen(given: QueryDict) -> Chosen:
    """Return what the form holds; where it holds nothing, something to begin with."""
    kind = given.get("kind", "")
    if kind not in list(Kind):
        return FIRST
    seed = given.get("seed", "")
    known = int(seed) % MOST_SEEDS if seed.isascii() and seed.isdigit() and len(seed) < 9 else 1
    placed = [place.split(",") for place in given.getlist("at")]
    return Chosen(
        Kind(kind),
        given.get("numbers", "")[:LONGEST],
        known + (given.get("do") == "another"),
        frozenset((int(x), int(y)) for x, y in (p for p in placed if _place(p))),
    )


def _place(parts: list[str]) -> bool:
    return len(parts) == 2 and all(p.isascii() and p.isdigit() and len(p) < 4 for p in parts)


def _page(
    request: HttpRequest, plan: Plan, chosen: Chosen, image: Image | None, error: str = ""
) -> HttpResponse:
    language = Language(plan.school_class.desk_language)
    kinds = {
        Kind.FRAME: _("Ten frame, row by row"),
        Kind.PAIRS: _("Ten frame, two by two"),
        Kind.DICE: _("Dice patterns"),
        Kind.ARRAY: _("Rows"),
        Kind.GROUPS: _("Groups of dots"),
        Kind.HAND: _("Placed by you"),
    }
    context = {
        "here": "plans",
        "plan": plan,
        "chosen": chosen,
        "kinds": kinds,
        "wanted": wanted(chosen.kind),
        "error": error,
        "image": image,
        "text": text_of(image) if image is not None else "",
        "preview": preview(image, language) if image is not None else None,
        "seen": seen_in(image, language) if image is not None else (),
        "grid": [
            [(f"{x},{y}", (x, y) in chosen.placed, down, across) for across, x in _nth(COLUMNS)]
            for down, y in _nth(ROWS)
        ],
        "by_hand": chosen.kind is Kind.HAND,
        "by_seed": chosen.kind is Kind.GROUPS,
    }
    return render(request, "waysaid/picture.html", context, status=400 if error else 200)


def _nth(places: range) -> list[tuple[int, int]]:
    return list(enumerate(places, 1))
