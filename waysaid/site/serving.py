"""Bring the data up to date, then serve until a signal says stop."""

import asyncio
import contextlib
import json
import signal
import socket
import sys
import threading
import time
import webbrowser
from collections.abc import Iterator
from pathlib import Path
from types import FrameType

import uvicorn
from django.conf import settings
from django.core.management import call_command
from django.db import DatabaseError, connection
from django.db.migrations.executor import MigrationExecutor

from waysaid.hearing import read
from waysaid.number import Language, parse
from waysaid.site import daily
from waysaid.site.asgi import application
from waysaid.site.collector import look_rarely
from waysaid.site.demo import make_demo
from waysaid.site.errors import NotReadyError
from waysaid.site.gate import Door, guarded, own_door
from waysaid.site.hub import HUB
from waysaid.site.network import NETWORK, server_config
from waysaid.site.opening import make_opening
from waysaid.site.views.running import RUNNING_KEY

HAND_OVER_SECONDS = 0.0005
"""How long a thread that makes a desk's state may keep the streams' loop waiting (our choice; the
interpreter's own 5 ms is as long as all the rest of a tap)."""
SPOKEN = {
    Language.EN: "eight and two is ten and three more is thirteen",
    Language.ES: "ocho y dos son diez y tres son trece",
}
"""A line in each language that needs its word list."""
STOPPING = (signal.SIGINT, signal.SIGTERM)


class MainServer(uvicorn.Server):
    """The first listener: a signal ends the streams and the network's door, then itself."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Take the signals while serving, and end quietly: what must be put away still is."""
        before = {each: signal.signal(each, self.handle_exit) for each in STOPPING}
        try:
            yield
        finally:
            for each, handler in before.items():
                signal.signal(each, handler)

    def handle_exit(self, sig: int, frame: FrameType | None) -> None:
        """Let the streams go before waiting for them."""
        HUB.close()
        NETWORK.stop_listening()
        super().handle_exit(sig, frame)


def make_ready(*, demo: bool) -> None:
    """Bring the tables up to date, and fill the demo's with its invented class.

    Raises `NotReadyError` where the database refuses.
    """
    try:
        executor = MigrationExecutor(connection)
        if executor.migration_plan(executor.loader.graph.leaf_nodes()):
            call_command("migrate", interactive=False, verbosity=0)
        call_command("clearsessions")
        if demo:
            make_demo()
    except DatabaseError as error:
        raise NotReadyError(f"The data cannot be opened: {error}.") from None
    finally:
        connection.close()


def opening_address(origin: str) -> str:
    """Return the one address to open: with a one-time token on a teacher's own machine."""
    return f"{origin}/" if settings.SCHOOL_SERVER else f"{origin}/open/{make_opening()}"


def serve(
    mark: Path, listener: socket.socket, *, open_browser: bool, day_by_day: bool = True
) -> None:
    """Serve at the listener until stopped; `mark` tells a second start where the first is.

    With `day_by_day` a backup is made and what is due goes, every day.
    """
    port = int(listener.getsockname()[1])
    door = own_door(port)
    if settings.SCHOOL_SERVER:
        door = Door(door.origins | frozenset(settings.ORIGINS))
    origin = settings.ORIGINS[0] if settings.ORIGINS else f"http://127.0.0.1:{port}"
    address = opening_address(origin)
    server = MainServer(server_config(guarded(application, door)))
    announcing = threading.Thread(
        target=_announce, args=(server, address, open_browser), daemon=True
    )
    mark.write_text(json.dumps({"port": port, "key": RUNNING_KEY}), encoding="utf-8")
    announcing.start()
    if day_by_day:
        daily.begin()
    sys.setswitchinterval(HAND_OVER_SECONDS)
    try:
        with asyncio.Runner(loop_factory=server.config.get_loop_factory()) as runner:
            runner.run(_run(server, listener, port))
    finally:
        mark.unlink(missing_ok=True)


async def _run(server: MainServer, listener: socket.socket, port: int) -> None:
    loop = asyncio.get_running_loop()
    HUB.open(loop)
    NETWORK.prepare(application, loop, port)
    await server.serve(sockets=[listener])


def _announce(server: MainServer, address: str, open_browser: bool) -> None:
    """Print the one address, once it answers."""
    while not server.started:
        if server.should_exit:
            return
        time.sleep(0.01)
    print(f"Waysaid is ready: {address}", flush=True)
    if open_browser:
        webbrowser.open(address)
    _settle()


def _settle() -> None:
    """Read a line in each language, so that the first one typed waits for no word list."""
    for language, line in SPOKEN.items():
        read(parse("8 + 5"), line, language)
    look_rarely()
