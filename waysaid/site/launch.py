"""Start Waysaid on this machine: make the data folder ready, listen, hand over to the server."""

import http.client
import json
import os
import socket
import sys
import webbrowser
from pathlib import Path

import django
from django.core.management import CommandError, call_command

from waysaid.site import place
from waysaid.site.errors import CannotStartError, NotReadyError

PORT = 8765
"""The port that is tried first (our choice); with the demo the one after it."""
MARK_FILE = "running.json"


def launch(*, demo: bool = False, port: int | None = None, open_browser: bool = True) -> int:
    """Run the app until it is stopped; return the exit status (2 when it cannot start).

    The demo keeps to a folder of its own inside the data folder. Without a port, another is taken
    where the usual one is in use; a server of this folder that runs already is opened instead.
    """
    try:
        _launch(demo=demo, port=port, open_browser=open_browser)
    except CannotStartError as error:
        print(error, file=sys.stderr)
        return 2
    return 0


def add_teacher(name: str, *, password_from_input: bool = False) -> int:
    """Make an account on a school's server, asking for its password; return the exit status.

    With `password_from_input` the password is the first line of standard input. The tables are
    made first where there are none yet.
    """
    try:
        os.umask(0o077)
        ready_folder(demo=False)
        _set_up()
        from waysaid.site import serving  # noqa: PLC0415

        serving.make_ready(demo=False)
        call_command("adduser", name, password_stdin=password_from_input)
    except (CannotStartError, NotReadyError, CommandError) as error:
        print(error, file=sys.stderr)
        return 2
    return 0


def _set_up() -> None:
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "waysaid.site.settings")
    django.setup(set_prefix=False)


def _launch(*, demo: bool, port: int | None, open_browser: bool) -> None:
    os.umask(0o077)
    folder = ready_folder(demo=demo)
    _check_days()
    running = running_port(folder)
    wanted = port if port is not None else PORT + (1 if demo else 0)
    listener = None if running is not None else _listen(wanted, exact=port is not None)
    _set_up()
    # What follows reads the settings as it is imported, and they are only now what they should be.
    from waysaid.site import serving  # noqa: PLC0415

    if listener is None:
        address = serving.opening_address(f"http://127.0.0.1:{running}")
        print(f"Waysaid is running already; this opens it: {address}", flush=True)
        if open_browser:
            webbrowser.open(address)
        return
    with listener:
        try:
            serving.make_ready(demo=demo)
        except NotReadyError as error:
            raise CannotStartError(str(error)) from None
        serving.serve(folder / MARK_FILE, listener, open_browser=open_browser, day_by_day=not demo)


def _check_days() -> None:
    """Raise `CannotStartError` for a limit that would not be kept because it cannot be read."""
    given = os.environ.get(place.KEEP_DAYS, "").strip()
    if given and place.most_days() is None:
        raise CannotStartError(
            f"{place.KEEP_DAYS} takes a whole number of days from 0 to 9999, such as 60, "
            f"and not “{given}”."
        )


def ready_folder(*, demo: bool) -> Path:
    """Return the data folder, made and writable; the demo's becomes `WAYSAID_DATA`.

    Raises `CannotStartError` where it cannot be written to.
    """
    folder = place.data_folder()
    if demo:
        folder = folder / "demo"
        os.environ["WAYSAID_DATA"] = str(folder)
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        probe = folder / f".probe-{os.getpid()}"
        probe.write_bytes(b"")
        probe.unlink()
    except OSError as error:
        raise CannotStartError(
            f"Waysaid cannot write in {folder} ({error.strerror}); "
            "set WAYSAID_DATA to a folder that it may write in."
        ) from None
    return folder


def running_port(folder: Path) -> int | None:
    """Return the port at which a server of this folder answers now, or None."""
    try:
        mark = json.loads((folder / MARK_FILE).read_text(encoding="utf-8"))
        port, key = int(mark["port"]), str(mark["key"])
        connection = http.client.HTTPConnection("127.0.0.1", port, timeout=2)
        connection.request("GET", "/running")
        said = connection.getresponse().read().decode()
    except (OSError, ValueError, KeyError, TypeError, http.client.HTTPException):
        return None
    return port if said == key else None


def _listen(port: int, *, exact: bool) -> socket.socket:
    """Return a listening socket on the loopback address; another port unless one was asked for."""
    for wanted in (port,) if exact else (port, 0):
        # Named as TCP, or the loop lets the end of an answer wait for a receipt, up to 40 ms.
        made = socket.socket(socket.AF_INET, socket.SOCK_STREAM, socket.IPPROTO_TCP)
        made.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            made.bind(("127.0.0.1", wanted))
        except OSError:
            made.close()
        else:
            return made
    raise CannotStartError(f"Port {port} is taken by another program; choose another with --port.")
