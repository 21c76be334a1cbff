"""A class list as it was sent: typed, pasted, a file of lines or a table, or a school's OneRoster.

Of a file only what may be a name is kept, and that in memory alone.
"""

from dataclasses import dataclass

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils.translation import gettext as _

from waysaid.site.decoding import LARGEST_BYTES, BadListError, decoded
from waysaid.site.held import hold, holds
from waysaid.site.names import MOST_NAMES, BadNamesError
from waysaid.site.one_roster import (
    LARGEST_ZIP,
    OneRosterError,
    Section,
    is_zip,
    read_one_roster,
    titles_of,
)
from waysaid.site.roster import names_alone, told_apart_by_family
from waysaid.site.views.guards import teacher_of

LONGEST_LIST = 20_000
"""Characters of a pasted list."""
LISTED_UNDER = "section"
"""The form's name for which class of a school's file is meant."""
_NOT_AGAIN = ("csrfmiddlewaretoken", "names", "held", LISTED_UNDER)


@dataclass(frozen=True, slots=True)
class Sections:
    """The classes of a school's file, one of which is to be chosen."""

    each: tuple[Section, ...]


class ChooseClassError(Exception):
    """Raised where a school's file has several classes; they are held under the token."""

    def __init__(self, token: str, sections: tuple[Section, ...]) -> None:
        super().__init__(token)
        self.token = token
        self.sections = sections


def listed(request: HttpRequest) -> str:
    """Return the names as an uploaded file has them, or as typed.

    Raises `BadListError`, `OneRosterError`, `ChooseClassError`, and `BadNamesError` for a class of
    a school's file with too many names.
    """
    person = teacher_of(request).pk
    held = holds(person, request.POST.get("held", ""), Sections)
    if held is not None:
        return _chosen(request, held)
    upload = request.FILES.get("file")
    if upload is None:
        return request.POST.get("names", "")[:LONGEST_LIST]
    start = bytes(upload.read(LARGEST_BYTES + 1))
    if not is_zip(start):
        return names_alone(decoded(start))[:LONGEST_LIST]
    sections = read_one_roster(start + bytes(upload.read(LARGEST_ZIP)))
    if len(sections) == 1:
        return _names_of(sections[0])
    raise ChooseClassError(hold(person, Sections(sections)), sections)


def _chosen(request: HttpRequest, held: Sections) -> str:
    place = request.POST.get(LISTED_UNDER, "")
    if not (place.isascii() and place.isdigit() and int(place) < len(held.each)):
        raise OneRosterError("classes.csv")
    return _names_of(held.each[int(place)])


def _names_of(section: Section) -> str:
    return "\n".join(told_apart_by_family(section.students).names)


def choose_class_page(request: HttpRequest, choice: ChooseClassError) -> HttpResponse:
    """Ask which class of a school's file is meant; what else was typed comes along."""
    context = {
        "here": "class",
        "held": choice.token,
        "sections": titles_of(choice.sections),
        "again": [(k, v) for k, v in request.POST.items() if k not in _NOT_AGAIN],
        "listed_under": LISTED_UNDER,
    }
    return render(request, "waysaid/choose_section.html", context)


def part_of(request: HttpRequest) -> int | None:
    """Return which part of each line is the name, if that was chosen."""
    chosen = request.POST.get("part", "")
    return int(chosen) if chosen.removeprefix("-").isdigit() else None


def no_list(error: BadListError | OneRosterError) -> str:
    """Return what to say of a file that is no list of names."""
    if isinstance(error, BadListError):
        return _("This file cannot be read as a list; a text or CSV file with one name a line can.")
    if error.what:
        said = _("This zip is no school’s OneRoster file: “%(part)s” in it cannot be used.")
        return said % {"part": error.what[:40]}
    return _("This zip cannot be read; a school’s OneRoster file of up to 5 MB can.")


def too_many(error: BadNamesError) -> str:
    """Return what to say of a list with too many names."""
    most = {"found": str(error), "most": MOST_NAMES}
    return _("There are %(found)s names here; a class has at most %(most)s.") % most
