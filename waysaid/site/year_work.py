"""Work that takes seconds, done beside the site: in a process of its own, one at a time.

What a talk needs at a tap is never kept waiting by it. Nothing is kept of work that fails; what is
being worked on lives in memory only, so a restart ends it without a trace.
"""

import logging
import multiprocessing
import os
import threading
from collections.abc import Callable
from contextlib import suppress
from multiprocessing.connection import Connection
from typing import Any

from django.db import connections

log = logging.getLogger(__name__)
GENTLE = 10
"""How far the work steps back behind all else, as `nice` counts: our choice."""


class Works:
    """The work of each class. Every method may be called from any thread."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._turn = threading.Lock()
        self._busy: set[int] = set()
        self._said: dict[int, str] = {}

    def begin(self, owner: int, work: Callable[[], Any], keep: Callable[[Any], str]) -> bool:
        """Work apart for a class, then keep what came of it here; False while it is at work.

        `work` goes to another process; what `keep` returns, if anything, is told once by `said`.
        """
        with self._lock:
            if owner in self._busy:
                return False
            self._busy.add(owner)
            self._said.pop(owner, None)
        threading.Thread(target=self._do, args=(owner, work, keep), daemon=True).start()
        return True

    def busy(self, owner: int) -> bool:
        """Tell whether there is work for a class."""
        with self._lock:
            return owner in self._busy

    def said(self, owner: int) -> str:
        """Return what the last work said, once."""
        with self._lock:
            return self._said.pop(owner, "")

    def _do(self, owner: int, work: Callable[[], Any], keep: Callable[[Any], str]) -> None:
        says = FAILED
        try:
            with self._turn:
                made = _apart(work)
            says = keep(made)
        except Exception:
            log.exception("The work on a year failed.")
        finally:
            connections.close_all()
            with self._lock:
                self._busy.discard(owner)
                if says:
                    self._said[owner] = says


FAILED = "failed"
"""What is said of work that ended without a result."""

WORKS = Works()


def _apart(work: Callable[[], Any]) -> Any:
    """Return what `work` returns in a process of its own. Raises `EOFError` where it ends early."""
    spawning = multiprocessing.get_context("spawn")
    here, there = spawning.Pipe(duplex=False)
    process = spawning.Process(target=_told, args=(work, there), daemon=True)
    process.start()
    there.close()
    try:
        return here.recv()
    finally:
        here.close()
        process.join()


def _told(work: Callable[[], Any], there: Connection) -> None:
    with suppress(OSError, AttributeError):
        os.nice(GENTLE)
    there.send(work())
    there.close()
