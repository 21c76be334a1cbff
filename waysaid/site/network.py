"""The school network's door: a second address, open for one talk while the teacher wants it.

It is a second listener on the same loop with the same streams. What goes over it is not
encrypted, which the page says where it is switched on.
"""

import asyncio
import contextlib
import os
import socket
import threading
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import uvicorn
from django.conf import settings
from django.utils.translation import gettext as _

from waysaid.site.gate import App, Door, guarded
from waysaid.site.hub import HUB
from waysaid.site.models import DeviceKey
from waysaid.site.pairing import PAIRING

START_SECONDS = 5


class NoNetworkError(RuntimeError):
    """Raised with one sentence when the door cannot be opened."""


class SecondServer(uvicorn.Server):
    """A listener that leaves the signals to the first."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Take no signal."""
        yield


@dataclass(slots=True)
class OpenDoor:
    """The door as it stands open: its talk, its address and its listener."""

    talk: int
    address: str
    server: uvicorn.Server
    task: "asyncio.Task[None] | None" = None


class SchoolNetwork:
    """Opens and shuts the door; called from the threads that answer pages."""

    def __init__(self) -> None:
        self._lock = threading.RLock()
        self._door: OpenDoor | None = None
        self._app: App | None = None
        self._loop: asyncio.AbstractEventLoop | None = None
        self._port = 0

    def prepare(self, app: App, loop: asyncio.AbstractEventLoop, port: int) -> None:
        """Say what the door leads to, on which loop, and which port to try first."""
        self._app, self._loop, self._port = app, loop, port

    def address(self, talk: int) -> str | None:
        """Return the address a device of this talk types, or None while the door is shut."""
        if settings.SCHOOL_SERVER:
            return f"{settings.ORIGINS[0]}/join" if settings.ORIGINS else None
        with self._lock:
            door = self._door
            return f"{door.address}/join" if door is not None and door.talk == talk else None

    def turn_on(self, talk: int) -> None:
        """Open the door for this talk; a door of another talk shuts. Raises `NoNetworkError`."""
        if settings.SCHOOL_SERVER:
            return
        with self._lock:
            if self._door is None or self._door.talk != talk:
                self.turn_off()
                self._door = self._opened(talk)

    def _opened(self, talk: int) -> OpenDoor:
        if self._app is None or self._loop is None:
            raise NoNetworkError(
                _("The school network can be switched on only in the running app.")
            )
        listener = _listener(self._port)
        host, port = listener.getsockname()[:2]
        address = f"http://{host}:{port}"
        app = guarded(self._app, Door(frozenset({address}), talk))
        door = OpenDoor(talk, address, SecondServer(server_config(app)))
        starting = asyncio.run_coroutine_threadsafe(_serve(door, listener), self._loop)
        starting.result(START_SECONDS)
        if not door.server.started:
            listener.close()
            raise _not_here(host)
        return door

    def turn_off(self, talk: int | None = None) -> None:
        """Shut the door (of this talk, or whosever it is); the devices' keys end with it."""
        with self._lock:
            door = self._door
            shut = talk if door is None or talk is not None else door.talk
            if door is not None and door.talk == shut:
                self._door = None
                door.server.should_exit = True
        if shut is not None:
            PAIRING.end(shut)
            DeviceKey.objects.filter(talk_id=shut).delete()
            HUB.empty(shut, devices_only=True)

    def stop_listening(self) -> None:
        """Let the listener go as the app stops; called from a signal, so it only says so."""
        door = self._door
        if door is not None:
            door.server.should_exit = True


NETWORK = SchoolNetwork()


def close_after(talk: int) -> None:
    """Shut the door behind a talk that is over."""
    if NETWORK.address(talk) is not None and not settings.SCHOOL_SERVER:
        NETWORK.turn_off(talk)


def server_config(app: App) -> uvicorn.Config:
    """Return how every listener of ours runs."""
    return uvicorn.Config(
        app,
        lifespan="off",
        access_log=False,
        log_config=None,
        log_level="warning",
        timeout_graceful_shutdown=2,
        server_header=False,
        proxy_headers=False,
    )


def own_network_address() -> str:
    """Return this machine's address on its network. Raises `NoNetworkError` where it has none.

    No packet is sent: connecting a datagram socket only asks this machine which way it would go.
    """
    given = os.environ.get("WAYSAID_LAN_ADDRESS")
    if given:
        return given
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked:
        try:
            asked.connect(("192.0.2.1", 9))
            address = str(asked.getsockname()[0])
        except OSError:
            address = ""
    if not address or address.startswith(("127.", "0.")):
        raise NoNetworkError(
            _("This machine is not on a network, so no other device can reach it.")
        )
    return address


def _listener(port: int) -> socket.socket:
    """Return a listening socket on the network's address, on this port if it is free."""
    address = own_network_address()
    for wanted in (port, 0):
        # Named as TCP, or the loop lets the end of an answer wait for a receipt, up to 40 ms.
        made = socket.socket(socket.AF_INET, socket.SOCK_STREAM, socket.IPPROTO_TCP)
        made.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            made.bind((address, wanted))
        except OSError:
            made.close()
        else:
            return made
    raise _not_here(address)


def _not_here(address: str) -> NoNetworkError:
    sentence = _("The network does not let Waysaid listen at %(address)s.")
    return NoNetworkError(sentence % {"address": address})


async def _serve(door: OpenDoor, listener: socket.socket) -> None:
    """Start the listener and come back once it listens."""
    door.task = asyncio.ensure_future(door.server.serve(sockets=[listener]))
    while not door.server.started and not door.task.done():
        await asyncio.sleep(0.01)


def network_view(talk: int, *, owner: bool) -> dict[str, Any]:
    """Return what the desk shows of the door; the codes are for the owner alone."""
    address = NETWORK.address(talk)
    codes = PAIRING.codes_of(talk) if owner and address else ()
    newest = max(codes, key=lambda code: code.until, default=None)
    return {
        "on": address is not None,
        "address": address,
        "code": newest.digits if newest else None,
        "role": newest.role.value if newest else None,
        "until": int(newest.until * 1000) if newest else None,
    }
