"""Hide a quick image when its seconds are over: tell the watchers once more at that moment.

Each payload is made by the clock, so nothing here decides what may be seen; a board hides the dots
by itself as well, in case this message never comes.
"""

import threading
import time
from collections.abc import Callable

from django.db import connections

from waysaid.talk import State

LATER = 0.05
"""Seconds after the end of a look that it is told (our choice): by then no payload has the dots."""

_waiting: dict[int, tuple[int, threading.Timer]] = {}
_lock = threading.Lock()


def hide_later(talk_id: int, state: State, tell: Callable[[int], None]) -> None:
    """See to it that `tell` is called with the talk when the look that is on now is over.

    Once for each look; a later look, or none, takes the place of an earlier one.
    """
    left = state.look_left(time.time_ns() // 1_000_000)
    with _lock:
        waiting = _waiting.get(talk_id)
        if waiting is not None and waiting[0] == state.looking_since and left:
            return
        if waiting is not None:
            waiting[1].cancel()
            del _waiting[talk_id]
        if not left:
            return
        timer = threading.Timer(left / 1000 + LATER, _end, (talk_id, tell))
        timer.daemon = True
        _waiting[talk_id] = (state.looking_since, timer)
        timer.start()


def _end(talk_id: int, tell: Callable[[int], None]) -> None:
    """Tell the watchers; the thread ends, and its connection to the database with it."""
    try:
        tell(talk_id)
    finally:
        connections.close_all()
