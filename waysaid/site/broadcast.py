"""Tell everyone who watches a talk how it stands now."""

import json
import logging
from collections.abc import Iterable

from django.db import DatabaseError
from django.utils import timezone

from waysaid.site import access, network
from waysaid.site.glimpse import hide_later
from waysaid.site.hub import HUB, Frame, Looking, Room
from waysaid.site.models import Talk, new_token
from waysaid.site.payload import payload, row_of
from waysaid.site.record import TalkAtHand, at_hand

log = logging.getLogger(__name__)


SENDING_SECONDS = 0.05
"""How long a desk's state waits until the boards' are in their sockets (our choice: a slow board
holds nobody up for longer than a blink)."""


def frame_of(room: Room, talk: TalkAtHand, row: Talk | None = None) -> Frame:
    """Return the whole state as this room sees it, as one server-sent event.

    `row` is the talk's row where it was read just now.
    """
    with talk.lock:
        shown = payload(room, talk, row)
        body = json.dumps(shown, ensure_ascii=False, separators=(",", ":"))
        data = f"event: state\nid: {talk.order}\ndata: {body}\n\n".encode()
        return Frame(talk.next_version(), data)


def tell(talk_id: int, order: int | None = None) -> None:
    """Send the talk as it stands, or stood after the event of this order, to all who watch it.

    What was saved stays saved whatever happens here, so a failure is logged and goes no further:
    the streams catch up with the next event or when they come back.
    """
    try:
        talk = at_hand(talk_id, order)
        rooms = HUB.rooms_of(talk_id)
        desks = tuple(room for room in rooms if room.looking is Looking.DESK)
        boards = tuple(room for room in rooms if room.looking is not Looking.DESK)
        if talk.state.closed:
            network.close_after(talk_id)
        # The class's eyes first: a desk already knows what it sent.
        _send(boards, talk)
        if desks:
            HUB.wait_until_sent(boards, SENDING_SECONDS)
            _send(desks, talk)
        hide_later(talk_id, talk.state, tell)
    except Talk.DoesNotExist:
        log.info("A talk was deleted before its watchers could be told.")
    except Exception:
        log.exception("The watchers of a talk could not be told.")


def _send(rooms: Iterable[Room], talk: TalkAtHand) -> None:
    with talk.lock:
        row = row_of(talk.talk_id)
        _keep_closing(talk, row)
        for room in rooms:
            HUB.send(room, frame_of(room, talk, row))


def _keep_closing(talk: TalkAtHand, row: Talk) -> None:
    """Note beside the talk when it was closed."""
    closed = talk.state.closed
    if closed == (row.closed_at is not None):
        return
    try:
        if access.long_over(row):
            # It goes on after its addresses had ended: whoever still has one stays outside.
            row.board_token, row.one_token = new_token(), new_token()
        row.closed_at = timezone.now() if closed else None
        row.save(update_fields=["closed_at", "board_token", "one_token"])
    except DatabaseError:
        log.exception("The closing of a talk could not be noted beside it.")
