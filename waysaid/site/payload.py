"""What each kind of room is sent."""

import time
from typing import Any

from django.utils import translation

from waysaid.site.around import Around, around, row_of
from waysaid.site.desk_view import Desk, desk_view
from waysaid.site.history import History, history_before
from waysaid.site.hub import Looking, Room
from waysaid.site.image_view import image_view
from waysaid.site.network import network_view
from waysaid.site.record import TalkAtHand
from waysaid.site.wall import wall_of
from waysaid.talk import board_view


def payload(room: Room, at_hand: TalkAtHand, known: Around | None = None) -> dict[str, Any]:
    """Return what the room may see of the talk now. A board gets `board_view` and nothing else.

    `known` is what is around the talk, where it was read before.
    """
    here = known or around(row_of(at_hand.talk_id))
    talk = here.talk
    match room.looking:
        case Looking.BOARD:
            return _board(room, at_hand, here, f"/board/{talk.board_token}/picture")
        case Looking.ONE:
            board = _board(room, at_hand, here, f"/one/{talk.one_token}/picture")
            return {**board, **_drawer(at_hand, here)}
        case Looking.DESK:
            with translation.override(talk.school_class.desk_language):
                return _desk(room, at_hand, here)


def _board(room: Room, at_hand: TalkAtHand, here: Around, pictures: str) -> dict[str, Any]:
    now = time.time_ns() // 1_000_000
    wall = wall_of(here.talk.school_class, here.children, pictures)
    return board_view(at_hand.state, wall, room.wide, now)


def _drawer(at_hand: TalkAtHand, here: Around) -> dict[str, Any]:
    """Return what the one screen's drawer needs besides the board: the names, undo, what is next.

    Of the next problem only its id: what it asks is for later.
    """
    state = at_hand.state
    coming = (each.id for each in state.problems if each.id not in state.shown)
    return {
        "next": next(coming, None),
        "once_more": state.now is not None and state.now not in state.looked_again,
        "roster": [{"id": each.key, "name": each.name} for each in here.children if each.active],
        "can_undo": can_undo(at_hand),
    }


def can_undo(at_hand: TalkAtHand) -> dict[str, Any] | None:
    """Return the event that one tap takes back, or None at the talk's start."""
    last = at_hand.state.last
    if last is None:
        return None
    return {"client": last.client, "sequence": last.sequence, "what": last.kind}


def _desk(room: Room, at_hand: TalkAtHand, here: Around) -> dict[str, Any]:
    talk = here.talk
    history = history_before(talk) if room.history else History()
    desk = Desk(here, at_hand.state, history, shows_history=room.history)
    now = time.time_ns() // 1_000_000
    return {
        "order": at_hand.order,
        "now": now,
        "saved_by": dict(at_hand.saved_by),
        "can_undo": can_undo(at_hand),
        **desk_view(desk),
        "image": image_view(at_hand.state, desk.language, now),
        "board": _board(room, at_hand, here, f"/talks/{talk.pk}/picture"),
        "board_token": talk.board_token if room.owner else None,
        "one_token": talk.one_token if room.owner else None,
        "network": network_view(talk.pk, owner=room.owner),
    }
