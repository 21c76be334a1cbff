"""The plans: a list, one to work on, one to print."""

from collections.abc import Mapping
from datetime import date

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from waysaid.number import Language, Unreadable, parse, text
from waysaid.site.composing import (
    WARMER,
    around,
    cost_said,
    ideas,
    is_fresh,
    keep_added,
    say_why_anew,
    take_idea,
    take_wish,
)
from waysaid.site.models import Plan, SchoolClass
from waysaid.site.paging import page_asked, page_of
from waysaid.site.plan_files import plan_text
from waysaid.site.plan_view import links_shown, rows_shown, summary
from waysaid.site.planning import (
    LONGEST_WHY,
    MOST_PROBLEMS,
    Row,
    UnreadableLineError,
    another,
    focus_of_plan,
    in_order,
    moved,
    rows_typed,
    starter_named,
    take_string,
)
from waysaid.site.refusal import RefusalError, not_here
from waysaid.site.rights import Act
from waysaid.site.talks import todays_title
from waysaid.site.views.failures import wants_json
from waysaid.site.views.guards import asks, current_class, her_classes
from waysaid.site.wishing import choices, kept_wish, suggested, typed_wish, wish_in
from waysaid.site.wording import wording_of
from waysaid.strings import WishError, starter_text

MOST_QUESTIONS = 12
LONGEST_QUESTION = 200
MOST_TYPED = 2000
BROUGHT_BACK = ("title", "problems", "questions", "starter", "wish")
"""What one button brings back after another string was taken."""
PAGE = 30
"""Plans on one page."""


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def plans_page(request: HttpRequest) -> HttpResponse:
    """Show the plans; make one from problems typed one a line."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _list(request, school_class)
    typed = request.POST.get("problems", "")[:MOST_TYPED]
    try:
        rows = rows_typed(typed)
    except UnreadableLineError as error:
        return _list(request, school_class, line_said(error, school_class))
    if not rows:
        return _list(request, school_class, _("Type at least one problem, such as 39 + 27."))
    if len(rows) > MOST_PROBLEMS:
        return _list(request, school_class, _most())
    title = " ".join(request.POST.get("title", "").split())[:120] or todays_title(school_class)
    plan = Plan.objects.create(school_class=school_class, title=title, problems=rows)
    return redirect("plan", plan_id=plan.pk)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def plan_page(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Show a plan; take what was changed in it, then do what the button says."""
    plan = own_plan(request, plan_id)
    if request.method != "POST":
        return _plan(request, plan)
    opened = request.POST.get("open", "")
    before, wished = _texts(plan), plan.wish
    try:
        opened = _take(request, plan, opened)
    except UnreadableLineError as error:
        return _refused(request, plan, line_said(error, plan.school_class))
    except Unreadable as error:
        return _refused(request, plan, error.sentence(_language(plan)))
    except WishError as error:
        return _refused(request, plan, error.named)
    if _texts(plan) != before:
        composed_anew = request.POST.get("do") == "compose" and plan.wish != wished
        _note_change(request, plan, [] if composed_anew else before)
    plan.save()
    _warm(plan)
    if wants_json(request):
        locked = [row["id"] for row in plan.problems if row.get("locked")]
        cost, as_text = _cost(request, plan), plan_text(plan)
        return JsonResponse({"saved": True, "cost": cost, "locked": locked, "as_text": as_text})
    return redirect(_address(request, plan, opened))


def _address(request: HttpRequest, plan: Plan, opened: str) -> str:
    """Return where a plan's page goes on: at the opened row, or at what was asked for."""
    address, what = reverse("plan", args=[plan.pk]), request.POST.get("do", "")
    if opened:
        return f"{address}?open={opened}#row-{opened}"
    return f"{address}?ideas=yes#ideas" if what == "ideas" else address


def _warm(plan: Plan) -> None:
    """Have ready what composing the rest again takes."""
    wish = kept_wish(plan)
    if wish is not None:
        WARMER.ask(around(plan, wish, is_fresh(plan)))


def _texts(plan: Plan) -> list[str]:
    return [str(row["text"]) for row in plan.problems]


def _note_change(request: HttpRequest, plan: Plan, before: list[str]) -> None:
    """Keep what stood in a composed plan before, to say what the change costs."""
    request.session["plan-cost"] = [plan.pk, before]
    if request.POST.get("do", "").partition(":")[0] not in ("compose", "take", "back"):
        say_why_anew(plan)


def _cost(request: HttpRequest, plan: Plan) -> list[str]:
    kept, before = request.session.get("plan-cost") or (0, [])
    return cost_said(plan, before) if kept == plan.pk else []


@require_POST
@asks(Act.PLAN)
def remove_plan(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Take a plan away; talks that were on it stay."""
    own_plan(request, plan_id).delete()
    return redirect("plans")


@require_safe
@asks(Act.PLAN)
def print_plan(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Show a whole plan, every way and drawing with it, to be printed."""
    plan = own_plan(request, plan_id)
    return render(request, "waysaid/plan_print.html", _shown(plan))


def own_plan(request: HttpRequest, plan_id: int) -> Plan:
    """Return a plan of the teacher's own; another's is as good as not there."""
    plans = Plan.objects.select_related("school_class")
    return get_object_or_404(plans, pk=plan_id, school_class__in=her_classes(request))


def _language(plan: Plan) -> Language:
    return Language(plan.school_class.desk_language)


def line_said(error: UnreadableLineError, school_class: SchoolClass) -> str:
    """Return the sentence for a line that cannot be read, with its place."""
    sentence = error.problem.sentence(Language(school_class.desk_language))
    return _("Line %(line)s: %(sentence)s") % {"line": error.line, "sentence": sentence}


def _most() -> str:
    return _("A plan has at most %(most)s problems.") % {"most": MOST_PROBLEMS}


def _take(request: HttpRequest, plan: Plan, opened: str) -> str:
    """Take what was typed, do what the button says; return the id of the row to open.

    Raises `Unreadable` or `UnreadableLineError`; the plan is not saved then.
    """
    given, typed = request.POST, request.POST.dict()
    what, _sep, which = given.get("do", "save").partition(":")
    for row in plan.problems:
        if f"text-{row['id']}" in given and not (what == "remove" and which == row["id"]):
            _take_row(plan, row, typed)
    if "title" in given:
        _take_head(request, plan)
    _take_more(plan, given.get("more", "")[:MOST_TYPED])
    return _do(request, plan, (what, which), opened)


def _take_row(plan: Plan, row: Row, given: Mapping[str, str]) -> None:
    """Take what was typed in a row; a problem changed in a composed plan is locked with that."""
    typed = text(parse(given[f"text-{row['id']}"].strip()))
    why = " ".join(given.get(f"why-{row['id']}", "").split())[:LONGEST_WHY]
    if typed != row["text"] and plan.wish:
        row["locked"] = True
    if why != row.get("why", ""):
        row["own"] = bool(why)
    row["text"], row["why"] = typed, why


def _take_head(request: HttpRequest, plan: Plan) -> None:
    given = request.POST
    plan.title = " ".join(given["title"].split())[:120] or plan.title
    lines = [" ".join(line.split())[:LONGEST_QUESTION] for line in given["questions"].splitlines()]
    plan.questions = [line for line in lines if line][:MOST_QUESTIONS]
    try:
        plan.made_for = date.fromisoformat(given.get("made_for", ""))
    except ValueError:
        plan.made_for = None


def _take_more(plan: Plan, typed: str) -> None:
    added = rows_typed(typed)
    if len(plan.problems) + len(added) > MOST_PROBLEMS:
        raise RefusalError(400, _most())
    plan.problems = [*plan.problems, *added]
    if added and plan.wish:
        keep_added(plan, added)


def _do(request: HttpRequest, plan: Plan, button: tuple[str, str], opened: str) -> str:
    what, which = button
    match what:
        case "open":
            return which
        case "close":
            return ""
        case "lock":
            for row in plan.problems:
                row["locked"] = bool(row.get("locked")) ^ (row["id"] == which)
        case "up" | "down":
            plan.problems = moved(plan.problems, which, -1 if what == "up" else 1)
            return which
        case "order":
            plan.problems = in_order(plan.problems, which.split(","))
        case "remove":
            _keep_before(request, plan)
            plan.problems = [row for row in plan.problems if row["id"] != which]
        case "another" | "compose" | "take" | "back" | "ideas":
            _do_whole(request, plan, what, which)
            return ""
    return opened if any(row["id"] == opened for row in plan.problems) else ""


def _do_whole(request: HttpRequest, plan: Plan, what: str, which: str) -> None:
    """Do what changes the whole string; what stood there before can be brought back."""
    if what == "back":
        _go_back(request, plan)
        return
    if what == "ideas":
        return
    _keep_before(request, plan)
    if what == "compose":
        fields = typed_wish(request.POST)
        take_wish(plan, wish_in(fields, _language(plan)), bool(fields["fresh"]))
    elif what == "take":
        take_idea(plan, int(which) if which.isdecimal() else 0)
    elif (starter := another(plan)) is not None:
        take_string(plan, starter)


def _keep_before(request: HttpRequest, plan: Plan) -> None:
    """Keep the plan as it was, so that one button brings it back."""
    kept = [plan.pk, *(getattr(plan, name) for name in BROUGHT_BACK)]
    request.session["plan-before"] = kept


def _go_back(request: HttpRequest, plan: Plan) -> None:
    kept = request.session.pop("plan-before", None)
    if kept and kept[0] == plan.pk:
        for name, value in zip(BROUGHT_BACK, kept[1:], strict=False):
            setattr(plan, name, value)


def _refused(request: HttpRequest, plan: Plan, sentence: str) -> HttpResponse:
    if wants_json(request):
        return JsonResponse({"error": sentence}, status=400)
    return _plan(request, own_plan(request, plan.pk), sentence)


def _list(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    context = {
        "here": "plans",
        "school_class": school_class,
        "page": page_of(school_class.plans.prefetch_related("talks"), page_asked(request), PAGE),
        "typed": request.POST,
        "error": error,
    }
    return render(request, "waysaid/plans.html", context, status=400 if error else 200)


def _shown(plan: Plan) -> dict[str, object]:
    language, wording = _language(plan), wording_of(plan.school_class)
    starter = starter_named(plan.starter)
    return {
        "here": "plans",
        "plan": plan,
        "rows": rows_shown(plan.problems, wording, focus_of_plan(plan)),
        "links": links_shown(plan.problems, language),
        "summary": summary(plan, wording),
        "purpose": starter_text(starter, language).purpose if starter else "",
        "as_text": plan_text(plan),
        "questions": "\n".join(str(each) for each in plan.questions),
    }


def _plan(request: HttpRequest, plan: Plan, error: str = "") -> HttpResponse:
    if not her_classes(request).filter(pk=plan.school_class_id).exists():
        raise not_here()
    before = request.session.get("plan-before") or [0]
    opened = request.POST.get("open") or request.GET.get("open", "")
    typed = "wish-focus" in request.POST
    _warm(plan)
    context = {
        **_shown(plan),
        "today": timezone.localdate(),
        "opened": opened,
        "typed": request.POST,
        "typed_text": request.POST.get(f"text-{opened}"),
        "typed_why": request.POST.get(f"why-{opened}"),
        "can_go_back": before[0] == plan.pk,
        **choices(wording_of(plan.school_class)),
        "wish": typed_wish(request.POST) if typed else suggested(plan),
        "wish_open": not plan.problems or request.POST.get("do") == "compose",
        "composed": kept_wish(plan) is not None,
        "cost": [] if error else _cost(request, plan),
        "ideas": ideas(plan) if "ideas" in request.GET else None,
        "error": error,
    }
    return render(request, "waysaid/plan.html", context, status=400 if error else 200)
