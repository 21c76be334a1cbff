"""Tell everyone who watches a talk how it stands now."""

import json
import logging
import time
from collections.abc import Iterable

from django.db import DatabaseError
from django.utils import timezone

from waysaid.site import access, network
from waysaid.site.around import Around, around, row_of
from waysaid.site.glimpse import hide_later
from waysaid.site.hub import HUB, Frame, Looking, Room
from waysaid.site.models import Talk, new_token
from waysaid.site.payload import payload
from waysaid.site.record import TalkAtHand, at_hand
from waysaid.site.wall import wall_of

log = logging.getLogger(__name__)


PAINTING_SECONDS = 0.04
"""How long the boards have to paint before a desk's state is made: made at once, and drawn, it took
5 to 10 ms from the board where both are on one machine (our choice: less than a blink)."""


def frame_of(room: Room, talk: TalkAtHand, known: Around | None = None) -> Frame:
    """Return the whole state as this room sees it, as one server-sent event.

    `known` is what is around the talk, where it was read before.
    """
    with talk.lock:
        shown = payload(room, talk, known)
        body = json.dumps(shown, ensure_ascii=False, separators=(",", ":"))
        data = f"event: state\nid: {talk.order}\ndata: {body}\n\n".encode()
        return Frame(talk.next_version(), data)


def tell(talk_id: int, order: int | None = None, known: Around | None = None) -> None:
    """Send the talk as it stands, or stood after the event of this order, to all who watch it.

    `known` is what was around the talk a moment ago: the boards wait for nothing to be read again,
    and are told once more where something differs by now.

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
        if known is not None and not _closing(talk, known):
            _send(boards, talk, known)
            if boards and desks:
                time.sleep(PAINTING_SECONDS)
        else:
            known = None
        with talk.lock:
            here = around(row_of(talk_id))
            _keep_closing(talk, here)
            if known is None or _walls(known) != _walls(here):
                _send(boards, talk, here)
            _send(desks, talk, here)
        hide_later(talk_id, talk.state, tell)
    except Talk.DoesNotExist:
        log.info("A talk was deleted before its watchers could be told.")
    except Exception:
        log.exception("The watchers of a talk could not be told.")


def _send(rooms: Iterable[Room], talk: TalkAtHand, here: Around) -> None:
    with talk.lock:
        for room in rooms:
            HUB.send(room, frame_of(room, talk, here))


def _walls(here: Around) -> tuple[object, ...]:
    """Return all that the boards show of what is around a talk."""
    talk = here.talk
    wall = wall_of(talk.school_class, here.children, "")
    return wall, talk.board_token, talk.one_token, here.children


def _closing(talk: TalkAtHand, here: Around) -> bool:
    """Tell whether the talk was closed, or goes on, since that was noted beside it."""
    return talk.state.closed != (here.talk.closed_at is not None)


def _keep_closing(talk: TalkAtHand, here: Around) -> None:
    """Note beside the talk when it was closed."""
    if not _closing(talk, here):
        return
    row = here.talk
    try:
        if access.long_over(row):
            # It goes on after its addresses had ended: whoever still has one stays outside.
            row.board_token, row.one_token = new_token(), new_token()
        row.closed_at = timezone.now() if talk.state.closed else None
        row.save(update_fields=["closed_at", "board_token", "one_token"])
    except DatabaseError:
        log.exception("The closing of a talk could not be noted beside it.")
