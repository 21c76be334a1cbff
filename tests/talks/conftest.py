"""A hall for the talks of a run, and screens in it."""

from collections.abc import Callable, Iterator

import pytest
from playwright.sync_api import Page

from tests.browser import Watch
from tests.talks.hall import SCREEN, TABLET, Hall, Talk
from tests.talks.screens import Board, Desk


@pytest.fixture(scope="session")
def hall(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Hall]:
    """Return a server with a class of 32 and its plans."""
    made = Hall(tmp_path_factory.mktemp("hall"))
    yield made
    made.server.kill()


@pytest.fixture
def open_desk(hall: Hall, open_page: Callable[..., Page]) -> Callable[..., Desk]:
    """Return a function that opens a talk's desk in a browser of its own."""

    def opened(talk: Talk, size: dict[str, int] = TABLET) -> Desk:
        return Desk(hall.page(open_page, talk.desk_path, viewport=size))

    return opened


@pytest.fixture
def open_board(hall: Hall, open_page: Callable[..., Page]) -> Callable[..., Board]:
    """Return a function that opens a talk's board in a browser without a session."""

    def opened(talk: Talk, size: dict[str, int] = SCREEN, path: str = "") -> Board:
        page = open_page(viewport=size)
        page.goto(f"{hall.origin}{path or f'/board/{talk.board}'}")
        return Board(page)

    return opened


@pytest.fixture
def calm(watch: Watch) -> Iterator[Watch]:
    """Fail a test in whose pages a script failed or broke the content policy."""
    yield watch
    assert watch.errors == []
