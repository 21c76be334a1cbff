"""A server with a furnished class, a teacher at it, and the screens of a talk."""

import json
import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page

from tests.site import server
from tests.site.server import Person, Server
from tests.talks.cast import NAMES, PLANS

ROOT = Path(__file__).resolve().parents[2]
TABLET = {"width": 1180, "height": 820}
SCREEN = {"width": 1920, "height": 1080}


@dataclass(frozen=True)
class Talk:
    """A talk that has begun, by its addresses."""

    id: int
    board: str
    one: str

    @property
    def desk_path(self) -> str:
        """Where its desk is."""
        return f"/talks/{self.id}/desk"


class Hall:
    """A server on a folder of its own, which can be ended and started again on the same data."""

    def __init__(self, folder: Path, **given: Any) -> None:
        self.folder = folder
        made = furnished(folder, {"names": NAMES, "plans": PLANS, **given})
        self.children: dict[str, str] = made["children"]
        self.plans: dict[str, int] = made["plans"]
        self.server = self.started(0)
        self.teacher = self.server.teacher()

    def started(self, port: int) -> Server:
        """Return a server that runs on this folder, at this port if it is not 0."""
        with pytest.MonkeyPatch.context() as patch:
            if port:
                patch.setattr(server, "free_port", lambda: port)
            return server.running({"WAYSAID_DATA": str(self.folder)})

    def restart(self) -> None:
        """Start again at the same address, after the server was killed."""
        self.server = self.started(self.server.port)

    @property
    def origin(self) -> str:
        """The address of every page."""
        return f"http://127.0.0.1:{self.server.port}"

    def begin(self, plan: str) -> Talk:
        """Begin a talk on a plan."""
        self.teacher.get("/")
        started = self.teacher.send_form("/talks/start", plan=str(self.plans[plan]))
        assert started.status == 302, started.text
        talk = int(started.headers["Location"].split("/")[2])
        desk = self.teacher.get(f"/talks/{talk}/desk.json").json()
        return Talk(talk, desk["board_token"], desk["one_token"])

    def state(self, talk: Talk) -> Any:
        """Return what a desk knows now."""
        return self.teacher.get(f"/talks/{talk.id}/desk.json").json()

    def sign_in(self, context: BrowserContext) -> None:
        """Give a browser the teacher's session."""
        context.add_cookies(
            [
                {"name": name, "value": value, "url": self.origin}
                for name, value in self.teacher.cookies.items()
            ]
        )

    def visitor(self) -> Person:
        """Return somebody without a session."""
        return self.server.person()

    def page(self, open_page: Callable[..., Page], path: str, **options: Any) -> Page:
        """Open a page of the site as the teacher."""
        page = open_page(**options)
        self.sign_in(page.context)
        page.goto(self.origin + path)
        return page


def furnished(folder: Path, given: dict[str, Any]) -> Any:
    """Fill the folder; return the ids that were made."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.talks.furnish"],
        cwd=ROOT,
        env={**os.environ, "WAYSAID_DATA": str(folder)},
        input=json.dumps(given),
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)
