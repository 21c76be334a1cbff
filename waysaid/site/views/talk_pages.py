"""The pages of a talk: begin one, its desk, its board, the one screen with its drawer."""

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils import translation
from django.utils.translation import gettext as _
from django.views.decorators.http import require_safe

from waysaid.site import access
from waysaid.site.models import Picture, Talk
from waysaid.site.refusal import RefusalError, not_here
from waysaid.site.talks import desk_title
from waysaid.site.views.guards import plain, seat_at
from waysaid.site.words import board_words, desk_words, one_words


@require_safe
@plain
def desk(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Show the desk of a talk, to its owner or a device that joined as a desk."""
    seat = seat_at(request, talk_id)
    base = f"/talks/{talk_id}"
    context = {
        "title": desk_title(seat.talk),
        "talk_id": talk_id,
        "talk": seat.talk,
        "owner": seat.owner,
        "live_url": f"/live/desk/{talk_id}",
        "events_url": f"{base}/events",
        "state_url": f"{base}/desk.json",
        "read_url": f"{base}/read",
        "links_url": f"{base}/links",
        "network_url": f"{base}/network" if seat.owner else "",
        "pairing_url": f"{base}/pairing" if seat.owner else "",
        "board_url": f"/board/{seat.talk.board_token}" if seat.owner else "",
        "one_url": f"/one/{seat.talk.one_token}" if seat.owner else "",
        "back_url": f"{base}/back" if seat.owner else "",
        "home_url": "/" if seat.owner else "",
    }
    with translation.override(seat.talk.school_class.desk_language):
        return _page(request, "waysaid/desk.html", {**context, "words": desk_words()})


@require_safe
@plain
def board(request: HttpRequest, token: str) -> HttpResponse:
    """Show the board; whoever knows its token may look.

    There is a pen on it for the teacher's own window, and on a device that joined as a board.
    """
    talk = _talk(request, token)
    context = {"title": talk.title, "live_url": f"/live/board/{token}"}
    context |= _pen(access.visitor_of(request), talk)
    with translation.override(talk.school_class.board_language):
        return _page(request, "waysaid/board.html", {**context, "words": board_words()})


@require_safe
@plain
def one(request: HttpRequest, token: str) -> HttpResponse:
    """Show the one screen: the board with a thin drawer."""
    talk = _talk(request, token, one_screen=True)
    context = {
        "title": talk.title,
        "talk_id": token,
        "live_url": f"/live/one/{token}",
        "events_url": f"/one/{token}/events",
    }
    with translation.override(talk.school_class.board_language):
        return _page(request, "waysaid/one.html", {**context, "words": one_words()})


@require_safe
@plain
def board_picture(request: HttpRequest, token: str, picture_id: int) -> HttpResponse:
    """Return a picture of the class, for its board."""
    return _picture(_talk(request, token), picture_id)


@require_safe
@plain
def one_picture(request: HttpRequest, token: str, picture_id: int) -> HttpResponse:
    """Return a picture of the class, for the one screen."""
    return _picture(_talk(request, token, one_screen=True), picture_id)


@require_safe
@plain
def desk_picture(request: HttpRequest, talk_id: int, picture_id: int) -> HttpResponse:
    """Return a picture of the class, for the desk's small board."""
    return _picture(seat_at(request, talk_id).talk, picture_id)


def _pen(visitor: access.Visitor, talk: Talk) -> dict[str, Any]:
    """Return where what is drawn on the board goes; nothing for whoever only knows the token."""
    seat = access.desk_seat(visitor, talk.pk)
    if seat is not None and seat.owner:
        return {"events_url": f"/talks/{talk.pk}/events", "talk_id": talk.pk}
    if access.device_of(visitor, talk.pk) is not None:
        return {"events_url": f"/board/{talk.board_token}/events", "talk_id": talk.board_token}
    return {}


def _talk(request: HttpRequest, token: str, *, one_screen: bool = False) -> Talk:
    talk = access.talk_of_board(access.visitor_of(request), token, one_screen=one_screen)
    if talk is None:
        with translation.override(translation.get_language()):
            raise RefusalError(
                404, _("No talk is open at this address; ask for a new one at the desk.")
            )
    return talk


def _picture(talk: Talk, picture_id: int) -> HttpResponse:
    picture = Picture.objects.filter(pk=picture_id, school_class=talk.school_class_id).first()
    if picture is None:
        raise not_here()
    response = HttpResponse(bytes(picture.content), content_type=picture.content_type)
    response.headers["Cache-Control"] = "private, max-age=86400"
    return response


def _page(request: HttpRequest, template: str, context: dict[str, Any]) -> HttpResponse:
    response = render(request, template, context)
    response.headers["Referrer-Policy"] = "no-referrer"
    return response
