"""Every page is for everybody: axe, the keyboard alone, a narrow screen, a large zoom."""

import pytest

from tests.talks.said import Teller
from tests.talks.screens import waited

pytestmark = pytest.mark.browser

PHONE = {"width": 320, "height": 640}
ZOOMED = {"width": 320, "height": 256}
"""A screen of 1280 by 1024 at 400 %."""
PAGES = (
    "/",
    "/welcome",
    "/class",
    "/class/record",
    "/class/share",
    "/class/hand-over",
    "/class/handed",
    "/plans/",
    "/starters",
    "/year/",
    "/settings",
    "/settings/backups",
    "/shared",
    "/join",
)
WIDE = """() => {
  const seen = (node) => {
    const { left, top, right, bottom } = node.getBoundingClientRect();
    const box = { left, top, right, bottom };
    for (let up = node.parentElement; up && up !== document.body; up = up.parentElement) {
      if (getComputedStyle(up).overflow === "visible") continue;
      const edge = up.getBoundingClientRect();
      box.left = Math.max(box.left, edge.left);
      box.top = Math.max(box.top, edge.top);
      box.right = Math.min(box.right, edge.right);
      box.bottom = Math.min(box.bottom, edge.bottom);
    }
    return { ...box, width: box.right - box.left, height: box.bottom - box.top };
  };
  const found = [];
  const root = document.documentElement;
  if (root.scrollWidth > innerWidth) found.push(`the page is ${root.scrollWidth} px wide`);
  const controls = "a[href], button, input:not([type=hidden]), select, textarea, summary";
  for (const node of document.querySelectorAll(controls)) {
    if (!node.checkVisibility({ visibilityProperty: true })) continue;
    if (node.closest(".unseen, .skip, [disabled]") || node.matches(".skip, .unseen")) continue;
    const lids = [];
    for (const block of ["center", "start", "end"]) {
      node.scrollIntoView({ block, inline: "center" });
      const box = seen(node);
      const x = Math.min(Math.max(box.left + box.width / 2, 0), innerWidth - 1);
      const y = Math.min(Math.max(box.top + box.height / 2, 0), innerHeight - 1);
      const across = box.width > 0 && box.right > 0 && box.left < innerWidth;
      const down = box.height > 0 && box.bottom > 0 && box.top < innerHeight;
      const top = document.elementFromPoint(x, y);
      const label = node.closest("label");
      const mine = top && (node.contains(top) || top.contains(node) || label?.contains(top));
      if (across && down && mine) break;
      lids.push(`${top?.tagName} ${top?.className}`);
    }
    if (lids.length === 3) {
      const who = node.id || node.textContent.trim().slice(0, 30) || node.name;
      found.push(`${node.tagName} ${who} cannot be reached, under ${lids}`);
    }
  }
  scrollTo(0, 0);
  return found;
}"""
"""What of a page is too wide, or is a control that nobody could get to."""


def phases(hall, talk):
    """Tell a talk; yield the name of each phase once it is there."""
    teller = Teller(hall, talk)
    yield "before"
    teller.tell("problem-shown", problem="p1")
    teller.tell("problem-shown", problem="p2")
    yield "think"
    teller.answer("p2", "56")
    teller.answer("p2", "66")
    teller.tell("phase-set", phase="answers")
    yield "answers"
    teller.way("p2", "Noor", "39+1=40 40+26=66", picture="number-line")
    teller.way("p2", "Wren", "30+20=50 9+7=16 50+16=66")
    teller.way("p2", None, "I did it with my fingers")
    yield "ways"
    teller.tell("turn-and-talk", on=True)
    teller.tell("phase-set", phase="connect")
    teller.notice("Noor", "one less than forty", ["p2", 0])
    moved = [{"problem": "p2", "place": 0}]
    teller.tell("what-if", id="i", amount=10, places=moved, child=None)
    yield "connect"
    teller.tell("paused")
    yield "paused"
    teller.tell("resumed")
    teller.tell("phase-set", phase="after")
    yield "after"


def screens_of(hall, talk, open_page):
    """Return the desk, the board and the one screen, as the teacher's own windows."""
    paths = {"desk": talk.desk_path, "board": f"/board/{talk.board}", "one": f"/one/{talk.one}"}
    return {name: hall.page(open_page, path) for name, path in paths.items()}


def ready(hall, talk, pages, phase):
    """Wait until the screens show the phase."""
    for name in ("board", "one"):
        pages[name].wait_for_selector(f'#main[data-view="{phase}"]')
    order = hall.state(talk)["order"]
    kept = "() => JSON.parse(Object.values(sessionStorage)[0]).order"
    assert waited(lambda: pages["one"].evaluate(kept), order) == order
    pages["desk"].wait_for_timeout(150)


@pytest.mark.usefixtures("calm")
def test_axe_finds_nothing_on_any_screen_in_any_phase(hall, open_page, axe):
    talk = hall.begin("Over a ten")
    pages = screens_of(hall, talk, open_page)
    found = {}
    for phase in phases(hall, talk):
        ready(hall, talk, pages, phase)
        for name, page in pages.items():
            found[name, phase] = axe(page)
    for opener in ("open-screens", "open-more", "open-keys"):
        pages["desk"].locator(f"#{opener}").click()
        found["desk", opener] = axe(pages["desk"])
        pages["desk"].keyboard.press("Escape")
    pages["desk"].locator('[data-key="add"]').click()
    found["desk", "add"] = axe(pages["desk"])
    assert {where: faults for where, faults in found.items() if faults} == {}
    assert len(found) == 7 * 3 + 4


@pytest.mark.usefixtures("calm")
def test_axe_finds_nothing_on_any_other_page_and_each_fits_a_phone(hall, open_page, axe):
    talk = hall.begin("Over a ten")
    paths = [*PAGES, f"/plans/{hall.plans['Over a ten']}", f"/talks/{talk.id}/back"]
    page = hall.page(open_page, "/")
    found = {}
    for path in paths:
        page.set_viewport_size({"width": 1280, "height": 800})
        answer = page.goto(hall.origin + path)
        assert answer.status == 200, path
        found[path, "axe"] = axe(page)
        for size in (PHONE, ZOOMED):
            page.set_viewport_size(size)
            found[path, size["height"]] = page.evaluate(WIDE)
    assert {where: faults for where, faults in found.items() if faults} == {}


@pytest.mark.usefixtures("calm")
def test_the_screens_of_a_talk_fit_a_phone_and_a_zoom_of_400(hall, open_page):
    talk = hall.begin("Over a ten")
    pages = screens_of(hall, talk, open_page)
    found = {}
    for phase in phases(hall, talk):
        ready(hall, talk, pages, phase)
        for name, page in pages.items():
            for size in (PHONE, ZOOMED):
                page.set_viewport_size(size)
                page.wait_for_timeout(50)
                found[name, phase, size["height"]] = page.evaluate(WIDE)
    assert {where: faults for where, faults in found.items() if faults} == {}


@pytest.mark.usefixtures("calm")
def test_what_was_noticed_is_whole_on_a_board_held_upright(hall, open_page):
    talk = hall.begin("Over a ten")
    page = hall.page(open_page, f"/board/{talk.board}")
    page.set_viewport_size({"width": 390, "height": 844})
    teller = Teller(hall, talk)
    teller.tell("problem-shown", problem="p1")
    teller.tell("phase-set", phase="connect")
    words = [f"one less than forty, and {count} more than that" for count in range(9)]
    for said in words:
        teller.notice("Noor", said, ["p1", 0])
    heard = page.locator(".noticing blockquote")
    assert waited(heard.count, len(words)) == len(words)
    assert [text.strip("“”") for text in heard.all_inner_texts()] == words
    assert page.evaluate(WIDE) == []


LINES = (
    ("39 + 27", "noor, 39+1=40 40+26=66"),
    ("62 − 25", "wr, 62-2=60-23"),
    ("62 − 27", "uma, 62-30=32+3"),
    ("148 + 37", "zof, 148+2=150+35"),
)


class Keyboard:
    """A desk without a mouse."""

    def __init__(self, desk):
        self.page = desk.page
        self.desk = desk
        self.page.evaluate(
            """() => {
              window.hands = 0;
              for (const kind of ["pointerdown", "mousedown", "touchstart"]) {
                addEventListener(kind, () => { window.hands += 1; }, true);
              }
            }"""
        )

    def to(self, selector):
        """Press Tab until the focus is there."""
        at = "(wanted) => document.activeElement?.matches(wanted)"
        for _press in range(200):
            if self.page.evaluate(at, selector):
                return
            self.page.keyboard.press("Tab")
        raise AssertionError(f"Tab never comes to {selector}")

    def do(self, selector):
        """Go there and press Enter."""
        self.to(selector)
        self.page.keyboard.press("Enter")

    def line(self, line):
        """Type a line with a name before it, and Enter."""
        self.to("#line input")
        self.page.keyboard.type(line)
        self.page.keyboard.press("Enter")


@pytest.mark.usefixtures("calm")
def test_a_whole_talk_is_run_by_keyboard_alone(hall, open_desk, open_board):
    talk = hall.begin("Over a ten")
    keys, board = Keyboard(open_desk(talk)), open_board(talk)
    page = keys.page
    page.keyboard.press("n")
    page.locator("#strip .now", has_text="19 + 6").wait_for()
    page.keyboard.press("a")
    page.keyboard.type("25")
    page.keyboard.press("Enter")
    keys.line("aro, 19+1=20+5")
    keys.line("cata m, I took one")
    keys.do(f'[data-key="child-{hall.children["Aroha"]}"]')
    page.keyboard.press("Alt+Digit2")
    shown = waited(lambda: [way["tags"] for way in board.says().get("ways", ())],
                   [["Aroha"], ["Cata M."], ["Aroha"]])  # fmt: skip
    assert shown == [["Aroha"], ["Cata M."], ["Aroha"]]
    page.keyboard.press("Control+z")
    two = waited(lambda: len(board.says()["ways"]), 2)
    assert two == 2
    keys.do(f'[data-key="child-{hall.children["Bram"]}"]')
    keys.do('#relate [data-key^="same-"]')
    tags = [["Aroha", "Bram"], ["Cata M."]]
    assert waited(lambda: [way["tags"] for way in board.says()["ways"]], tags) == tags
    for problem, line in LINES:
        keys.do("#next")
        page.locator("#strip .now", has_text=problem).wait_for()
        keys.line(line)
        assert waited(lambda: len(board.says().get("ways", ())), 1) == 1
    keys.do('[data-key="connect"]')
    page.locator('[data-key="spot-p2-0"]').wait_for()
    for spot in ("spot-p2-0", "spot-p3-0"):
        keys.do(f'[data-key="{spot}"]')
    keys.to('[data-part="notice"] input[name="words"]')
    page.keyboard.type("they are far apart")
    page.keyboard.press("Enter")
    noticed = [["“they are far apart”"]]
    assert waited(lambda: [one[-1:] for one in board.says().get("noticings", ())], noticed)
    assert [one[-1:] for one in board.says()["noticings"]] == noticed
    keys.do("#next")
    board.page.wait_for_selector('#main[data-view="after"]')
    assert page.evaluate("() => window.hands") == 0
    assert len(hall.state(talk)["ways"]) == 6
