"""The screens of a talk as a person uses and reads them."""

import re
import time
from pathlib import Path
from typing import Any

from playwright.sync_api import Locator, Page

HERE = Path(__file__).parent
LOOK = (HERE / "look.js").read_text(encoding="utf-8")
SAYS = (HERE / "says.js").read_text(encoding="utf-8")
PATIENCE = 60.0
"""Seconds a test waits for what should come; not a measure of anything."""
BREATH = 0.02


def waited(ask: Any, wanted: Any) -> Any:
    """Return the answer once it is what is wanted, or the last one after much patience."""
    end = time.monotonic() + PATIENCE
    while (found := ask()) != wanted and time.monotonic() < end:
        time.sleep(BREATH)
    return found


STATES = """(() => {
  const wait = [];
  const add = EventSource.prototype.addEventListener;
  EventSource.prototype.addEventListener = function (kind, hear) {
    const show = (event) => {
      hear(event);
      window.order = JSON.parse(event.data).order;
    };
    const state = (event) => (window.held ? wait.push(() => show(event)) : show(event));
    add.call(this, kind, kind === "state" ? state : hear);
  };
  window.let_go = () => {
    window.held = false;
    wait.splice(0).forEach((each) => each());
  };
})()"""
"""A page's own first script: it keeps the `order` of the state shown; while `held` none is."""


class Desk:
    """The teacher's screen."""

    def __init__(self, page: Page) -> None:
        self.page = page
        page.wait_for_selector("#names button", state="attached")

    def speaker(self, name: str) -> None:
        """Tap a name."""
        whole = re.compile(f"^{re.escape(name)}$")
        who = self.page.locator(".who", has_text=whole)
        self.page.locator("#names button", has=who).click()

    def chips(self) -> list[list[str]]:
        """Return the steps that each chip says."""
        read = (
            "chips => chips.map(one => [...one.querySelectorAll('.step')].map(s => s.textContent))"
        )
        return list(self.page.locator("#chips .chip").evaluate_all(read))

    def tap(self, name: str, *steps: str) -> None:
        """Tap a name, then the foreseen way with these steps."""
        self.speaker(name)
        self.chip(*steps)

    def chip(self, *steps: str) -> None:
        """Tap the foreseen way with these steps; look behind "More ways" if it must be."""
        there = waited(lambda: bool(self.chips()), True)
        assert there, "there are no chips"
        if list(steps) not in self.chips() and self.more().is_visible():
            self.more().click()
        chips = self.chips()
        assert list(steps) in chips, f"{steps} is not among {chips}"
        self.page.locator("#chips .chip").nth(chips.index(list(steps))).click()

    def more(self) -> Locator:
        """The button that shows the other chips, or fewer."""
        return self.page.locator("#more-ways")

    def line(self, line: str, button: str = "Put on the board") -> None:
        """Type a line, wait until it is read, and put it on the board."""
        self.page.locator("#line input").fill(line)
        self.page.locator("#preview p").first.wait_for()
        self.page.locator("#put").get_by_role("button", name=button, exact=True).click()

    def relate(self, key: str) -> None:
        """Tap one of the things that a child may do besides: by its kind and place."""
        self.page.locator(f'#relate [data-key^="{key}-"]').first.click()

    def answer(self, text: str) -> None:
        """Note an answer that was heard."""
        field = self.page.locator("#another input")
        field.fill(text)
        field.press("Enter")

    def press(self, name: str) -> None:
        """Press a button by its whole name."""
        self.page.get_by_role("button", name=name, exact=True).first.click()

    def next(self, problem: str) -> None:
        """Press the main button, and wait until this problem is the one of the moment."""
        self.page.locator("#next").click()
        now = re.compile(f"^{re.escape(problem)}$")
        self.page.locator("#strip .now", has_text=now).wait_for()

    def phase(self, phase: str) -> None:
        """Say what the board shows."""
        self.page.locator(f'[data-key="phase-{phase}"]').click()

    def mark(self, problem: str, place: int | str) -> None:
        """Choose a number on the string."""
        self.page.locator(f'[data-key="spot-{problem}-{place}"]').click()

    def notice(self, name: str, words: str, *marks: tuple[str, int | str]) -> None:
        """Note what a child noticed."""
        self.tab("notice")
        self.speaker(name)
        for problem, place in marks:
            self.mark(problem, place)
        self.page.locator('[data-part="notice"] input[name="words"]').fill(words)
        self.page.locator('[data-part="notice"] button.main').click()

    def tab(self, name: str) -> None:
        """Turn to one of the parts of connecting."""
        self.page.locator(f'[data-key="tab-{name}"]').click()

    def saved(self) -> bool:
        """Tell whether all that was done is saved, waiting for it."""
        self.page.wait_for_selector("#saved.full", state="attached")
        return True


class Board:
    """The class's screen, or the one screen."""

    def __init__(self, page: Page) -> None:
        self.page = page
        page.wait_for_selector("#main[data-view]")

    def says(self) -> dict[str, Any]:
        """Return what it says, part by part; a part that says nothing is left out."""
        return dict(self.page.evaluate(SAYS))

    def expect(self, **wanted: Any) -> None:
        """Wait until the board says exactly this, and nothing else."""
        found = waited(self.says, wanted)
        parts = {*found, *wanted}
        differing = {
            part: {"says": found.get(part), "not": wanted.get(part)}
            for part in sorted(parts)
            if found.get(part) != wanted.get(part)
        }
        assert not differing, differing

    def texts(self) -> list[dict[str, Any]]:
        """Return every text that is shown, with its size, contrast and boxes."""
        return list(self.page.evaluate(LOOK))

    def text(self) -> str:
        """Return all text of the page, hidden parts and attributes too."""
        return str(self.page.evaluate("document.documentElement.outerHTML"))


LEAST, PROBLEM, WAY = 6.0, 12.0, 8.0
"""Promised heights of letters, in hundredths of the screen's height."""
CLEAR = 7.0
WAYS = ("lines", "said", "scene")


def faults(board: Board) -> list[str]:
    """Return what breaks the board's promises now: sizes, contrast, texts that touch or are cut."""
    texts = board.texts()
    found = []
    for text in texts:
        says = f"{text['text']!r} ({text['part']})"
        if not text["hand"] and text["size"] < LEAST - 0.01:
            found.append(f"{says} is {text['size']:.2f} % high")
        if text["contrast"] < CLEAR - 0.005:
            found.append(f"{says} has contrast {text['contrast']:.2f}")
        found += [
            f"{says} leaves {text['room']['by']}" for box in text["boxes"] if leaves(box, text)
        ]
    return found + touching(texts)


def leaves(box: dict[str, float], text: dict[str, Any]) -> bool:
    """Tell whether a box of ink goes out of the room that is left to it."""
    room = text["room"]
    return (
        box["left"] < room["left"] - 1
        or box["right"] > room["right"] + 1
        or box["top"] < room["top"] - 1
        or box["bottom"] > room["bottom"] + 1
    )


def touching(texts: list[dict[str, Any]]) -> list[str]:
    """Return a line for each two texts whose ink lies over each other."""
    boxes = [(text["text"], box) for text in texts for box in text["boxes"]]
    return [
        f"{one!r} touches {other!r}"
        for place, (one, first) in enumerate(boxes)
        for other, second in boxes[place + 1 :]
        if first["left"] < second["right"] - 1
        and second["left"] < first["right"] - 1
        and first["top"] < second["bottom"] - 1
        and second["top"] < first["bottom"] - 1
    ]


def fits(page: Page) -> list[str]:
    """Return what of a page scrolls or has to be scrolled to."""
    return list(
        page.evaluate(
            """() => [document.documentElement, ...document.querySelectorAll("body *")]
              .filter((node) => node.checkVisibility() && !node.closest("svg, .unseen"))
              .filter((node) => {
                const style = getComputedStyle(node);
                const root = node === document.documentElement;
                const tall = node.scrollHeight > node.clientHeight + 1;
                const wide = node.scrollWidth > node.clientWidth + 1;
                const rolls = (way) => root || way === "auto" || way === "scroll";
                return (tall && rolls(style.overflowY)) || (wide && rolls(style.overflowX));
              })
              .map((node) => `${node.tagName} ${node.id || node.className}`)"""
        )
    )
