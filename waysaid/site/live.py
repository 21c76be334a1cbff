"""The live streams, beside Django and not inside it, so that a stream holds no thread.

A stream opens with the whole state and sends the whole state after every event; a ping every
15 seconds keeps it open. It ends when its reader falls behind, when what it may see is taken away,
and when the server stops.
"""

import asyncio
import contextlib
import logging
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import Any, TypeVar
from urllib.parse import parse_qs

from django.db import DatabaseError, close_old_connections
from django.http import parse_cookie

from waysaid.site import access
from waysaid.site.broadcast import frame_of
from waysaid.site.gate import DOOR_HEADER, Receive, Scope, Send, say
from waysaid.site.hub import HUB, Frame, Looking, Room, Watcher
from waysaid.site.middleware import SAFE_HEADERS
from waysaid.site.record import at_hand

log = logging.getLogger(__name__)
Result = TypeVar("Result")

PING_SECONDS = 15.0
BOARD_WIDTH = 1778
"""A 16:9 screen, where the page does not say how wide it is."""
NOT_OPEN = "Nothing is open at this address."
NO_DISK = "The talk cannot be read from the disk at the moment; this page will try again."
PING = b"event: ping\ndata: still here\n\n"
"""Sent every `PING_SECONDS`, so that a page notices a silence."""
HELLO = b"retry: 1000\n\n"
"""A stream that was lost is asked for again after a second."""

_threads = ThreadPoolExecutor(max_workers=4, thread_name_prefix="live")


async def live(scope: Scope, receive: Receive, send: Send) -> None:
    """Answer /live/desk/<talk>, /live/board/<token> and /live/one/<token>."""
    watcher: Watcher | None = None
    try:
        room = await _in_thread(lambda: _room(scope))
        if room is None:
            await say(send, 404, NOT_OPEN)
            return
        # Joined before the first state is read, so that nothing falls between the two.
        watcher = HUB.join(room)
        frame = await _in_thread(lambda: frame_of(room, at_hand(room.talk)))
        await _stream(watcher, frame, receive, send)
    except DatabaseError:
        log.exception("A stream could not be opened.")
        await say(send, 503, NO_DISK)
    except asyncio.CancelledError:
        log.debug("A stream ended with the server.")
    finally:
        if watcher is not None:
            HUB.leave(watcher)


async def _stream(watcher: Watcher, frame: Frame, receive: Receive, send: Send) -> None:
    await send({"type": "http.response.start", "status": 200, "headers": _headers()})
    await _chunk(send, HELLO + frame.data)
    gone = asyncio.ensure_future(_until_gone(receive))
    try:
        await _relay(watcher, frame.version, gone, send)
        if not gone.done():
            await send({"type": "http.response.body", "body": b"", "more_body": False})
    finally:
        gone.cancel()
        with contextlib.suppress(asyncio.CancelledError):
            await gone


async def _relay(watcher: Watcher, version: int, gone: "asyncio.Future[None]", send: Send) -> None:
    """Pass frames on until the reader is gone or the stream is over."""
    while True:
        waiting = asyncio.ensure_future(watcher.queue.get())
        either: set[asyncio.Future[Any]] = {waiting, gone}
        done, _ = await asyncio.wait(
            either, timeout=PING_SECONDS, return_when=asyncio.FIRST_COMPLETED
        )
        if waiting not in done:
            waiting.cancel()
            if gone in done:
                return
            await _chunk(send, PING)
            continue
        frame: Frame | None = waiting.result()
        if frame is None:
            return
        if frame.version > version:
            version = frame.version
            await _chunk(send, frame.data)


async def _chunk(send: Send, data: bytes) -> None:
    await send({"type": "http.response.body", "body": data, "more_body": True})


async def _until_gone(receive: Receive) -> None:
    while (await receive())["type"] != "http.disconnect":
        pass


def _headers() -> list[tuple[bytes, bytes]]:
    own = {"Content-Type": "text/event-stream; charset=utf-8", "Cache-Control": "no-store"}
    every = own | SAFE_HEADERS | {"X-Accel-Buffering": "no"}
    return [(name.lower().encode(), value.encode()) for name, value in every.items()]


async def _in_thread(work: Callable[[], Result]) -> Result:
    """Run work that reads the database in one of a few threads kept for it."""

    def done_tidily() -> Result:
        close_old_connections()
        try:
            return work()
        finally:
            close_old_connections()

    return await asyncio.get_running_loop().run_in_executor(_threads, done_tidily)


def _room(scope: Scope) -> Room | None:
    """Return the room that the request may enter, or None."""
    parts = str(scope["path"]).split("/")
    if len(parts) != 4 or scope["method"] != "GET":
        return None
    looking, what = parts[2], parts[3]
    visitor = _visitor(scope)
    if looking == Looking.DESK and what.isascii() and what.isdigit() and len(what) < 16:
        seat = access.desk_seat(visitor, int(what))
        if seat is None:
            return None
        wide = _wide(scope)
        return Room(seat.talk.pk, Looking.DESK, wide, seat.history, seat.owner)
    if looking in (Looking.BOARD, Looking.ONE):
        talk = access.talk_of_board(visitor, what, one_screen=looking == Looking.ONE)
        if talk is not None:
            own = visitor.door is None
            return Room(talk.pk, Looking(looking), _wide(scope), owner=own)
    return None


def _visitor(scope: Scope) -> access.Visitor:
    headers = {key.lower(): value.decode("latin-1") for key, value in scope["headers"]}
    door = headers.get(DOOR_HEADER)
    cookies = parse_cookie(headers.get(b"cookie", ""))
    return access.visitor_of_cookies(cookies, int(door) if door else None)


def _wide(scope: Scope) -> int:
    """Return the screen's width as the page gave it, kept to whole steps and sane limits."""
    given = parse_qs(scope["query_string"].decode("latin-1")).get("wide", [""])[0]
    if not (given.isascii() and given.isdigit() and len(given) < 6):
        return BOARD_WIDTH
    return min(max(int(given), 300), 4000)
