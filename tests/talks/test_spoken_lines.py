"""Twenty spoken lines through the desk's line, by keyboard alone: the board and the record."""

import json
import re
import sqlite3
from contextlib import closing

import pytest

from tests.talks.cast import NAMES
from tests.talks.hall import Hall
from tests.talks.screens import waited

pytestmark = [pytest.mark.browser, pytest.mark.usefixtures("calm")]

ENGLISH = {
    "39 + 27": [
        ("thirty nine and one is forty and twenty six is sixty six", "39+1=40 40+26=66", "66"),
        ("thirty nine and one is forty and twenty six is sixty seven", "39+1=40 40+26=67", "67"),
        ("thirty and twenty is fifty nine and seven is sixteen so sixty six",
         "30+20=50 9+7=16 50+16=66", "66"),
        ("thirty and twenty is fifty nine and seven is seventeen so sixty seven",
         "30+20=50 9+7=17 50+17=67", "67"),
        ("um can I go to the bathroom", "", None),
    ],
    "62 - 25": [
        ("sixty two take away twenty is forty two take away five is thirty seven",
         "62-20=42 42-5=37", "37"),
        ("sixty take away twenty is forty and five take away two is three so forty three",
         "60-20=40 5-2=3 40+3=43", "43"),
        ("sixty two take away thirty, I mean twenty, is forty two take away five is thirty seven",
         "62-20=42 42-5=37", "37"),
    ],
    "8 x 4": [
        ("double eight sixteen double again thirty two", "8x2=16 16x2=32", "32"),
        ("double eight sixteen double again thirty four", "8x2=16 16x2=34", "34"),
    ],
    "2/3 + 2/3": [("2/3 plus 2/3 is 4/3 so 1 and a third", "2/3+2/3=4/3 4/3=1 1/3", "1 1/3")],
}  # fmt: skip
SPANISH = {
    "39 + 27": [
        ("treinta y nueve más uno cuarenta y veintiséis más son sesenta y seis",
         "39+1=40 40+26=66", "66"),
        ("treinta y nueve más uno cuarenta y veintiséis más son sesenta y siete",
         "39+1=40 40+26=67", "67"),
        ("treinta y veinte son cincuenta y nueve y siete son dieciséis, sesenta y seis",
         "30+20=50 9+7=16 50+16=66", "66"),
        ("no sé, me lo dijo mi hermana", "", None),
    ],
    "62 - 25": [
        ("sesenta y dos menos veinte son cuarenta y dos menos cinco treinta y siete",
         "62-20=42 42-5=37", "37"),
        ("sesenta y dos menos veinte son cuarenta y dos menos cinco treinta y ocho",
         "62-20=42 42-5=38", "38"),
    ],
    "6 x 7": [
        ("cinco por siete treinta y cinco y otro siete cuarenta y dos", "5x7=35 35+7=42", "42"),
        ("cinco por siete treinta y cinco y otro siete cuarenta y tres", "5x7=35 35+7=43", "43"),
    ],
    "8 + 6": [("ocho y dos son diez y cuatro más catorce", "8+2=10 10+4=14", "14")],
}  # fmt: skip
PRIVATE = {"family", "foreseen", "flags", "proposed", "slip", "rivals", "told", "taken_back"}
LOOKS = """() => [...document.querySelectorAll(".way")].map((way) =>
  [way, ...way.querySelectorAll("*")].map((node) =>
    [node.tagName, node.getAttribute("class"), getComputedStyle(node).color].join(" ")))"""


@pytest.fixture(scope="module")
def halls(hall, tmp_path_factory):
    """A class whose board speaks English, and one whose board speaks Spanish."""
    folder = tmp_path_factory.mktemp("sala")
    other = Hall(folder, board_language="es")
    yield {"en": hall, "es": other}
    other.server.kill()


TWICE = """() => {
  const chip = document.querySelector("#chips .chip");
  chip.click();
  chip.click();
}"""


class _Talk:
    def __init__(self, hall, problem):
        hall.teacher.get("/")
        started = hall.teacher.send_form("/talks/start", problem=problem)
        self.hall, self.id = hall, int(started.headers["Location"].split("/")[2])
        self.desk_path = f"/talks/{self.id}/desk"
        self.board = hall.state(self)["board_token"]
        self.sequence = 0

    def show(self, text):
        self.tell("problem-added", problem=f"p-{text}", text=text, after=None)
        self.tell("problem-shown", problem=f"p-{text}")

    def tell(self, kind, **body):
        self.sequence += 1
        event = {"sequence": self.sequence, "kind": kind, **body}
        sent = {"client": "adds", "events": [event]}
        assert self.hall.teacher.post(f"/talks/{self.id}/events", sent).status == 200

    def record(self):
        """Return what stands in the database, as it was kept: the ways in order."""
        with closing(sqlite3.connect(self.hall.folder / "waysaid.sqlite3")) as kept:
            asked = "SELECT body FROM waysaid_site_eventrow WHERE talk_id = ? AND kind = ?"
            rows = kept.execute(f'{asked} ORDER BY "order"', (self.id, "way-shared"))
            return [json.loads(body) for (body,) in rows]


def opened(hall, open_page, problem):
    talk = _Talk(hall, problem)
    page = hall.page(open_page, talk.desk_path, viewport={"width": 1180, "height": 820})
    page.wait_for_selector("#names button", state="attached")
    board = open_page(viewport={"width": 1920, "height": 1080})
    board.goto(f"{hall.origin}/board/{talk.board}")
    board.wait_for_selector("#main[data-view]")
    return talk, page, board


def typed(page, text):
    page.locator("#line input").focus()
    page.keyboard.type(text)


QUIET = """() => new Promise((done) => {
  let still = setTimeout(done, 400);
  new MutationObserver(() => {
    clearTimeout(still);
    still = setTimeout(done, 400);
  }).observe(document.querySelector("#preview"), {childList: true, subtree: true});
})"""


def read_through(page):
    """Wait until the line's last letter is read: a choice belongs to the line it was made of."""
    page.locator("#preview .heard-as").wait_for()
    page.evaluate(QUIET)


def names_in(value):
    if isinstance(value, dict):
        return set(value).union(*map(names_in, value.values()))
    return set().union(*map(names_in, value)) if isinstance(value, list) else set()


def plain(steps):
    return [re.sub(r"(?<=\d) (?=[^\d])|(?<=[^\d]) (?=\d)", "", one["equation"]) for one in steps]


@pytest.mark.parametrize(("language", "lines"), [("en", ENGLISH), ("es", SPANISH)])
def test_spoken_lines_go_by_keyboard_to_the_board_and_the_record(halls, open_page, language, lines):
    first, *_ = lines
    talk, page, board = opened(halls[language], open_page, first)
    children = iter(NAMES[:8] * 3)
    told = 0
    for problem, spoken in lines.items():
        if problem != first:
            talk.show(problem)
            page.locator(f'#strip .now[data-key="problem-p-{problem}"]').wait_for()
        for said, steps, answer in spoken:
            typed(page, f"{next(children)}, {said}")
            page.locator("#preview p").first.wait_for()
            page.keyboard.press("Enter")
            told += 1
            assert waited(lambda: len(talk.record()), told) == told
            kept = talk.record()[-1]
            assert (kept["words"], kept["answer"]) == (said, answer)
            found = "".join(plain(kept["steps"])).replace(" ", "")
            assert found == steps.replace(" ", ""), (said, kept["steps"])
        board.locator(".way, .folded").nth(len(spoken) - 1).wait_for()
        neutral(talk, board, alike=len(spoken) == 2)


def neutral(talk, board, alike):
    """A board has nothing private, and where two ways are `alike`, the wrong one looks the same."""
    stream = talk.hall.visitor().watch(f"/live/board/{talk.board}?wide=1778")
    payload = next(stream.states())
    stream.close()
    assert not names_in(payload) & PRIVATE
    looks = board.evaluate(LOOKS)
    assert looks
    if alike:
        right, wrong = looks
        assert right == wrong
    low = board.locator("body").inner_text().lower()
    for private in ("does not hold", "may have", "ends at", "bridge", "implied", "no se cumple"):
        assert private not in low


def test_a_runner_up_is_tapped_and_kept_as_a_correction(halls, open_page):
    talk, page, _board = opened(halls["en"], open_page, "16 - 7")
    said = "seven and eight makes sixteen so eight"
    typed(page, f"Noor, {said}")
    read_through(page)
    rival = page.locator("#preview .rival").first
    rival.wait_for()
    box = rival.bounding_box()
    assert box["height"] >= 44
    page.keyboard.press("Tab")
    rival.focus()
    page.keyboard.press("Enter")
    assert waited(lambda: len(talk.record()), 1) == 1
    kept = talk.record()[0]
    assert kept["words"] == said
    assert kept["proposed"]["family"] != kept["family"]


def test_another_family_chosen_is_kept_with_what_was_proposed(halls, open_page):
    talk, page, _board = opened(halls["en"], open_page, "39 + 27")
    typed(page, "Wren, 39+1=40 40+26=66")
    read_through(page)
    choice = page.locator('#preview [data-key="line-family"]')
    choice.wait_for()
    choice.select_option("split")
    page.keyboard.press("Enter")
    assert waited(lambda: len(talk.record()), 1) == 1
    kept = talk.record()[0]
    assert (kept["family"], kept["proposed"]) == ("split", {"family": "bridge"})


def test_two_taps_in_one_moment_record_a_child_once(halls, open_page):
    talk, page, _board = opened(halls["en"], open_page, "39 + 27")
    page.locator("#names button").first.click()
    page.locator("#chips .chip").first.wait_for()
    page.evaluate(TWICE)
    page.wait_for_selector("#saved.full", state="attached")
    assert waited(lambda: len(talk.record()), 1) == 1
    page.wait_for_timeout(400)
    assert [way["child"] is not None for way in talk.record()] == [True]


def test_corrections_are_erased_in_the_settings(halls, open_page):
    hall = halls["es"]
    talk, page, _board = opened(hall, open_page, "39 + 27")
    typed(page, "Uma, 39+1=40 40+26=66")
    read_through(page)
    page.locator('#preview [data-key="line-family"]').select_option("split")
    page.keyboard.press("Enter")
    assert waited(lambda: len(talk.record()), 1) == 1
    page.goto(f"{hall.origin}/settings")
    listed = page.locator("section[aria-labelledby=leanings] li")
    assert listed.count() == 1
    listed.get_by_role("button").click()
    page.wait_for_load_state()
    assert page.locator("section[aria-labelledby=leanings] li").count() == 0
