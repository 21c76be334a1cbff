"""Starter strings: look through them by grade and focus, and plan with one."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import get_language
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.number import Language, text
from waysaid.site.first_problems import grade_of
from waysaid.site.models import SchoolClass
from waysaid.site.plan_view import links_shown, rows_shown
from waysaid.site.planning import plan_of_starter, rows_of_starter, starter_named
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.talk_rows import printed
from waysaid.site.views.guards import asks, current_class
from waysaid.site.wording import wording_of
from waysaid.strings import GRADES, starter_text, starters


@require_safe
@asks(Act.PLAN)
def starters_page(request: HttpRequest) -> HttpResponse:
    """Show the starters of a grade, all or of one focus."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    language, wording = _language(), wording_of(school_class)
    grade = grade_of(request, school_class)
    of_grade = [each for each in starters() if each.grade == grade]
    focus = request.GET.get("focus", "")
    shown = [each for each in of_grade if focus in ("", each.focus.value)] or of_grade
    context = {
        "here": "plans",
        "grade": grade,
        "grades": GRADES,
        "focus": focus if shown != of_grade else "",
        "focuses": {each.focus.value: wording.name(each.focus) for each in of_grade},
        "starters": [
            {
                "slug": each.slug,
                "text": starter_text(each, language),
                "focus": wording.name(each.focus),
                "problems": [printed(text(problem)) for problem in each.problems],
            }
            for each in shown
        ],
    }
    return render(request, "waysaid/starters.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def starter_page(request: HttpRequest, slug: str) -> HttpResponse:
    """Show one starter whole; make a plan of it."""
    school_class: SchoolClass | None = current_class(request)
    starter = starter_named(slug)
    if school_class is None:
        return redirect("welcome")
    if starter is None:
        raise not_here()
    if request.method == "POST":
        plan = plan_of_starter(school_class, starter)
        plan.save()
        return redirect("plan", plan_id=plan.pk)
    language, wording = _language(), wording_of(school_class)
    rows = rows_of_starter(starter, language.value)
    context = {
        "here": "plans",
        "starter": starter,
        "text": starter_text(starter, language),
        "focus": wording.name(starter.focus),
        "rows": rows_shown(rows, wording, starter.focus),
        "links": links_shown(rows, language),
    }
    return render(request, "waysaid/starter.html", context)


def _language() -> Language:
    return Language((get_language() or "en")[:2])
