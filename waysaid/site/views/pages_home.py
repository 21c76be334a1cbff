"""The first pages: the one-time address, the first run, and the start."""

from django.conf import settings
from django.contrib.auth import login
from django.db import transaction
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import get_language
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.site.models import Child, Language, SchoolClass
from waysaid.site.names import MOST_NAMES, BadNamesError, read_names
from waysaid.site.opening import local_teacher, use_opening
from waysaid.site.refusal import not_here
from waysaid.site.views.guards import (
    current_class,
    plain,
    teacher_of,
    teachers_own,
    turn_to,
)
from waysaid.site.wall import empty_class

LONGEST_LIST = 20_000


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
    login(request, local_teacher(), backend="django.contrib.auth.backends.ModelBackend")
    response = redirect("home")
    response.headers["Referrer-Policy"] = "no-referrer"
    return response


@require_safe
@teachers_own
def home(request: HttpRequest) -> HttpResponse:
    """Show the start: begin now, or open a talk or a plan. Without a class, the first run."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    context = {
        "school_class": school_class,
        "classes": SchoolClass.objects.filter(owner=teacher_of(request)),
        "talks": school_class.talks.all()[:10],
        "plans": school_class.plans.all()[:10],
    }
    return render(request, "waysaid/home.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@teachers_own
def welcome(request: HttpRequest) -> HttpResponse:
    """Ask for a class: its name, its children's names, its language, and nothing else."""
    if request.method != "POST":
        return render(request, "waysaid/welcome.html", _form(language=get_language() or "en"))
    name = " ".join(request.POST.get("name", "").split())[:80]
    pasted = _pasted(request)
    desk = request.POST.get("language", "en")
    board = request.POST.get("board_language") or desk
    given = _form(name=name, names=pasted, language=desk)
    if desk not in Language.values or board not in Language.values:
        return _again(request, given, _("Choose English or Spanish."))
    if not name:
        return _again(request, given, _("Give the class a name, such as “2B”."))
    try:
        children = read_names(pasted)
    except BadNamesError as error:
        most = {"found": str(error), "most": MOST_NAMES}
        sentence = _("There are %(found)s names here; a class has at most %(most)s.")
        return _again(request, given, sentence % most)
    school_class = make_class(teacher_of(request).pk, name, children, (desk, board))
    turn_to(request, school_class)
    response = redirect("home")
    speak(response, desk)
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


def _pasted(request: HttpRequest) -> str:
    """Return the names as typed, or as an uploaded list has them."""
    upload = request.FILES.get("file")
    if upload is not None and hasattr(upload, "read"):
        return bytes(upload.read(LONGEST_LIST)).decode("utf-8", errors="replace")
    return request.POST.get("names", "")[:LONGEST_LIST]


def _form(name: str = "", names: str = "", language: str = "en") -> dict[str, object]:
    return {"name": name, "names": names, "language": language, "languages": Language.choices}


def _again(request: HttpRequest, given: dict[str, object], error: str) -> HttpResponse:
    return render(request, "waysaid/welcome.html", {**given, "error": error}, status=400)
