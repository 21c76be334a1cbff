"""What composing takes is made ready off the request's path: the last wish, one at a time."""

import threading

from waysaid.site.warming import Warmer
from waysaid.strings import Wish, WishError
from waysaid.ways import Family

FIRST, SECOND, THIRD = (Wish(grade, Family.NEAR_DOUBLE) for grade in (1, 2, 3))
LONG = 20
"""Seconds that a test waits for another thread at most."""


class Kitchen:
    """Prepares wishes, each when it is let to; one of grade 3 clashes."""

    def __init__(self):
        self.begun = threading.Semaphore(0)
        self.let = threading.Semaphore(0)
        self.seen = []

    def prepare(self, wish):
        """Note a wish, and wait to be let go on."""
        self.seen.append(wish)
        self.begun.release()
        assert self.let.acquire(timeout=LONG)
        if wish.grade == THIRD.grade:
            raise WishError("clash")


def test_asking_returns_at_once_and_a_wish_that_waits_gives_way_to_the_last():
    kitchen = Kitchen()
    warmer = Warmer(kitchen.prepare)
    warmer.ask(FIRST)
    assert kitchen.begun.acquire(timeout=LONG)
    warmer.ask(SECOND)
    warmer.ask(THIRD)
    assert kitchen.seen == [FIRST]
    kitchen.let.release()
    assert kitchen.begun.acquire(timeout=LONG)
    assert kitchen.seen == [FIRST, THIRD]
    warmer.ask(SECOND)
    kitchen.let.release()
    assert kitchen.begun.acquire(timeout=LONG)
    assert kitchen.seen == [FIRST, THIRD, SECOND]
    kitchen.let.release()
