"""What each kind of room is sent."""

import time
from typing import Any

from django.utils import translation

from waysaid.site.desk_view import Desk, desk_view
from waysaid.site.history import History, history_before
from waysaid.site.hub import Looking, Room
from waysaid.site.image_view import image_view
from waysaid.site.models import Talk
from waysaid.site.network import network_view
from waysaid.site.record import TalkAtHand
from waysaid.site.wall import wall_of
from waysaid.talk import board_view


def row_of(talk_id: int) -> Talk:
    """Return the talk's row with its class and its plan, for any payload."""
    return Talk.objects.select_related("school_class", "plan").get(pk=talk_id)


def payload(room: Room, at_hand: TalkAtHand, row: Talk | None = None) -> dict[str, Any]:
    """Return what the room may see of the talk now. A board gets `board_view` and nothing else.

    `row` is the talk's `row_of` where it was read just now.
    """
    talk = row or row_of(at_hand.talk_id)
    match room.looking:
        case Looking.BOARD:
            return _board(room, at_hand, talk, f"/board/{talk.board_token}/picture")
        case Looking.ONE:
            board = _board(room, at_hand, talk, f"/one/{talk.one_token}/picture")
            return {**board, **_drawer(at_hand, talk)}
        case Looking.DESK:
            with translation.override(talk.school_class.desk_language):
                return _desk(room, at_hand, talk)


def _board(room: Room, at_hand: TalkAtHand, talk: Talk, pictures: str) -> dict[str, Any]:
    now = time.time_ns() // 1_000_000
    return board_view(at_hand.state, wall_of(talk, pictures), room.wide, now)


def _drawer(at_hand: TalkAtHand, talk: Talk) -> dict[str, Any]:
    """Return what the one screen's drawer needs besides the board: the names, undo, what is next.

    Of the next problem only its id: what it asks is for later.
    """
    children = talk.school_class.children.filter(active=True)
    state = at_hand.state
    coming = (each.id for each in state.problems if each.id not in state.shown)
    return {
        "next": next(coming, None),
        "once_more": state.now is not None and state.now not in state.looked_again,
        "roster": [{"id": child.key, "name": child.name} for child in children],
        "can_undo": can_undo(at_hand),
    }


def can_undo(at_hand: TalkAtHand) -> dict[str, Any] | None:
    """Return the event that one tap takes back, or None at the talk's start."""
    last = at_hand.state.last
    if last is None:
        return None
    return {"client": last.client, "sequence": last.sequence, "what": last.kind}


def _desk(room: Room, at_hand: TalkAtHand, talk: Talk) -> dict[str, Any]:
    history = history_before(talk) if room.history else History()
    desk = Desk(talk, at_hand.state, history, shows_history=room.history)
    now = time.time_ns() // 1_000_000
    return {
        "order": at_hand.order,
        "now": now,
        "saved_by": dict(at_hand.saved_by),
        "can_undo": can_undo(at_hand),
        **desk_view(desk),
        "image": image_view(at_hand.state, desk.language, now),
        "board": _board(room, at_hand, talk, f"/talks/{talk.pk}/picture"),
        "board_token": talk.board_token if room.owner else None,
        "one_token": talk.one_token if room.owner else None,
        "network": network_view(talk.pk, owner=room.owner),
    }
