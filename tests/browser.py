"""A real browser that may only speak to this machine.

`browser_page` is a page as wide as a classroom screen; `open_page` opens more, each in a context of
its own. A request to any other machine is stopped, noted, and fails the test at its end.
"""

import os
import re
import shutil
import subprocess
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from playwright._impl._driver import compute_driver_executable
from playwright.sync_api import Browser, BrowserContext, Page, Route, expect, sync_playwright

from tests.plain_user import is_root
from tests.postgres import missing

PROGRAMS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
ELSEWHERE = re.compile(r"^(https?|wss?)://(?!(127\.[0-9.]+|localhost|\[::1\])(:\d+)?([/?#]|$))")
FLAGS = (
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-gpu",
    "--disable-quic",
    "--disable-sync",
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost, EXCLUDE [::1]",
    "--no-default-browser-check",
    "--no-first-run",
)
SCREEN = {"width": 1920, "height": 1080}
PATIENCE = 60_000
"""Milliseconds that a test waits for a page: many, for a machine on which others work too."""
VIOLATIONS = """async rules => {
  const found = await axe.run(document, {rules, resultTypes: ["violations"]});
  return found.violations;
}"""
AXE = Path(__file__).parent / "vendor" / "axe" / "axe.min.js"


@dataclass
class Watch:
    """What the contexts of one test did that a test should know of."""

    elsewhere: list[str] = field(default_factory=list)
    """Addresses of requests to other machines."""
    errors: list[str] = field(default_factory=list)
    """Errors of scripts and of the console, a broken content policy among them."""

    def add(self, context: BrowserContext) -> None:
        """Watch a context from now on."""
        context.route(ELSEWHERE, self.stop)
        context.on("request", lambda request: self.note(request.url))
        context.on("console", lambda said: said.type == "error" and self.errors.append(said.text))
        context.on("weberror", lambda problem: self.errors.append(str(problem.error)))
        context.on("page", lambda page: page.on("websocket", lambda one: self.note(one.url)))

    def stop(self, route: Route) -> None:
        """Stop a request to another machine."""
        self.note(route.request.url)
        route.abort()

    def note(self, address: str) -> None:
        """Keep an address of another machine, once."""
        if ELSEWHERE.match(address) and address not in self.elsewhere:
            self.elsewhere.append(address)


def program() -> str | None:
    """Return the path of a browser of the Chromium family, or None."""
    return next((path for path in map(shutil.which, PROGRAMS) if path), None)


def driver_runs() -> bool:
    """Tell whether Playwright's own program starts; a bare system may lack a library of it."""
    node = compute_driver_executable()[0]
    return subprocess.run([node, "--version"], capture_output=True, check=False).returncode == 0


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """Return a running browser, without a window, with an empty profile."""
    path = program()
    if path is None:
        missing("Chromium")
    if not driver_runs():
        missing("What Playwright's driver needs (libatomic1)")
    flags = [*FLAGS, "--no-sandbox"] if is_root() else list(FLAGS)
    with pytest.MonkeyPatch.context() as patch, sync_playwright() as playwright:
        # Playwright keeps an event loop in this thread, where Django would refuse its database.
        patch.setenv("DJANGO_ALLOW_ASYNC_UNSAFE", "true")
        expect.set_options(timeout=PATIENCE)
        running = playwright.chromium.launch(executable_path=path, args=flags, headless=True)
        yield running
        running.close()


@pytest.fixture
def watch() -> Watch:
    """Return the record of requests to other machines and of errors in this test's pages."""
    return Watch()


@pytest.fixture
def open_page(browser: Browser, watch: Watch) -> Iterator[Callable[..., Page]]:
    """Return a function that opens a page in a new context; it takes a context's options."""
    contexts: list[BrowserContext] = []

    def make(**options: Any) -> Page:
        context = browser.new_context(**({"viewport": SCREEN} | options))
        context.set_default_timeout(PATIENCE)
        watch.add(context)
        contexts.append(context)
        return context.new_page()

    yield make
    for context in contexts:
        context.close()
    assert watch.elsewhere == [], "a page asked another machine for something"


@pytest.fixture
def browser_page(open_page: Callable[..., Page]) -> Page:
    """Return a page as large as a classroom screen."""
    return open_page()


@pytest.fixture(scope="session")
def axe() -> Callable[..., list[str]]:
    """Return a function that lists a page's accessibility faults, one line each.

    It takes the page and, if wanted, the ids of rules to leave out.
    """
    source = AXE.read_text(encoding="utf-8")

    def check(page: Page, without: tuple[str, ...] = ()) -> list[str]:
        if not page.evaluate("() => 'axe' in window"):
            page.evaluate(source)
        rules = {rule: {"enabled": False} for rule in without}
        found = page.evaluate(VIOLATIONS, rules)
        return [
            f"{fault['id']}: {fault['help']} at {', '.join(str(node['target']) for node in nodes)}"
            for fault in found
            for nodes in [fault["nodes"]]
        ]

    return check


def pictures_folder() -> Path | None:
    """Return where to keep pictures of screens (WAYSAID_PICTURES), or None to keep none."""
    folder = os.environ.get("WAYSAID_PICTURES")
    return Path(folder) if folder else None
