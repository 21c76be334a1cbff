"""Tell everyone who watches a talk how it stands now."""

import json
import logging

from django.db import DatabaseError
from django.utils import timezone

from waysaid.site import access, network
from waysaid.site.hub import HUB, Frame, Looking, Room
from waysaid.site.models import Talk, new_token
from waysaid.site.payload import payload
from waysaid.site.record import TalkAtHand, at_hand

log = logging.getLogger(__name__)


def frame_of(room: Room, talk: TalkAtHand) -> Frame:
    """Return the whole state as this room sees it, as one server-sent event."""
    with talk.lock:
        body = json.dumps(payload(room, talk), ensure_ascii=False, separators=(",", ":"))
        data = f"event: state\nid: {talk.order}\ndata: {body}\n\n".encode()
        return Frame(talk.next_version(), data)


def tell(talk_id: int) -> None:
    """Send the talk as it stands to every room that watches it.

    What was saved stays saved whatever happens here, so a failure is logged and goes no further:
    the streams catch up with the next event or when they come back.
    """
    try:
        talk = at_hand(talk_id)
        _keep_closing(talk)
        with talk.lock:
            # The class's eyes first: a desk already knows what it sent.
            for room in sorted(
                HUB.rooms_of(talk_id), key=lambda each: each.looking is Looking.DESK
            ):
                HUB.send(room, frame_of(room, talk))
    except Exception:
        log.exception("The watchers of a talk could not be told.")


def _keep_closing(talk: TalkAtHand) -> None:
    """Note beside the talk when it was closed, and shut the school network's door behind it."""
    closed = talk.state.closed
    if closed:
        network.close_after(talk.talk_id)
    try:
        row = Talk.objects.filter(pk=talk.talk_id, closed_at__isnull=closed).first()
        if row is None:
            return
        if access.long_over(row):
            # It goes on after its addresses had ended: whoever still has one stays outside.
            row.board_token, row.one_token = new_token(), new_token()
        row.closed_at = timezone.now() if closed else None
        row.save(update_fields=["closed_at", "board_token", "one_token"])
    except DatabaseError:
        log.exception("The closing of a talk could not be noted beside it.")
