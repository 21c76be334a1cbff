"""A talk held on paper, typed in: its lines read as they come, then kept as a past talk."""

import re
from datetime import date

from django.db import DatabaseError
from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods, require_POST

from waysaid.site.models import Plan, new_token
from waysaid.site.planning import MOST_PROBLEMS, UnreadableLineError, rows_typed
from waysaid.site.rights import Act
from waysaid.site.talk_rows import printed
from waysaid.site.talks import title_of_day
from waysaid.site.views.failures import disk_refusal
from waysaid.site.views.guards import asks, current_class
from waysaid.site.views.pages_plan import MOST_TYPED, line_said, own_plan
from waysaid.site.written_talk import (
    Section,
    WrittenTalk,
    keep_written,
    kept_before,
    written_talk,
)

PLANS_SHOWN = 12
MARK = re.compile(r"[A-Za-z0-9_-]{16}")
"""What a page sends with its talk, so that the same page keeps one talk however often."""
NOTICED = "noticed"


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.TEACH)
def choose_page(request: HttpRequest) -> HttpResponse:
    """Choose the plan that a talk on paper was on, or type its problems."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    error = ""
    if request.method == "POST":
        try:
            rows = rows_typed(request.POST.get("problems", "")[:MOST_TYPED])
        except UnreadableLineError as wrong:
            rows, error = [], line_said(wrong, school_class)
        if 0 < len(rows) <= MOST_PROBLEMS:
            title = title_of_day(school_class, timezone.localtime())
            plan = Plan.objects.create(school_class=school_class, title=title, problems=rows)
            return redirect("plan-written", plan_id=plan.pk)
        error = error or _("Type 1 to %(most)s problems, one a line.") % {"most": MOST_PROBLEMS}
    context = {
        "here": "back",
        "plans": school_class.plans.all()[:PLANS_SHOWN],
        "typed": request.POST.get("problems", ""),
        "error": error,
    }
    return render(request, "waysaid/written_choose.html", context, status=400 if error else 200)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.TEACH)
def written_page(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Take what was written down on paper of a talk on this plan; bad lines keep all of it here."""
    plan = own_plan(request, plan_id)
    if request.method != "POST":
        return _page(request, plan, written_talk(plan, {}, ""))
    told = _told(request, plan)
    if request.POST.get("do") == "check":
        return _page(request, plan, told)
    day = _day(request.POST.get("day", ""))
    error = _refused(told, day)
    if error or day is None:
        return _page(request, plan, told, error)
    try:
        talk = keep_written(plan, told, day, _client(request))
    except DatabaseError as wrong:
        refusal = disk_refusal(wrong)
        return _page(request, plan, told, refusal.sentence, refusal.status)
    return redirect("back", talk_id=talk.pk)


@require_POST
@asks(Act.TEACH)
def written_json(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return how each line is read so far, by the section, and whether it was kept before.

    Nothing is kept here.
    """
    plan = own_plan(request, plan_id)
    told = _told(request, plan)
    sections = {**told.sections, NOTICED: told.noticed}
    read = {key: _section_json(each) for key, each in sections.items()}
    kept = kept_before(plan, _client(request)) is not None
    return JsonResponse({"sections": read, "kept": kept})


def _told(request: HttpRequest, plan: Plan) -> WrittenTalk:
    given = request.POST
    ids = [str(row["id"]) for row in plan.problems]
    typed = {each: given.get(f"lines-{each}", "") for each in ids}
    return written_talk(plan, typed, given.get(NOTICED, ""))


def _section_json(section: Section) -> dict[str, object]:
    lines = [
        {"number": each.number, "says": each.says, "wrong": each.wrong} for each in section.shown
    ]
    return {"lines": lines, "sum": _summed(section)}


def _summed(section: Section) -> str:
    """Return what has come together in a section, in a few words."""
    many, wrong = len(section.shown), sum(each.wrong for each in section.shown)
    if not many:
        return ""
    read = ngettext("%(many)s line", "%(many)s lines", many) % {"many": many}
    if not wrong:
        return read
    look = ngettext("%(wrong)s needs a look", "%(wrong)s need a look", wrong) % {"wrong": wrong}
    return f"{read}, {look}"


def _day(typed: str) -> date | None:
    """Return the day of the talk; None for no day, or one to come."""
    try:
        day = date.fromisoformat(typed)
    except ValueError:
        return None
    return day if day <= timezone.localdate() else None


def _refused(told: WrittenTalk, day: date | None) -> str:
    """Return why nothing can be kept yet, in one sentence; nothing where it can."""
    if told.wrong:
        return _("Nothing is lost and nothing is kept yet: the marked lines need a look.")
    if told.empty:
        return _("Type at least one line, such as “Noor, 37+3=40+22”.")
    if day is None:
        return _("The day of the talk takes a day up to today.")
    return ""


def _mark(request: HttpRequest) -> str:
    given = request.POST.get("mark", "")
    return given if MARK.fullmatch(given) else new_token()[:16]


def _client(request: HttpRequest) -> str:
    return f"paper-{_mark(request)}"


def _page(
    request: HttpRequest, plan: Plan, told: WrittenTalk, error: str = "", status: int = 400
) -> HttpResponse:
    today = timezone.localdate()
    planned = min(plan.made_for or today, today).isoformat()
    rows = [
        {
            "id": row["id"],
            "shown": printed(str(row["text"])),
            "typed": request.POST.get(f"lines-{row['id']}", ""),
            "section": told.sections[str(row["id"])],
            "sum": _summed(told.sections[str(row["id"])]),
        }
        for row in plan.problems
    ]
    context = {
        "here": "back",
        "plan": plan,
        "rows": rows,
        "noticed": told.noticed,
        "noticed_sum": _summed(told.noticed),
        "noticed_typed": request.POST.get(NOTICED, ""),
        "day": request.POST.get("day", planned),
        "today": today.isoformat(),
        "mark": _mark(request),
        "error": error,
    }
    return render(request, "waysaid/written.html", context, status=status if error else 200)
