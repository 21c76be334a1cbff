"""The school network's door, and devices that join through it."""

from django.conf import settings
from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from waysaid.site import access
from waysaid.site.broadcast import tell
from waysaid.site.models import DeviceKey, Role, Talk, hashed, new_token
from waysaid.site.network import NETWORK, NoNetworkError, network_view
from waysaid.site.pairing import PAIRING, Code, Refused
from waysaid.site.refusal import RefusalError
from waysaid.site.views.failures import wants_json
from waysaid.site.views.guards import json_of, owner_seat, plain

KEY_SECONDS = 12 * 3600
"""A device's key lasts a school day at most; it ends with the talk or the network before that."""


@require_POST
@plain
def network_switch(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Open or shut the door for this talk; return what the desk shows of it."""
    owner_seat(request, talk_id)
    wanted = json_of(request).get("on")
    if not isinstance(wanted, bool):
        raise RefusalError(400, _("‘on’ takes true or false."))
    try:
        if wanted:
            NETWORK.turn_on(talk_id)
        else:
            NETWORK.turn_off(talk_id)
    except NoNetworkError as error:
        raise RefusalError(409, str(error)) from None
    tell(talk_id)
    return JsonResponse(network_view(talk_id, owner=True))


@require_POST
@plain
def pairing_code(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return a new code for a board, or for a desk (a substitute's with `history` false)."""
    owner_seat(request, talk_id)
    given = json_of(request)
    if given.get("role") not in Role.values:
        raise RefusalError(400, _("‘role’ takes board or desk."))
    if NETWORK.address(talk_id) is None:
        raise RefusalError(409, _("Switch on the school network for this talk first."))
    history = given.get("history") is not False
    code = PAIRING.offer(talk_id, Role(given["role"]), history=history)
    tell(talk_id)
    until = int(code.until * 1000)
    return JsonResponse({"code": code.digits, "role": code.role.value, "until": until})


@require_http_methods(["GET", "HEAD", "POST"])
@plain
def join(request: HttpRequest) -> HttpResponse:
    """Show where a code is typed, and take one."""
    if request.method != "POST":
        return render(request, "waysaid/join.html")
    asked_by_script = wants_json(request)
    given = json_of(request).get("code") if asked_by_script else request.POST.get("code")
    digits = "".join(str(given or "").split())
    taken = PAIRING.redeem(digits, access.visitor_of(request).door)
    if isinstance(taken, Refused):
        return _not_taken(request, taken)
    talk = Talk.objects.filter(pk=taken.talk).first()
    if talk is None:
        return _not_taken(request, Refused.WRONG)
    key = _key_for(taken)
    go = f"/board/{talk.board_token}" if taken.role is Role.BOARD else f"/talks/{talk.pk}/desk"
    response = JsonResponse({"go": go}) if asked_by_script else redirect(go)
    response.set_cookie(
        settings.DEVICE_COOKIE_NAME,
        key,
        max_age=KEY_SECONDS,
        httponly=True,
        samesite="Strict",
        secure=settings.SESSION_COOKIE_SECURE,
    )
    tell(talk.pk)
    return response


def _key_for(code: Code) -> str:
    key = new_token()
    DeviceKey.objects.create(
        talk_id=code.talk, role=code.role, history=code.history, key_hash=hashed(key)
    )
    return key


def _not_taken(request: HttpRequest, why: Refused) -> HttpResponse:
    if why is Refused.TOO_MANY:
        status, sentence = 429, _("Too many wrong codes; wait five minutes and ask for a new code.")
    else:
        status, sentence = 403, _("This code is not one that is good now; ask for a new one.")
    if wants_json(request):
        raise RefusalError(status, sentence)
    return render(request, "waysaid/join.html", {"error": sentence}, status=status)
