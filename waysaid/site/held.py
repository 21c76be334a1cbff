"""What somebody sent and is to look at before it is kept: in memory alone, and not for long."""

import secrets
import time
from collections import OrderedDict
from dataclasses import dataclass
from threading import Lock
from typing import TypeVar

MOST = 32
"""Things held at a time, the oldest let go first; none is larger than a talk file (our choice)."""
SECONDS = 20 * 60
"""How long a thing is held (our choice)."""
_Kind = TypeVar("_Kind")


@dataclass(frozen=True, slots=True)
class _Held:
    person: int
    until: float
    thing: object


_held: OrderedDict[str, _Held] = OrderedDict()
_lock = Lock()


def hold(person: int, thing: object) -> str:
    """Hold a thing for a person, by the id of her account; return the token that gives it back."""
    token = secrets.token_urlsafe(16)
    with _lock:
        _let_go()
        _held[token] = _Held(person, time.monotonic() + SECONDS, thing)
        while len(_held) > MOST:
            _held.popitem(last=False)
    return token


def holds(person: int, token: str, kind: type[_Kind]) -> _Kind | None:
    """Return what is held for this person, or None: it is another's, of another kind, or gone."""
    with _lock:
        _let_go()
        found = _held.get(token)
    if found is None or found.person != person or not isinstance(found.thing, kind):
        return None
    return found.thing


def let_go(person: int, token: str) -> None:
    """Hold it no longer."""
    if holds(person, token, object) is not None:
        with _lock:
            _held.pop(token, None)


def let_all_go() -> None:
    """Hold nothing any longer: what is erased for good waits nowhere either."""
    with _lock:
        _held.clear()


def _let_go() -> None:
    now = time.monotonic()
    for token in [token for token, each in _held.items() if each.until <= now]:
        del _held[token]
