"""Start a talk now: a first problem typed or chosen, or a plan; the desk opens on it."""

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import get_language
from django.views.decorators.http import require_http_methods

from waysaid.number import Language, Unreadable, parse
from waysaid.site.first_problems import grade_of, ready_problems
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.refusal import RefusalError
from waysaid.site.rights import Act
from waysaid.site.talks import start_talk
from waysaid.site.views.failures import wants_json
from waysaid.site.views.guards import asks, current_class
from waysaid.strings import GRADES


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.TEACH)
def start_page(request: HttpRequest) -> HttpResponse:
    """Offer first problems of the class's grade; begin the talk on the one that is chosen."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _page(request, school_class)
    try:
        talk = _begun(request, school_class)
    except Unreadable as error:
        sentence = error.sentence(Language((get_language() or "en")[:2]))
        if wants_json(request):
            raise RefusalError(400, sentence) from None
        return _page(request, school_class, sentence)
    if wants_json(request):
        return JsonResponse(
            {"desk": f"/talks/{talk.pk}/desk", "board": f"/board/{talk.board_token}"}
        )
    return redirect("desk", talk_id=talk.pk)


def _begun(request: HttpRequest, school_class: SchoolClass) -> Talk:
    """Return the new talk. Raises `Unreadable` for a problem that cannot be read."""
    wanted = request.POST.get("plan", "")
    plan = get_object_or_404(school_class.plans, pk=int(wanted)) if wanted.isdigit() else None
    what = request.POST.get("do", "")
    typed = "" if what == "signals" else request.POST.get("problem", "").strip()
    problem = request.POST.get("ready") or typed
    if plan is None and (problem or what == "typed"):
        parse(problem)
    return start_talk(
        school_class,
        plan=plan,
        problems=[problem] if problem else [],
        history=not request.POST.get("substitute"),
    )


def _page(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    grade = grade_of(request, school_class)
    context = {
        "here": "home",
        "school_class": school_class,
        "grade": grade,
        "grades": GRADES,
        "ready": ready_problems(grade),
        "typed": request.POST.get("problem", ""),
        "error": error,
    }
    return render(request, "waysaid/start.html", context, status=400 if error else 200)
