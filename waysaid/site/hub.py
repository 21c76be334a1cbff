"""Who is watching: rooms of open streams, and the frames that are handed to them.

One process, one hub. A room is one way of looking at one talk, so that a frame is made once for
everybody who looks that way. A stream that does not keep up is dropped; it comes back by itself
and starts from a fresh full state.
"""

import asyncio
import contextlib
import threading
from dataclasses import dataclass, field
from enum import StrEnum

LONGEST_QUEUE = 64
"""Frames that may wait for one slow stream (our choice: more than a minute of a busy talk)."""


class Looking(StrEnum):
    """Whose eyes a room has."""

    DESK = "desk"
    BOARD = "board"
    ONE = "one"


@dataclass(frozen=True, slots=True)
class Room:
    """One way of looking at one talk; `wide` is in tenths of a percent of the screen's height.

    `history` is false for a substitute; `owner` is false for a device that joined.
    """

    talk: int
    looking: Looking
    wide: int = 1778
    history: bool = False
    owner: bool = False


@dataclass(frozen=True, slots=True)
class Frame:
    """The bytes of one server-sent event; a higher version is a later state of the talk."""

    version: int
    data: bytes


@dataclass(eq=False, slots=True)
class Watcher:
    """One open stream. A None in its queue says that it is over."""

    room: Room
    queue: "asyncio.Queue[Frame | None]" = field(
        default_factory=lambda: asyncio.Queue(LONGEST_QUEUE)
    )
    over: bool = False


class Hub:
    """The rooms that are open now. `send` and `rooms_of` may be called from any thread."""

    def __init__(self) -> None:
        self._rooms: dict[Room, set[Watcher]] = {}
        self._lock = threading.Lock()
        self._loop: asyncio.AbstractEventLoop | None = None
        self._closed = False

    def open(self, loop: asyncio.AbstractEventLoop) -> None:
        """Begin on this loop; the streams live on it."""
        self._loop = loop
        self._closed = False

    def join(self, room: Room) -> Watcher:
        """Return a new watcher of the room; call it on the loop."""
        watcher = Watcher(room)
        with self._lock:
            self._rooms.setdefault(room, set()).add(watcher)
        if self._closed:
            self._end(watcher)
        return watcher

    def leave(self, watcher: Watcher) -> None:
        """Forget a watcher; one that is gone already is no error."""
        with self._lock:
            watchers = self._rooms.get(watcher.room, set())
            watchers.discard(watcher)
            if not watchers:
                self._rooms.pop(watcher.room, None)

    def rooms_of(self, talk: int) -> tuple[Room, ...]:
        """Return the rooms in which somebody watches this talk."""
        with self._lock:
            return tuple(room for room in self._rooms if room.talk == talk)

    def watchers(self) -> int:
        """Return how many streams are open."""
        with self._lock:
            return sum(len(each) for each in self._rooms.values())

    def send(self, room: Room, frame: Frame) -> None:
        """Hand a frame to everyone in the room."""
        self._on_loop(room, frame)

    def empty(self, talk: int, *, devices_only: bool = False) -> None:
        """End the streams of a talk: all, or those of devices that joined."""
        for room in self.rooms_of(talk):
            if not (devices_only and room.owner):
                self._on_loop(room, None)

    def close(self) -> None:
        """End every stream, so that the server can stop at once; a signal may call it."""
        self._closed = True
        if self._loop is not None:
            with contextlib.suppress(RuntimeError):
                self._loop.call_soon_threadsafe(self._close)

    def _close(self) -> None:
        with self._lock:
            rooms = tuple(self._rooms)
        for room in rooms:
            self._deliver(room, None)

    def _on_loop(self, room: Room, frame: Frame | None) -> None:
        if self._loop is not None:
            # The loop may have ended between the look and the call: then nobody is watching.
            with contextlib.suppress(RuntimeError):
                self._loop.call_soon_threadsafe(self._deliver, room, frame)

    def _deliver(self, room: Room, frame: Frame | None) -> None:
        with self._lock:
            watchers = tuple(self._rooms.get(room, ()))
        for watcher in watchers:
            if frame is None or watcher.queue.full():
                self._end(watcher)
            else:
                watcher.queue.put_nowait(frame)

    def _end(self, watcher: Watcher) -> None:
        self.leave(watcher)
        watcher.over = True
        while not watcher.queue.empty():
            watcher.queue.get_nowait()
        watcher.queue.put_nowait(None)


HUB = Hub()
