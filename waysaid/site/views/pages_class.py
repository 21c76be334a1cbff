"""The class page: who is in it, its grade, its languages, and how it says a remainder."""

from collections.abc import Sequence

from django.db import transaction
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy
from django.views.decorators.http import require_http_methods

from waysaid.number import Rest
from waysaid.site.decoding import BadListError
from waysaid.site.models import Child, Language, SchoolClass
from waysaid.site.names import MOST_NAMES, BadNamesError, clean, told_apart
from waysaid.site.one_roster import OneRosterError
from waysaid.site.rights import Act
from waysaid.site.roster import Roster, read_roster, same_twice
from waysaid.site.views.guards import asks, current_class, looks_back_alone
from waysaid.site.views.lists_sent import (
    ChooseClassError,
    choose_class_page,
    listed,
    no_list,
    part_of,
    too_many,
)
from waysaid.site.views.pages_home import speak
from waysaid.strings import GRADES

RESTS = {
    Rest.LEFT_OVER.value: gettext_lazy("left over: 16 ÷ 3 = 5 r 1"),
    Rest.FRACTION.value: gettext_lazy("a fraction: 16 ÷ 3 = 5 1/3"),
    Rest.DECIMAL.value: gettext_lazy("a decimal, where it ends: 16 ÷ 5 = 3.2"),
}
LOOKS = (1, 2, 3, 4, 5, 7, 10)
"""Seconds for which a quick image may be shown."""
MOST_EVER = 2 * MOST_NAMES
"""Names on one class list, those who left among them."""


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.CLASS)
def class_page(request: HttpRequest) -> HttpResponse:
    """Show the class list; take changes to it. A co-teacher sees what the class showed instead."""
    if request.method != "POST" and looks_back_alone(request):
        return redirect("showed")
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _page(request, school_class)
    what, _sep, which = request.POST.get("do", "add").partition(":")
    if what == "add":
        return _add(request, school_class)
    if what == "languages":
        return _languages(request, school_class)
    error = _rename(request, school_class)
    if error:
        return _page(request, school_class, error)
    _change(school_class, what, which)
    return redirect(f"/class#child-{which}" if which else "/class")


def add_children(school_class: SchoolClass, names: Sequence[str]) -> None:
    """Add names behind the others, told apart from them. Raises `BadNamesError` for too many."""
    with transaction.atomic():
        there = list(school_class.children.values_list("name", flat=True))
        if len(there) + len(names) > MOST_EVER:
            raise BadNamesError(len(there) + len(names))
        Child.objects.bulk_create(
            Child(school_class=school_class, name=name, order=len(there) + place)
            for place, name in enumerate(told_apart(names, there))
        )


def _add(request: HttpRequest, school_class: SchoolClass) -> HttpResponse:
    """Show the names that were sent, to be looked at; keep those that were looked at."""
    step = request.POST.get("step", "")
    try:
        if step == "save":
            names = tuple(name for each in request.POST.getlist("child") if (name := clean(each)))
            add_children(school_class, names)
            return redirect("class")
        text = listed(request)
        roster = read_roster(text, part_of(request))
        if step == "look":
            return _look(request, school_class, text, roster)
        add_children(school_class, roster.names)
    except ChooseClassError as choice:
        return choose_class_page(request, choice)
    except (BadListError, OneRosterError) as error:
        return _page(request, school_class, no_list(error))
    except BadNamesError as error:
        return _page(request, school_class, too_many(error))
    return redirect("class")


def _look(
    request: HttpRequest, school_class: SchoolClass, text: str, roster: Roster
) -> HttpResponse:
    """Show what would be added; who is on the list already is left out, and named."""
    there = {name.casefold() for name in school_class.children.values_list("name", flat=True)}
    names = [(name, place in roster.changed) for place, name in enumerate(roster.names)]
    context = {
        "here": "class",
        "school_class": school_class,
        "text": text,
        "roster": roster,
        "names": [each for each in names if each[0].casefold() not in there],
        "known": [name for name, _changed in names if name.casefold() in there],
    }
    return render(request, "waysaid/names_look.html", context)


def _languages(request: HttpRequest, school_class: SchoolClass) -> HttpResponse:
    desk, board = request.POST.get("language"), request.POST.get("board_language")
    name = " ".join(request.POST.get("name", "").split())[:80]
    if desk not in Language.values or board not in Language.values:
        return _page(request, school_class, _("Choose English or Spanish."))
    if not name:
        return _page(request, school_class, _("Give the class a name, such as “2B”."))
    school_class.name, school_class.desk_language, school_class.board_language = name, desk, board
    school_class.grade = _grade(request, school_class.grade)
    if request.POST.get("rest") in RESTS:
        school_class.rest = request.POST["rest"]
    if request.POST.get("image_seconds") in {str(each) for each in LOOKS}:
        school_class.image_seconds = int(request.POST["image_seconds"])
    school_class.save()
    response = redirect("class")
    speak(response, desk)
    return response


def _grade(request: HttpRequest, before: int | None) -> int | None:
    """Return the grade chosen; None for none, and the one before where the form asks for none."""
    chosen = request.POST.get("grade")
    if chosen is None:
        return before
    return next((grade for grade in GRADES if str(grade) == chosen), None)


def _rename(request: HttpRequest, school_class: SchoolClass) -> str:
    """Take the names as they stand in the form; return one sentence if two are the same."""
    children = list(school_class.children.all())
    renamed = {
        child: clean(request.POST.get(f"name-{child.pk}", child.name)) or child.name
        for child in children
    }
    double = same_twice(list(renamed.values()))
    if double:
        return _("Two children are called “%(name)s”; give one of them a letter or a number.") % {
            "name": double
        }
    changed = [child for child in children if child.name != renamed[child]]
    with transaction.atomic():
        # Two names may have changed places: first out of the way, then into place.
        for names in ({child: f"{child.pk}…" for child in changed}, renamed):
            for child in changed:
                child.name = names[child]
                child.save(update_fields=["name"])
    return ""


def _change(school_class: SchoolClass, what: str, which: str) -> None:
    """Move a name up or down, sort them, or note that a child left or came back."""
    children = list(school_class.children.filter(active=True))
    place = next((at for at, child in enumerate(children) if child.key == which), None)
    if what == "sort":
        _order(sorted(children, key=lambda child: child.name.casefold()))
    elif what in ("up", "down") and place is not None:
        other = place + (1 if what == "down" else -1)
        if 0 <= other < len(children):
            children[place], children[other] = children[other], children[place]
            _order(children)
    elif what in ("leave", "return") and which.isdigit():
        school_class.children.filter(pk=int(which)).update(active=what == "return")


def _order(children: Sequence[Child]) -> None:
    for place, child in enumerate(children):
        child.order = place
    Child.objects.bulk_update(children, ["order"])


def _page(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    def typed(child: Child) -> Child:
        child.name = request.POST.get(f"name-{child.pk}", child.name)
        return child

    context = {
        "here": "class",
        "part": "names",
        "school_class": school_class,
        "children": [typed(each) for each in school_class.children.filter(active=True)],
        "left": school_class.children.filter(active=False),
        "typed": request.POST.get("names", ""),
        "languages": Language.choices,
        "grades": GRADES,
        "rests": RESTS,
        "looks": LOOKS,
        "error": error,
    }
    return render(request, "waysaid/class.html", context, status=400 if error else 200)
