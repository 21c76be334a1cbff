"""What the first run asks: a class, its names, two languages; looked at before it is kept."""

from dataclasses import dataclass

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils.translation import get_language
from django.utils.translation import gettext as _

from waysaid.site.decoding import BadListError
from waysaid.site.models import Language, SchoolClass
from waysaid.site.names import MOST_NAMES, BadNamesError, clean
from waysaid.site.one_roster import OneRosterError
from waysaid.site.roster import Roster, read_roster, same_twice
from waysaid.site.views.guards import teacher_of
from waysaid.site.views.lists_sent import (
    ChooseClassError,
    choose_class_page,
    listed,
    no_list,
    part_of,
    too_many,
)


@dataclass(frozen=True, slots=True)
class NewClass:
    """A class as asked for; its children's names differ."""

    name: str
    children: tuple[str, ...]
    desk: str
    board: str


@dataclass(frozen=True, slots=True)
class Given:
    """What was typed, to be shown again with whatever is wrong with it."""

    name: str = ""
    names: str = ""
    desk: str = "en"
    board: str = "en"


def answer_welcome(request: HttpRequest) -> HttpResponse | NewClass:
    """Return the class that is to be made, or the page that comes before it."""
    if request.method != "POST":
        language = (get_language() or "en")[:2]
        return _form(request, Given(desk=language, board=language))
    try:
        given = _given(request)
    except ChooseClassError as choice:
        return choose_class_page(request, choice)
    except (BadListError, OneRosterError) as error:
        typed = _typed(request, request.POST.get("names", ""))
        return _form(request, typed, no_list(error))
    except BadNamesError as error:
        return _form(request, _typed(request, ""), too_many(error))
    if given.desk not in Language.values or given.board not in Language.values:
        return _form(request, given, _("Choose English or Spanish."))
    if not given.name:
        return _form(request, given, _("Give the class a name, such as “2B”."))
    step = request.POST.get("step", "")
    if step == "back":
        return _form(request, given)
    if step == "save":
        return _looked_at(request, given)
    return _read(request, given, look=step == "look")


def _given(request: HttpRequest) -> Given:
    return _typed(request, listed(request))


def _typed(request: HttpRequest, names: str) -> Given:
    desk = request.POST.get("language", "en")
    return Given(
        " ".join(request.POST.get("name", "").split())[:80],
        names,
        desk,
        request.POST.get("board_language") or desk,
    )


def _read(request: HttpRequest, given: Given, *, look: bool) -> HttpResponse | NewClass:
    try:
        roster = read_roster(given.names, part_of(request))
    except BadNamesError as error:
        return _form(request, given, too_many(error))
    except BadListError as error:
        return _form(request, given, no_list(error))
    if look:
        return _preview(request, given, roster)
    return NewClass(given.name, roster.names, given.desk, given.board)


def _looked_at(request: HttpRequest, given: Given) -> HttpResponse | NewClass:
    """Take the names as she left them after looking."""
    names = tuple(name for each in request.POST.getlist("child") if (name := clean(each)))
    double = same_twice(names)
    if double:
        sentence = _("Two children are called “%(name)s”; give one of them a letter or a number.")
        return _preview(request, given, Roster(names), sentence % {"name": double})
    if len(names) > MOST_NAMES:
        return _preview(request, given, Roster(names), too_many(BadNamesError(len(names))))
    return NewClass(given.name, names, given.desk, given.board)


def _form(request: HttpRequest, given: Given, error: str = "") -> HttpResponse:
    has_class = SchoolClass.objects.filter(owner=teacher_of(request)).exists()
    context = {
        "given": given,
        "languages": Language.choices,
        "error": error,
        "first": not has_class,
    }
    return render(request, "waysaid/welcome.html", context, status=400 if error else 200)


def _preview(request: HttpRequest, given: Given, roster: Roster, error: str = "") -> HttpResponse:
    names = [(name, place in roster.changed) for place, name in enumerate(roster.names)]
    context = {"given": given, "roster": roster, "names": names, "error": error}
    return render(request, "waysaid/welcome_look.html", context, status=400 if error else 200)
