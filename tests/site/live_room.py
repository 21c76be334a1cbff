"""A talk with its desk and its board open in one browser, for the tests of the live pages."""

from dataclasses import dataclass

from playwright.sync_api import BrowserContext, Page

from tests.site.server import Person, begin

NAMES = "Bram\nElif\nMei\nMilo\nNoor\nTomas\nWren"
LETTERS = """() => {
  const high = innerHeight / 100;
  const found = [];
  const walk = document.createTreeWalker(document.getElementById("main"), NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const text = walk.currentNode;
    const holder = text.parentElement;
    if (!text.data.trim() || holder.closest(".unseen, .bench, title, desc")) continue;
    let size = parseFloat(getComputedStyle(holder).fontSize);
    const scene = holder.closest("svg.scene");
    if (scene) {
      const scale = scene.getBoundingClientRect().width / scene.viewBox.baseVal.width;
      size = parseFloat(holder.getAttribute("font-size")) * scale;
    }
    const kind = holder.closest("h1.problem") ? "problem"
      : holder.closest(".lines, .said") ? "way" : "other";
    found.push([kind, size / high, text.data]);
  }
  return found;
}"""


@dataclass
class Room:
    """A talk with its desk and its board open in one browser."""

    desk: Page
    board: Page
    context: BrowserContext
    one_address: str
    talk: int

    def line(self, text: str) -> None:
        """Type a line at the desk and put it on the board."""
        field = self.desk.locator("#line .said-line")
        field.fill(text)
        field.press("Enter")
        self.desk.wait_for_function("() => !document.querySelector('#line .said-line').value")
        self.settled()

    def settled(self) -> None:
        """Wait until all is saved."""
        self.desk.wait_for_selector("#saved.full", state="attached")

    def shows(self, text: str) -> None:
        """Wait until the board shows a text."""
        self.board.get_by_text(text, exact=True).first.wait_for(state="attached")


def open_room(serve, open_page, problem="39 + 27", shows="h1.problem"):
    """Yield a room of a server's own, with one problem on its board, which `shows` tells."""
    server = serve()
    teacher = server.teacher()
    given = begin(teacher, problem, names=NAMES)
    desk = open_page(viewport={"width": 1180, "height": 820})
    context = desk.context
    context.add_cookies(cookies(teacher))
    desk.goto(f"{teacher.origin}/talks/{given['talk']}/desk")
    desk.wait_for_selector(".chip")
    board = context.new_page()
    board.set_viewport_size({"width": 1920, "height": 1080})
    board.goto(f"{teacher.origin}/board/{given['board_token']}")
    board.wait_for_selector(shows)
    yield Room(desk, board, context, f"{teacher.origin}/one/{given['one_token']}", given["talk"])
    context.close()


def cookies(person: Person):
    return [
        {"name": name, "value": value, "url": person.origin}
        for name, value in person.cookies.items()
    ]


def letters(page: Page):
    return page.evaluate(LETTERS)
