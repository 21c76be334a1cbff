"""The first pages: the one-time address, the first run, and the start."""

from django.conf import settings
from django.contrib.auth import login
from django.db import transaction
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from waysaid.site.keeping import Due, say
from waysaid.site.models import Child, Plan, SchoolClass
from waysaid.site.opening import OWN_MACHINE, local_teacher, use_opening
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act, classes_for, may, part_in
from waysaid.site.sharing import shared_with
from waysaid.site.talk_rows import printed, rows_of, to_go_on
from waysaid.site.views.guards import asks, current_class, own_class, plain, teacher_of, turn_to
from waysaid.site.views.pages_welcome import answer_welcome
from waysaid.site.wall import empty_class

MOST_PAST = 5


@require_safe
@plain
def open_session(request: HttpRequest, token: str) -> HttpResponse:
    """Open the session of the teacher whose machine this is; the address is good once."""
    if settings.SCHOOL_SERVER:
        raise not_here()
    if request.method == "HEAD":
        return HttpResponse()
    if not use_opening(token):
        if request.user.is_authenticated:
            return redirect("home")
        return render(request, "waysaid/closed.html", status=403)
    login(request, local_teacher(), backend=OWN_MACHINE)
    response = redirect("home")
    response.headers["Referrer-Policy"] = "no-referrer"
    return response


@require_safe
@asks(None)
def home(request: HttpRequest) -> HttpResponse:
    """Show the start: begin now, or open a talk or a plan. Without a class, the first run."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("shared" if shared_with(teacher_of(request)) else "welcome")
    waiting = to_go_on(school_class)
    past = school_class.talks.exclude(pk=waiting.talk.pk if waiting else 0)
    plan = next_plan(school_class)
    context = {
        "here": "home",
        "today": timezone.localdate(),
        "school_class": school_class,
        "classes": classes_for(teacher_of(request), Act.TEACH),
        "due": _due(request, school_class),
        "shared": shared_with(teacher_of(request)),
        "waiting": waiting,
        "plan": plan,
        "plan_problems": [printed(str(each.get("text"))) for each in plan.problems] if plan else [],
        "rows": rows_of(past[:MOST_PAST]),
        "children": school_class.children.filter(active=True).count(),
    }
    return render(request, "waysaid/home.html", context)


def _due(request: HttpRequest, school_class: SchoolClass) -> Due | None:
    """Return what is about to go, for whoever may change that."""
    if not may(part_in(teacher_of(request), school_class), Act.KEEP):
        return None
    return say(school_class, timezone.localdate())


def next_plan(school_class: SchoolClass) -> Plan | None:
    """Return today's plan, else the next one, else the newest that was never talked."""
    today = timezone.localdate()
    untold = school_class.plans.filter(talks__isnull=True)
    coming = untold.filter(made_for__gte=today).order_by("made_for", "-made_at").first()
    return coming or untold.filter(made_for__isnull=True).order_by("-made_at").first()


@require_POST
@asks(Act.TEACH)
def choose_class(request: HttpRequest) -> HttpResponse:
    """Turn to another of her classes."""
    wanted = request.POST.get("class", "")
    if wanted.isdigit():
        turn_to(request, own_class(request, int(wanted)))
    return redirect("home")


@require_http_methods(["GET", "HEAD", "POST"])
@asks(None)
def welcome(request: HttpRequest) -> HttpResponse:
    """Ask for a class: its name, its children's names, its language, and nothing else."""
    given = answer_welcome(request)
    if isinstance(given, HttpResponse):
        return given
    school_class = make_class(
        teacher_of(request).pk, given.name, given.children, (given.desk, given.board)
    )
    turn_to(request, school_class)
    response = redirect("home")
    speak(response, given.desk)
    return response


def make_class(
    owner_id: int, name: str, children: tuple[str, ...], languages: tuple[str, str]
) -> SchoolClass:
    """Return a new class with these children; `languages` are the desk's and the board's."""
    with transaction.atomic():
        school_class = empty_class(owner_id, name, *languages)
        school_class.save()
        Child.objects.bulk_create(
            Child(school_class=school_class, name=child, order=order)
            for order, child in enumerate(children)
        )
    return school_class


def speak(response: HttpResponse, language: str) -> None:
    """Let the pages speak this language from now on."""
    response.set_cookie(
        settings.LANGUAGE_COOKIE_NAME,
        language,
        max_age=settings.SESSION_COOKIE_AGE,
        httponly=True,
        samesite="Strict",
        secure=settings.SESSION_COOKIE_SECURE,
    )
