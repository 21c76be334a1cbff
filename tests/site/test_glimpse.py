"""When a look at a quick image is over, the watchers are told; once for each look."""

import threading
import time

from waysaid.site.glimpse import hide_later
from waysaid.talk import State

PATIENCE = 60.0
"""Seconds a test waits for what should come; not a measure of anything."""


def looking(left, since=0):
    """A talk in which a picture is in sight for so many more milliseconds."""
    now = time.time_ns() // 1_000_000
    return State(image_seconds=1, looking_since=now - 1000 + left + since)


def test_the_end_of_a_look_is_told_once():
    told, done = [], threading.Event()

    def tell(talk):
        told.append(talk)
        done.set()

    state = looking(left=100)
    for _ in range(5):
        hide_later(901, state, tell)
    assert done.wait(PATIENCE)
    assert told == [901]


def test_a_look_that_was_cut_short_is_told_no_more():
    told = []
    hide_later(902, looking(left=400), told.append)
    hide_later(902, State(), told.append)
    done = threading.Event()
    hide_later(903, looking(left=800), lambda _talk: done.set())
    assert done.wait(PATIENCE)
    assert told == []


def test_nothing_is_waited_for_where_nothing_is_in_sight():
    before = threading.active_count()
    hide_later(904, State(), lambda _talk: None)
    assert threading.active_count() == before
