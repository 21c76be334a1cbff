"""Who comes to a talk: whoever may teach its class, a device that joined, a board with its token.

A board's token opens the board and nothing else. Through the school network's door a session
counts for nothing: only a device's own key does, and only for its talk.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import timedelta
from importlib import import_module

from django.conf import settings
from django.contrib.auth import get_user
from django.contrib.auth.base_user import AbstractBaseUser
from django.contrib.auth.models import AnonymousUser
from django.http import HttpRequest
from django.utils import timezone

from waysaid.site.asked import Kept
from waysaid.site.gate import DOOR_META
from waysaid.site.models import DeviceKey, Role, Talk, hashed
from waysaid.site.rights import Act, may, part_in

BOARD_AFTER_CLOSING = timedelta(hours=1)
"""How long a closed talk's board still says thank you; its token opens nothing after that."""

Person = AbstractBaseUser | AnonymousUser
_TALK = Kept(Talk, "school_class")


@dataclass(frozen=True, slots=True)
class Visitor:
    """Who asks: a signed-in person or not, a device's key, and the door it came through."""

    person: Person
    device: str | None
    door: int | None


@dataclass(frozen=True, slots=True)
class Seat:
    """A place at a talk's desk; `owner` for whoever may teach the class, no joined device."""

    talk: Talk
    owner: bool
    history: bool


def visitor_of(request: HttpRequest) -> Visitor:
    """Return who makes a request of a page."""
    door = request.META.get(DOOR_META)
    device = request.COOKIES.get(settings.DEVICE_COOKIE_NAME)
    return Visitor(request.user, device, int(door) if door else None)


def visitor_of_cookies(cookies: Mapping[str, str], door: int | None) -> Visitor:
    """Return who asks for a stream, from its cookies alone."""
    request = HttpRequest()
    engine = import_module(settings.SESSION_ENGINE)
    request.session = engine.SessionStore(cookies.get(settings.SESSION_COOKIE_NAME))
    return Visitor(get_user(request), cookies.get(settings.DEVICE_COOKIE_NAME), door)


def device_of(visitor: Visitor, talk_id: int) -> DeviceKey | None:
    """Return the key by which this device joined the talk, or None."""
    if not visitor.device:
        return None
    return DeviceKey.objects.filter(key_hash=hashed(visitor.device), talk_id=talk_id).first()


def desk_seat(visitor: Visitor, talk_id: int) -> Seat | None:
    """Return the visitor's place at the desk of a talk, or None."""
    if visitor.door not in (None, talk_id):
        return None
    talk = _TALK(talk_id)
    if talk is None:
        return None
    if visitor.door is None and may(part_in(visitor.person, talk.school_class), Act.TEACH):
        return Seat(talk, owner=True, history=talk.history)
    key = device_of(visitor, talk_id)
    if key is not None and key.role == Role.DESK:
        return Seat(talk, owner=False, history=talk.history and key.history)
    return None


def talk_of_board(visitor: Visitor, token: str, *, one_screen: bool = False) -> Talk | None:
    """Return the talk whose board (or one screen) this token opens now, or None."""
    named = {"one_token": token} if one_screen else {"board_token": token}
    talk = Talk.objects.select_related("school_class").filter(**named).first()
    if talk is None or long_over(talk):
        return None
    if visitor.door is None:
        return talk
    key = device_of(visitor, talk.pk) if visitor.door == talk.pk else None
    enough = key is not None and (key.role == Role.DESK or not one_screen)
    return talk if enough else None


def long_over(talk: Talk) -> bool:
    """Tell whether a talk was closed so long ago that its tokens open nothing."""
    closed = talk.closed_at
    return closed is not None and timezone.now() - closed > BOARD_AFTER_CLOSING
