"""What a desk asks for by itself: its whole state, a line read, the links of the string."""

from typing import Any

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.utils import translation
from django.utils.translation import gettext as _
from django.views.decorators.http import require_POST, require_safe

from waysaid.number import Language, NoValue, Problem
from waysaid.site.desk_notes import problem_of
from waysaid.site.ears import ears_for
from waysaid.site.hub import Looking, Room
from waysaid.site.payload import payload
from waysaid.site.reading import preview
from waysaid.site.record import at_hand
from waysaid.site.refusal import RefusalError
from waysaid.site.views.guards import json_of, plain, seat_at
from waysaid.site.wording import wording_of
from waysaid.strings import Link, link_question, link_says, links

LONGEST_LINE = 2000
"""Characters: as many as the words of a way may have, so that what is kept can be read."""


@require_safe
@plain
def desk_json(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return the desk's whole payload."""
    seat = seat_at(request, talk_id)
    room = Room(talk_id, Looking.DESK, history=seat.history, owner=seat.owner)
    return JsonResponse(payload(room, at_hand(talk_id)))


@require_POST
@plain
def read_line(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return what a line says about a problem of the talk; nothing is recorded."""
    seat = seat_at(request, talk_id)
    given = json_of(request)
    language = seat.talk.school_class.desk_language
    with translation.override(language):
        state = at_hand(talk_id).state
        planned = state.problem(str(given.get("problem")))
        line = given.get("line")
        if planned is None:
            raise RefusalError(400, _("No problem of this talk has the id that was sent."))
        if not isinstance(line, str) or len(line) > LONGEST_LINE:
            raise RefusalError(
                400, _("A line takes at most %(most)s characters.") % {"most": LONGEST_LINE}
            )
        wording = wording_of(seat.talk.school_class)
        ears = ears_for(seat.talk, state, planned.text)
        return JsonResponse(preview(planned.text, line, wording, ears))


@require_safe
@plain
def string_links(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return the true links among the problems shown so far."""
    seat = seat_at(request, talk_id)
    language = Language(seat.talk.school_class.desk_language)
    state = at_hand(talk_id).state
    shown = [each for each in state.problems if each.id in state.shown]
    known = [(each.id, problem_of(each.text)) for each in shown]
    readable = [(key, problem) for key, problem in known if problem is not None]
    ids = [key for key, _problem in readable]
    found = _links([problem for _key, problem in readable])
    return JsonResponse({"links": [_link_json(link, ids, language) for link in found]})


def _links(problems: list[Problem]) -> tuple[Link, ...]:
    try:
        return links(problems)
    except NoValue:
        return ()


def _link_json(link: Link, ids: list[str], language: Language) -> dict[str, Any]:
    return {
        "kind": link.kind.value,
        "between": [ids[index] for index in link.between],
        "says": link_says(link, language),
        "question": link_question(link, language),
        "shows": list(link.shows),
        "marks": [{"problem": ids[index], "place": place} for index, place in link.marks],
    }
