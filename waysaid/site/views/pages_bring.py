"""Bring in a talk file: looked at first, then kept as a past talk or as a plan."""

from dataclasses import dataclass

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from waysaid.number import Language
from waysaid.paper import LARGEST_TALK_FILE, TalkFile, TalkFileError, read_talk_file
from waysaid.site.held import hold, holds, let_go
from waysaid.site.models import SchoolClass
from waysaid.site.rights import Act
from waysaid.site.talk_in import MOST_EVER, TooManyNamesError, as_past_talk, as_plan, matches
from waysaid.site.talk_rows import printed
from waysaid.site.views.guards import asks, current_class, teacher_of


@dataclass(frozen=True, slots=True)
class Brought:
    """A talk file that waits to be kept."""

    talk: TalkFile


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def bring_page(request: HttpRequest) -> HttpResponse:
    """Ask for a talk file; show what is in it; keep it."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _ask(request)
    if "held" in request.POST:
        return _keep(request, school_class)
    return _look(request, school_class)


def _ask(request: HttpRequest, error: str = "") -> HttpResponse:
    context = {"here": "back", "error": error}
    return render(request, "waysaid/bring.html", context, status=400 if error else 200)


def _look(request: HttpRequest, school_class: SchoolClass) -> HttpResponse:
    upload = request.FILES.get("file")
    if upload is None:
        return _ask(request, _("Choose a talk file first."))
    try:
        talk = read_talk_file(bytes(upload.read(LARGEST_TALK_FILE + 1)))
    except TalkFileError as error:
        return _ask(request, error.sentence(Language(school_class.desk_language)))
    token = hold(teacher_of(request).pk, Brought(talk))
    return _show(request, school_class, talk, token)


def _show(
    request: HttpRequest, school_class: SchoolClass, talk: TalkFile, token: str, error: str = ""
) -> HttpResponse:
    children = list(school_class.children.all())
    context = {
        "here": "back",
        "school_class": school_class,
        "talk": talk,
        "problems": [printed(each.text) for each in talk.problems],
        "matches": matches(talk, children),
        "children": children,
        "held": token,
        "error": error,
    }
    return render(request, "waysaid/bring_look.html", context, status=400 if error else 200)


def _keep(request: HttpRequest, school_class: SchoolClass) -> HttpResponse:
    person, token = teacher_of(request).pk, request.POST["held"]
    brought = holds(person, token, Brought)
    if brought is None:
        return _ask(request, _("That file is no longer at hand; choose it once more."))
    talk = brought.talk
    if request.POST.get("do") == "plan" or not talk.events:
        let_go(person, token)
        return redirect("plan", plan_id=as_plan(school_class, talk).pk)
    chosen = {each.id: request.POST.get(f"child-{each.id}", "") for each in talk.children}
    try:
        made = as_past_talk(school_class, talk, chosen)
    except TooManyNamesError as error:
        sentence = _("There would be %(found)s names on the list; it takes at most %(most)s.")
        said = sentence % {"found": error, "most": MOST_EVER}
        return _show(request, school_class, talk, token, said)
    let_go(person, token)
    return redirect("back", talk_id=made.pk)
