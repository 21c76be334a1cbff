"""Who may knock at all: exact Host and Origin checks, before Django and before the live streams.

A door is one address the server listens at. The teacher's own door is the loopback address and
leads everywhere. The school network's door is open for one talk at a time and leads only to the
pages a joined device needs. Each door is told apart by the socket a request came in at, not by
what the request says of itself.
"""

import re
from collections.abc import Awaitable, Callable, Iterable, MutableMapping
from dataclasses import dataclass
from typing import Any

Scope = MutableMapping[str, Any]
Receive = Callable[[], Awaitable[MutableMapping[str, Any]]]
Send = Callable[[MutableMapping[str, Any]], Awaitable[None]]
App = Callable[[Scope, Receive, Send], Awaitable[None]]

SAFE_METHODS = frozenset({"GET", "HEAD", "OPTIONS"})
DOOR_HEADER = b"x-waysaid-door"
DOOR_META = "HTTP_X_WAYSAID_DOOR"
STRANGE_HOST = "This address is not one that Waysaid answers to here."
STRANGE_ORIGIN = "This request did not come from a page of Waysaid at this address."
NOT_THIS_WAY = "This page is only for the teacher's own machine."
TOO_MUCH = "This is more than Waysaid takes at once."
LARGEST_BODY = 6 * 1024 * 1024
"""Bytes of one request: a picture of 5 MB and the form around it."""


@dataclass(frozen=True, slots=True)
class Door:
    """An address we listen at: the origins it answers to, and the one talk it leads to, if so."""

    origins: frozenset[str]
    talk: int | None = None

    @property
    def hosts(self) -> frozenset[str]:
        """The Host headers a browser sends to these origins."""
        return frozenset(origin.split("://", 1)[1] for origin in self.origins)


def own_door(port: int) -> Door:
    """Return the door of the teacher's own machine."""
    return Door(frozenset({f"http://127.0.0.1:{port}", f"http://localhost:{port}"}))


def leads_to(door: Door, path: str) -> bool:
    """Tell whether this door leads to a path: all of them, or those of the talk's devices."""
    if door.talk is None:
        return True
    if path == "/join" or path.startswith(("/board/", "/one/", "/live/", "/static/")):
        return True
    return (
        re.fullmatch(rf"/talks/{door.talk}/(desk|desk\.json|events|read|links)", path) is not None
    )


def refusal(door: Door, scope: Scope) -> tuple[int, str] | None:
    """Return the status and the sentence of a refusal, or None for a request that may go on."""
    host = _only(scope, b"host")
    if host is None or host.lower() not in door.hosts:
        return 421, STRANGE_HOST
    origin = _only(scope, b"origin")
    unsafe = scope["method"] not in SAFE_METHODS
    streaming = scope["path"].startswith("/live/")
    if (unsafe or (streaming and origin is not None)) and not _same(door, origin, host):
        return 403, STRANGE_ORIGIN
    if streaming and _only(scope, b"sec-fetch-site") not in (None, "same-origin"):
        return 403, STRANGE_ORIGIN
    if not leads_to(door, scope["path"]):
        return 404, NOT_THIS_WAY
    length = _only(scope, b"content-length")
    if length is not None and not (length.isdigit() and int(length) <= LARGEST_BODY):
        return 413, TOO_MUCH
    return None


def _same(door: Door, origin: str | None, host: str) -> bool:
    """Tell whether the origin is this door's own, and that of the very host asked for."""
    return origin in door.origins and origin.split("://", 1)[1] == host.lower()


def _only(scope: Scope, name: bytes) -> str | None:
    """Return a header's value if it is there exactly once; a doubled one counts as strange."""
    found = [value for key, value in scope["headers"] if key.lower() == name]
    if not found:
        return None
    return found[0].decode("latin-1") if len(found) == 1 else ""


def _marked(headers: Iterable[tuple[bytes, bytes]], door: Door) -> list[tuple[bytes, bytes]]:
    kept = [(key, value) for key, value in headers if key.lower() != DOOR_HEADER]
    if door.talk is not None:
        kept.append((DOOR_HEADER, str(door.talk).encode()))
    return kept


def guarded(app: App, door: Door) -> App:
    """Return the app behind this door."""

    async def behind_the_door(scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "lifespan":
            await app(scope, receive, send)
            return
        if scope["type"] != "http":
            return
        refused = refusal(door, scope)
        if refused is not None:
            await say(send, *refused)
            return
        marked = {**scope, "headers": _marked(scope["headers"], door)}
        await app(marked, _measured(receive), send)

    return behind_the_door


def _measured(receive: Receive) -> Receive:
    """Return `receive`, which cuts off a body that goes on after the most we take."""
    taken = 0

    async def receive_no_more_than_we_take() -> MutableMapping[str, Any]:
        nonlocal taken
        message = await receive()
        taken += len(message.get("body", b""))
        return message if taken <= LARGEST_BODY else {"type": "http.disconnect"}

    return receive_no_more_than_we_take


async def say(send: Send, status: int, sentence: str) -> None:
    """Answer with one plain sentence."""
    body = f"{sentence}\n".encode()
    headers = [
        (b"content-type", b"text/plain; charset=utf-8"),
        (b"content-length", str(len(body)).encode()),
        (b"x-content-type-options", b"nosniff"),
        (b"cache-control", b"no-store"),
    ]
    await send({"type": "http.response.start", "status": status, "headers": headers})
    await send({"type": "http.response.body", "body": body})
