"""Six digits let a tablet or a phone join one talk, once, within five minutes.

Codes live in memory only: after a restart the teacher asks for a new one. Five wrong tries end the
codes that the guess could have meant, and wrong tries are limited in total as well.
"""

import secrets
import threading
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import Enum

from waysaid.site.models import Role

LIFE_SECONDS = 300
"""A code's life (promised: five minutes)."""
MOST_WRONG = 5
"""Wrong tries that end a code (promised)."""
MOST_WRONG_IN_ALL = 30
"""Wrong tries in `LIFE_SECONDS` from everywhere together, after which none is taken (our choice:
with one code out, a guesser finds it in 1 of 30,000 such spells)."""


@dataclass(frozen=True, slots=True)
class Code:
    """A code for one talk and role; `until` is in seconds since 1970."""

    talk: int
    role: Role
    history: bool
    digits: str
    until: float
    wrong: int = 0


class Refused(Enum):
    """Why a code was not taken."""

    WRONG = "wrong"
    TOO_MANY = "too many"


class Pairing:
    """The codes that are out. Every method may be called from any thread."""

    def __init__(self, clock: Callable[[], float] = time.time) -> None:
        self._clock = clock
        self._lock = threading.Lock()
        self._codes: dict[tuple[int, Role], Code] = {}
        self._wrong: deque[float] = deque()

    def offer(self, talk: int, role: Role, *, history: bool = True) -> Code:
        """Return a new code; an earlier one for the same talk and role ends."""
        with self._lock:
            taken = {code.digits for code in self._codes.values()}
            digits = f"{secrets.randbelow(1_000_000):06d}"
            while digits in taken:
                digits = f"{secrets.randbelow(1_000_000):06d}"
            code = Code(talk, role, history, digits, self._clock() + LIFE_SECONDS)
            self._codes[talk, role] = code
            return code

    def codes_of(self, talk: int) -> tuple[Code, ...]:
        """Return the codes of a talk that would be taken now."""
        with self._lock:
            self._tidy()
            return tuple(code for code in self._codes.values() if code.talk == talk)

    def redeem(self, digits: str, talk: int | None) -> Code | Refused:
        """Take a code, once. `talk` narrows it to the talk whose door it was given at."""
        with self._lock:
            self._tidy()
            if len(self._wrong) >= MOST_WRONG_IN_ALL:
                return Refused.TOO_MANY
            meant = [code for code in self._codes.values() if talk in (None, code.talk)]
            given = digits.encode()
            found = [c for c in meant if secrets.compare_digest(c.digits.encode(), given)]
            for code in found:
                del self._codes[code.talk, code.role]
                return code
            self._wrong.append(self._clock())
            for code in meant:
                self._codes[code.talk, code.role] = replace(code, wrong=code.wrong + 1)
            self._tidy()
            return Refused.WRONG

    def end(self, talk: int) -> None:
        """End every code of a talk."""
        with self._lock:
            self._codes = {key: code for key, code in self._codes.items() if code.talk != talk}

    def _tidy(self) -> None:
        now = self._clock()
        self._codes = {
            key: code
            for key, code in self._codes.items()
            if code.until > now and code.wrong < MOST_WRONG
        }
        while self._wrong and self._wrong[0] <= now - LIFE_SECONDS:
            self._wrong.popleft()


PAIRING = Pairing()
