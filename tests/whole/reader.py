"""Somebody who types what the documentation says, in a terminal of her own."""

import contextlib
import copy
import os
import shlex
import signal
import subprocess
from collections.abc import Iterator, Mapping
from pathlib import Path

from tests.postgres import answers
from tests.site.server import Server, started

SECONDS = 900
"""How long a command may take before a test gives it up; not a measure of anything."""


def outside() -> dict[str, str]:
    """Return this machine's environment without what points to the checkout of the tests."""
    ours = (
        "WAYSAID_",
        "PYTHON",
        "VIRTUAL_ENV",
        "PYTEST_",
        "DJANGO_",
        "XDG_",
        "PG",
        "MAKE",
        "MFLAGS",
    )
    return {name: value for name, value in os.environ.items() if not name.startswith(ours)}


class Reader:
    """A terminal: a folder, an environment, and what stands here for the places of a guide.

    `places` maps a text of a command to what the test has in its stead: a folder of its own, a
    free port, an address of this machine.
    """

    def __init__(self, folder: Path, home: Path, places: Mapping[str, str] | None = None) -> None:
        self.folder, self.home, self.places, self.before = folder, home, places or {}, ""
        self.environment = {**outside(), "HOME": str(home), "BROWSER": "true"}
        self.environment["PIPX_HOME"] = str(home / "pipx")
        self.finds(home / ".local" / "bin")

    def another(self) -> "Reader":
        """Return another terminal, in which what was set in this one is set too."""
        return copy.copy(self)

    def finds(self, programs: Path) -> None:
        """Have the programs of a folder found before all others."""
        self.environment["PATH"] = f"{programs}{os.pathsep}{self.environment['PATH']}"

    def here(self, text: str) -> str:
        """Return a text of a guide with this machine's places in it."""
        for place, ours in self.places.items():
            text = text.replace(place, ours)
        return text

    def types(self, command: str, *asked: str) -> str:
        """Run a command, type what it asks for, and return what it printed.

        What it sets for those after it (`set -a`, `export`) holds for them. It has no terminal of
        its own, so that a question for a password is answered as any other. Raises AssertionError
        with what it said where it fails.
        """
        done = subprocess.run(
            ["bash", "-ec", self.before + self.here(command)],
            input="".join(f"{each}\n" for each in asked),
            env=self.environment,
            cwd=self.folder,
            start_new_session=True,
            capture_output=True,
            text=True,
            timeout=SECONDS,
            check=False,
        )
        assert done.returncode == 0, f"{command}\n{done.stdout}{done.stderr}"
        if shlex.split(command)[0] in ("set", "export"):
            self.before += self.here(command) + "\n"
        return done.stdout

    @contextlib.contextmanager
    def opens(self, command: str) -> Iterator[Server]:
        """Run a command that stays open until Ctrl+C; yield its server once it said its address.

        Raises AssertionError where it does not end.
        """
        line = ["bash", "-ec", f"{self.before}exec {self.here(command)}"]
        server = started(line, self.environment, cwd=self.folder, process_group=0)
        try:
            yield server
            os.killpg(server.process.pid, signal.SIGINT)
            server.process.wait(SECONDS)
            assert not answers(server.port)
        finally:
            with contextlib.suppress(ProcessLookupError):
                os.killpg(server.process.pid, signal.SIGKILL)
            server.kill()
