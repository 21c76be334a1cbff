"""Take the pictures of the documentation from the running app, with its invented class.

They go to docs/pictures: what the class showed, a plan, the desk and the board in a talk, the board
while connecting.
"""

import io
import os
import re
import sys
import tempfile
from pathlib import Path

from PIL import Image

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from playwright.sync_api import Browser, Page, sync_playwright  # noqa: E402

from tests.browser import FLAGS, program  # noqa: E402
from tests.plain_user import is_root  # noqa: E402
from tests.site.server import running  # noqa: E402
from tests.talks.screens import Desk  # noqa: E402

PICTURES = ROOT / "docs" / "pictures"
DESK = {"width": 1180, "height": 820}
BOARD = {"width": 1280, "height": 720}
COLOURS = 64
LARGEST = 120 * 1024
PROBLEM = "39 + 27"


def keep(page: Page, name: str) -> None:
    """Keep what a page shows as a small picture; raise ValueError for one that is not small."""
    page.wait_for_timeout(400)
    picture = Image.open(io.BytesIO(page.screenshot()))
    small = picture.convert("RGB").quantize(COLOURS, dither=Image.Dither.NONE)
    path = PICTURES / f"{name}.png"
    small.save(path, optimize=True)
    if path.stat().st_size > LARGEST:
        raise ValueError(f"{path.name} has {path.stat().st_size} bytes, more than {LARGEST}.")
    print(f"{path.name}: {path.stat().st_size // 1024} KB")


def begin(desk_page: Page, origin: str) -> tuple[Desk, str]:
    """Begin a talk on the first plan; return its desk and the address of its board."""
    desk_page.goto(f"{origin}/plans/")
    plan = desk_page.locator('a[href^="/plans/"]').evaluate_all(
        "links => links.map(one => one.getAttribute('href')).find(one => /\\d$/.test(one))"
    )
    desk_page.goto(origin + plan)
    keep(desk_page, "plan")
    with desk_page.expect_navigation(url=re.compile(r"/desk$")):
        desk_page.locator("form[data-start] button").first.click()
    desk = Desk(desk_page)
    board = desk_page.locator('#screens a[href^="/board/"]').get_attribute("href")
    return desk, f"{origin}{board}"


def names_of(desk: Desk) -> list[str]:
    """Return the names of the class."""
    return desk.page.locator("#names .who").all_inner_texts()


def warm_up(desk: Desk) -> None:
    """Show the first two problems of the plan; the class gives their answers."""
    strip = desk.page.locator("#strip .stop:not([data-key='connect'], .plus)")
    for place in range(2):
        problem = strip.nth(place).inner_text()
        desk.next(problem)
        desk.page.locator("#chips .chip").first.wait_for()
        desk.answer(desk.chips()[0][-1].split("= ")[-1])
        desk.saved()


def play(desk: Desk) -> None:
    """Play the middle of a talk: four ways of a problem, one of them ending elsewhere."""
    first, second, third, fourth, fifth = names_of(desk)[:5]
    desk.page.locator('[data-key="add"]').click()
    desk.page.locator('#add-problem [name="text"]').fill(PROBLEM)
    desk.page.locator('#add-problem [data-show="yes"]').click()
    desk.page.locator("#strip .now", has_text=PROBLEM).wait_for()
    desk.answer("66")
    desk.answer("56")
    desk.tap(second, "39 + 1 = 40", "40 + 26 = 66")
    desk.speaker(fourth)
    desk.line("30+20=50 9+7=16 50+16=66", "as equations")
    desk.speaker(first)
    desk.line("40+27=67-1=66", "as number line")
    desk.speaker(fifth)
    desk.line("30+20=50 9+7=6 50+6=56", "as equations")
    desk.saved()
    desk.page.wait_for_timeout(300)
    desk.speaker(third)


def connect(desk: Desk) -> None:
    """Let two children notice something."""
    names = names_of(desk)
    desk.press("Connect")
    spots = desk.page.locator('.spot[data-key$="-0"]')
    spots.first.wait_for()
    keys = spots.evaluate_all("all => all.map(one => one.dataset.key.slice(5, -2))")
    desk.notice(names[6], "one less here and one more there", *((key, 0) for key in keys[:2]))
    desk.saved()


def take(browser: Browser, address: str) -> None:
    """Play part of a talk and keep its pictures."""
    origin = "/".join(address.split("/")[:3])
    context = browser.new_context(viewport=DESK, reduced_motion="reduce", locale="en")
    page = context.new_page()
    page.goto(address)
    page.goto(f"{origin}/class/showed")
    keep(page, "showed")
    desk, board_address = begin(page, origin)
    board = browser.new_context(viewport=BOARD, locale="en").new_page()
    board.goto(board_address)
    warm_up(desk)
    play(desk)
    keep(page, "desk")
    keep(board, "board")
    connect(desk)
    keep(board, "board_connect")


def main() -> None:
    """Start the demo on data of its own, take the pictures, and put it away."""
    PICTURES.mkdir(exist_ok=True)
    chosen = program()
    assert chosen, "Chromium is not installed; `make setup` installs it."
    flags = [*FLAGS, "--no-sandbox"] if is_root() else list(FLAGS)
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = running({**os.environ, "WAYSAID_DATA": folder}, "open_browser=False, demo=True")
        browser = playwright.chromium.launch(executable_path=chosen, args=flags)
        try:
            take(browser, server.address)
        finally:
            browser.close()
            server.kill()


if __name__ == "__main__":
    main()
