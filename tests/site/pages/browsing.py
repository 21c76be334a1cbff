"""A server with a class, plans and talks, and a browser that is let in."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

import pytest
from playwright.sync_api import Page

from tests.site.server import Person, Server, running

NAMES = "Aroha\nBram\nChidi\nDunya\nElif\nFemi\nGita\nHugo"


@dataclass
class House:
    """The server, its teacher, and the addresses of what was made in it."""

    server: Server
    teacher: Person
    plan: str
    talk: str
    child: str

    @property
    def origin(self) -> str:
        """The start of every address."""
        return f"http://127.0.0.1:{self.server.port}"

    def let_in(self, page: Page) -> Page:
        """Give a page's browser the teacher's session."""
        cookies = [
            {"name": name, "value": value, "url": self.origin}
            for name, value in self.teacher.cookies.items()
        ]
        page.context.add_cookies(cookies)
        return page


def said(problem: str, child: str) -> list[dict[str, Any]]:
    """Return the events of a short talk on one problem."""
    step = {"kind": "jump", "equation": "39 + 1 = 40", "unsaid": []}
    other = {"kind": "jump", "equation": "40 + 26 = 66", "unsaid": []}
    way = {"kind": "way-shared", "id": "w", "problem": problem, "child": child, "answer": "66"}
    return [
        {"sequence": 1, "kind": "answer-heard", "id": "a", "problem": problem, "text": "66"},
        {"sequence": 2, **way, "steps": [step, other], "picture": "number-line"},
        {"sequence": 3, "kind": "phase-set", "phase": "connect"},
        {"sequence": 4, "kind": "paused"},
    ]


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> Iterator[House]:
    """Return a house that lasts as long as the module's tests."""
    server = running({"WAYSAID_DATA": str(tmp_path_factory.mktemp("house"))})
    teacher = server.teacher()
    teacher.get("/welcome")
    teacher.send_form("/welcome", name="2B", names=NAMES, language="en")
    teacher.get("/plans/")
    made = teacher.send_form("/plans/", problems="40 + 26\n39 + 26\n39 + 27", title="Thursday")
    plan = made.headers["Location"]
    talk = teacher.send_form("/start", problem="39 + 27").headers["Location"].removesuffix("/desk")
    desk = teacher.get(f"{talk}/desk.json").json()
    child = desk["roster"][1]["id"]
    teacher.get(f"{talk}/desk")
    events = said(desk["problems"][0]["id"], child)
    assert teacher.post(f"{talk}/events", {"client": "desk", "events": events}).status == 200
    yield House(server, teacher, plan, talk, child)
    server.kill()


@pytest.fixture
def enter(house: House, open_page: Callable[..., Page]) -> Callable[..., Page]:
    """Return a function that opens an address of the house in a browser of its own."""

    def go(path: str, **options: Any) -> Page:
        page = house.let_in(open_page(**({"viewport": {"width": 1180, "height": 820}} | options)))
        page.goto(house.origin + path)
        return page

    return go
