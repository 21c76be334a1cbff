"""Compose a string: the page that asks for a wish and makes a plan of it."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.number import Language
from waysaid.site.composing import WARMER, take_wish
from waysaid.site.first_problems import grade_of
from waysaid.site.models import Plan, SchoolClass
from waysaid.site.planning import UnreadableLineError
from waysaid.site.refusal import RefusalError
from waysaid.site.rights import Act
from waysaid.site.talks import todays_title
from waysaid.site.views.guards import asks, current_class
from waysaid.site.views.pages_plan import line_said
from waysaid.site.wishing import choices, fields_of, first_wish, typed_wish, wish_in
from waysaid.site.wording import wording_of
from waysaid.strings import WishError


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def compose_page(request: HttpRequest) -> HttpResponse:
    """Ask for a wish; make a plan of the best string for it."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        first = first_wish(grade_of(request, school_class))
        WARMER.ask(first)
        return _form(request, school_class, fields_of(first))
    fields = typed_wish(request.POST)
    plan = Plan(school_class=school_class, title=todays_title(school_class))
    try:
        wish = wish_in(fields, Language(school_class.desk_language))
        take_wish(plan, wish, bool(fields["fresh"]))
    except UnreadableLineError as error:
        return _form(request, school_class, fields, line_said(error, school_class))
    except WishError as error:
        return _form(request, school_class, fields, error.named)
    plan.save()
    return redirect("plan", plan_id=plan.pk)


@require_safe
@asks(Act.PLAN)
def warm_page(request: HttpRequest) -> HttpResponse:
    """Have ready what a wish is composed from; there is nothing to see."""
    try:
        WARMER.ask(wish_in(typed_wish(request.GET), Language.EN))
    except UnreadableLineError as error:
        raise RefusalError(400, error.problem.sentence(Language.EN)) from None
    except WishError as error:
        raise RefusalError(400, error.named) from None
    return HttpResponse(status=204)


def _form(
    request: HttpRequest, school_class: SchoolClass, fields: dict[str, str], error: str = ""
) -> HttpResponse:
    context = {
        "here": "plans",
        **choices(wording_of(school_class)),
        "wish": fields,
        "error": error,
    }
    return render(request, "waysaid/compose.html", context, status=400 if error else 200)
