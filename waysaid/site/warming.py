"""Have ready what strings are composed from, before it is asked for.

What a grade has for an idea takes a second or more to put together, once; with it a string is
composed within a tap.
"""

import threading
from collections import defaultdict
from collections.abc import Callable
from contextlib import suppress

from waysaid.strings import Topic, Wish, WishError, pool_for, topic_of
from waysaid.ways import Family

_LOCKS: defaultdict[tuple[int, Topic, Family], threading.Lock] = defaultdict(threading.Lock)


def ready(wish: Wish) -> None:
    """Put together what a wish is composed from: once, whoever asks for it meanwhile.

    A wish that clashes has nothing; composing it says why.
    """
    plain = Wish(wish.grade, wish.focus, wish.length, topic=wish.topic)
    try:
        topic = topic_of(plain)
        with _LOCKS[wish.grade, topic, wish.focus]:
            pool_for(plain, topic)
    except WishError:
        return


class Warmer:
    """Prepares what was wished for last, one wish at a time, off the request's path."""

    def __init__(self, prepare: Callable[[Wish], object]) -> None:
        self._prepare = prepare
        self._lock = threading.Lock()
        self._next: Wish | None = None
        self._works = False

    def ask(self, wish: Wish) -> None:
        """Have a wish prepared, and return at once; one that still waits is forgotten."""
        with self._lock:
            self._next = wish
            if self._works:
                return
            self._works = True
        threading.Thread(target=self._work, daemon=True).start()

    def _work(self) -> None:
        try:
            while (wish := self._take()) is not None:
                with suppress(WishError):
                    self._prepare(wish)
        finally:
            with self._lock:
                self._works = False

    def _take(self) -> Wish | None:
        with self._lock:
            wish, self._next = self._next, None
            self._works = wish is not None
            return wish
