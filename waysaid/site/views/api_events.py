"""Take events: from a desk, from the one screen's drawer, and from a hand on the board."""

from collections.abc import Collection

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.utils import translation
from django.utils.translation import gettext as _
from django.views.decorators.http import require_POST

from waysaid.site import access
from waysaid.site.around import around
from waysaid.site.broadcast import tell
from waysaid.site.intake import DRAWER, HAND, delivery
from waysaid.site.models import Talk
from waysaid.site.record import SentTwiceError, append
from waysaid.site.refusal import RefusalError, not_here
from waysaid.site.views.guards import json_of, plain, seat_at


@require_POST
@plain
def desk_events(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Write down what a desk sends."""
    return _taken(request, seat_at(request, talk_id).talk, frozenset())


@require_POST
@plain
def one_events(request: HttpRequest, token: str) -> HttpResponse:
    """Write down what the one screen's drawer sends."""
    talk = access.talk_of_board(access.visitor_of(request), token, one_screen=True)
    return _taken(request, _there(talk), DRAWER)


@require_POST
@plain
def board_events(request: HttpRequest, token: str) -> HttpResponse:
    """Write down what is drawn by hand on a device that joined as a board."""
    visitor = access.visitor_of(request)
    talk = _there(access.talk_of_board(visitor, token))
    if access.device_of(visitor, talk.pk) is None:
        raise not_here()
    return _taken(request, talk, HAND)


def _there(talk: Talk | None) -> Talk:
    if talk is None:
        raise not_here()
    return talk


def _taken(request: HttpRequest, talk: Talk, kinds: Collection[str]) -> HttpResponse:
    """Save, then tell everyone, then answer: what is answered with 200 is on disk."""
    with translation.override(talk.school_class.desk_language):
        return plain(_save)(request, talk, kinds)


def _save(request: HttpRequest, talk: Talk, kinds: Collection[str]) -> HttpResponse:
    here = around(talk)
    client, sent = delivery(json_of(request), here, kinds)
    try:
        saved = append(talk.pk, client, sent)
    except SentTwiceError as twice:
        sentence = _("Event %(sequence)s was sent before with something else in it.")
        raise RefusalError(409, sentence % {"sequence": twice.sequence}) from None
    order = max(each.order for each in saved)
    tell(talk.pk, order, here)
    rows = [{"sequence": each.sequence, "order": each.order} for each in saved]
    return JsonResponse({"saved": rows, "order": order})
