"""Nothing private reaches a screen of the class: canaries in every private field, and a list."""

import json
import re

import pytest

from tests.site import server
from tests.talks.cast import NAMES
from tests.talks.hall import Hall, Talk
from tests.talks.said import Teller
from tests.talks.screens import STATES, Board

pytestmark = pytest.mark.browser

FAMILIES = ("give-and-take", "near-double", "split-then-jump", "shift-both", "known-fact",
            "think-add", "add-up")  # fmt: skip
PRIVATE = ("family", "foreseen", "lately", "not_heard", "unused", "slips", "history", "chips",
           "flags", "passed", "questions", "private", "right", "wrong", "correct",
           "settled", "usual")  # fmt: skip
"""Keys and marks of the desk's own payload."""
RIGHT = "633"
PLAN = {
    "problems": [
        {"id": "p1", "text": "347 + 286", "why": "canarywhy", "note": "canarynote"},
        {"id": "p2", "text": "12 + 500", "why": "canarywhy"},
    ],
    "questions": ["canaryplanned"],
    "starter": "canarystarter",
}
EARLIER = {
    "id": "e1", "child": "Bram", "steps": [], "words": "canaryearlier", "answer": "777",
    "family": "near-double", "picture": "words",
}  # fmt: skip
BOARD_KEYS = {
    "answers", "answers[].names", "answers[].names[]", "answers[].text", "background",
    "connect",
    "connect.noticings", "connect.noticings[].id", "connect.noticings[].join",
    "connect.noticings[].marks", "connect.noticings[].marks[]",
    "connect.noticings[].marks[][]", "connect.noticings[].name", "connect.noticings[].words",
    "connect.rows", "connect.rows[].answers", "connect.rows[].answers[]", "connect.rows[].id",
    "connect.rows[].spoken", "connect.rows[].text", "connect.scene", "connect.what_if",
    "connect.what_if.id", "connect.what_if.name", "connect.what_if.rows",
    "connect.what_if.rows[].answers", "connect.what_if.rows[].answers[]",
    "connect.what_if.rows[].id", "connect.what_if.rows[].spoken", "connect.what_if.rows[].text",
    "earlier", "earlier[].answers", "earlier[].answers[]", "earlier[].id", "earlier[].now",
    "earlier[].spoken", "earlier[].text", "image", "language", "layout", "layout.height",
    "layout.side",
    "layout.tile", "norms", "norms[]", "order", "paused", "phase", "problem", "problem.id",
    "problem.spoken", "problem.text", "signals", "signals[].icon", "signals[].picture",
    "signals[].word", "starters", "starters[]", "strokes", "strokes[].id", "strokes[].strokes",
    "strokes[].strokes[]", "strokes[].strokes[][]", "strokes[].way", "tiles", "tiles[].also",
    "tiles[].also[]", "tiles[].folded", "tiles[].id", "tiles[].lines", "tiles[].lines[]",
    "tiles[].name", "tiles[].picture", "tiles[].relation", "tiles[].scene",
    "tiles[].to_name", "tiles[].words", "title", "turn_and_talk",
}  # fmt: skip
"""All that a board may be told; a drawing is told in shapes, whose keys are below."""
ONE_KEYS = {"next", "once_more", "roster", "roster[].id", "roster[].name", "can_undo",
            "can_undo.client", "can_undo.sequence", "can_undo.what"}  # fmt: skip
SCENE_KEYS = {"width", "height", "title", "desc", "shapes"}


def keys_of(value, path=""):
    """Yield the path of each key of a payload, drawings left out."""
    if path and not (isinstance(value, dict) and path.endswith("[]")):
        yield path
    if path.endswith("scene") and value:
        assert set(value) == SCENE_KEYS
    elif isinstance(value, dict):
        for key, inner in value.items():
            yield from keys_of(inner, f"{path}.{key}" if path else key)
    elif isinstance(value, list):
        for inner in value:
            yield from keys_of(inner, f"{path}[]")


def strings_of(value):
    """Yield every text of a payload."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list):
        for inner in value.values() if isinstance(value, dict) else value:
            yield from strings_of(inner)


TEXTS = """() => {
  const walker = document.createTreeWalker(document, NodeFilter.SHOW_TEXT);
  const found = [];
  while (walker.nextNode()) found.push(walker.currentNode.data);
  for (const node of document.querySelectorAll("*")) {
    for (const one of node.attributes) {
      if (!node.closest("svg") || /^(aria-|data-|class|id)/.test(one.name)) found.push(one.value);
    }
  }
  return found;
}"""
"""All that a page holds in words: its texts, hidden ones too, and its attributes."""


class Watchers:
    """The class's screens, and everything that is sent to them."""

    def __init__(self, hall: Hall, talk: Talk, open_page):
        self.hall, self.talk = hall, talk
        self.boards = []
        for path in self.paths:
            page = open_page()
            page.add_init_script(STATES)
            page.goto(hall.origin + path)
            self.boards.append(Board(page))
        self.keys: set[str] = set()

    @property
    def paths(self):
        """The addresses of the board and of the one screen."""
        return f"/board/{self.talk.board}", f"/one/{self.talk.one}"

    def sent(self):
        """Return what a page and a stream that are opened now bring, as texts."""
        person = self.hall.visitor()
        for path in self.paths:
            yield person.get(path).text
            stream = person.watch(f"/live{path}?wide=1778")
            payload = next(stream.states())
            stream.close()
            mine = set(keys_of(payload))
            self.keys |= mine if path == self.paths[0] else mine & ONE_KEYS
            more = mine - BOARD_KEYS - (ONE_KEYS if path == self.paths[1] else set())
            assert not more, more
            yield json.dumps(payload)
            yield "\n".join(strings_of(payload))

    def look(self, view: str, answer_said: bool = False) -> None:
        """Search all that the class's screens hold or are sent for what is private."""
        order = self.hall.state(self.talk)["order"]
        for board in self.boards:
            board.page.wait_for_function("order => window.order >= order", arg=order)
            board.page.wait_for_selector(f'#main[data-view="{view}"]')
        shown = ["\n".join(board.page.evaluate(TEXTS)) for board in self.boards]
        html = [board.text() for board in self.boards]
        for text in [*self.sent(), *shown, *html]:
            low = text.lower()
            assert "canary" not in low, low[max(0, low.find("canary") - 80) :][:160]
            for word in FAMILIES:
                assert word not in low, word
            if text.startswith("{"):
                names = set(re.findall(r'"(\w+)":', text))
                assert not names & set(PRIVATE)
        said = [re.search(rf"\b{RIGHT}\b", text) for text in [*shown]]
        assert [bool(one) for one in said] == [answer_said] * 2, (view, order)


@pytest.fixture
def watched(tmp_path, monkeypatch, open_page):
    monkeypatch.setattr(server, "START", f"import tests.talks.tainted; {server.START}")
    hall = Hall(
        tmp_path / "hall",
        plans={"canarytitle": PLAN},
        settings={"name": "canaryclass"},
        earlier=[("9 + 8", [EARLIER])],
    )
    talk = hall.begin("canarytitle")
    screens = Watchers(hall, talk, open_page)
    yield Teller(hall, talk), screens
    for board in screens.boards:
        board.page.close()
    hall.server.kill()


def desk_knows(teller):
    """Return which canaries the desk is told, so that the search below could find them."""
    desk = json.dumps(teller.hall.state(teller.talk)) + json.dumps(
        teller.hall.teacher.get(f"/talks/{teller.talk.id}/links").json()
    )
    return set(re.findall(r"canary\w*", desk)) | ({RIGHT} & set(re.findall(r"\d+", desk)))


@pytest.mark.usefixtures("calm")
def test_nothing_private_is_on_a_screen_of_the_class(watched):
    teller, screens = watched
    children = teller.hall.children
    screens.look("before")
    teller.tell("problem-shown", problem="p1")
    screens.look("think")
    teller.tell("passed", problem="p1", child=children["Odd"])
    teller.answer("p1", "523")
    teller.tell("phase-set", phase="answers")
    screens.look("answers")
    teller.tell("answers-named", on=True)
    teller.way("p1", "Noor", "300+200 40+80 7+6")
    teller.way("p1", "Noor", "347+3=350 350+283=623", foreseen=True, picture="number-line")
    teller.way("p1", None, "I did not count")
    teller.tell("way-agreed", way="teller-5", child=children["Uma"])
    screens.look("ways")
    known = {"canaryfamily", "canaryslip", "canarywhy", "canaryplanned", RIGHT}
    assert known <= desk_knows(teller)
    teller.tell("strokes-drawn", id="s1", problem="p1", way=None, strokes=[[1, 2, 30, 40]])
    teller.tell("problem-shown", problem="p2")
    teller.tell("phase-set", phase="connect")
    teller.notice("Bram", "both have a two", ["p1", 1], ["p2", 0])
    link = {"id": "l1", "link": "same-number", "marks": [{"problem": "p1", "place": 0}]}
    teller.tell("link-drawn", **link, child=children["Bram"], words="")
    moved = [{"problem": "p2", "place": 0}]
    teller.tell("what-if", id="i1", amount=3, places=moved, child=children["Elif"])
    screens.look("connect")
    answered = {"what_if": "i1", "problem": "p2", "text": "515", "child": None}
    teller.tell("what-if-answer", **answered)
    screens.look("connect")
    teller.tell("phase-set", phase="answers")
    teller.tell("problem-shown", problem="p1")
    teller.tell("answer-heard", id="a9", problem="p1", text=RIGHT, child=children["Odd"])
    teller.tell("phase-set", phase="ways")
    teller.way("p1", "Odd", "347+286=633", picture="words")
    screens.look("ways", answer_said=True)
    teller.tell("phase-set", phase="answers")
    screens.look("answers", answer_said=True)
    teller.tell("strokes-drawn", id="s2", problem="p1", way=None, strokes=[[1, 2, 30, 40]])
    screens.look("answers", answer_said=True)
    teller.tell("phase-set", phase="after")
    for board in screens.boards:
        board.page.wait_for_selector('#main[data-view="after"]')
    list(screens.sent())
    assert screens.keys == BOARD_KEYS | ONE_KEYS, screens.keys ^ (BOARD_KEYS | ONE_KEYS)
    assert len(NAMES) == 32
