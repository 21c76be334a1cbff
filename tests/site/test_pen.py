"""The pen on the board: what it draws stays at what it was drawn on."""

import pytest
from playwright.sync_api import Page

from tests.site.live_room import open_room

pytestmark = [pytest.mark.browser, pytest.mark.slow]

BOX = """(what) => {
    const box = [...document.querySelectorAll(what)].at(-1)?.getBoundingClientRect();
    return box?.width ? box.toJSON() : null;
}"""
"""Where the last of some things lies, once it is laid out."""


@pytest.fixture
def room(serve, open_page):
    yield from open_room(serve, open_page)


def test_a_stroke_by_hand_is_kept_and_rubbed_out(room):
    room.line("no, 40+27=67-1=66")
    room.shows("Noor")
    board = room.board
    board.locator(".hand-button").first.click()
    board.mouse.move(900, 500)
    board.mouse.down()
    board.mouse.move(1100, 600, steps=8)
    with board.expect_response("**/events"):
        board.mouse.up()
    board.reload()
    board.wait_for_selector(".strokes path", state="attached")
    board.locator(".hand-button").first.click()
    board.locator(".hand-button").nth(1).click()
    board.wait_for_selector(".strokes path", state="detached")


def underline(board: Page, what: str) -> None:
    """Draw a line under something with the pen, and wait until it is saved."""
    if board.locator(".hand-button").first.get_attribute("aria-pressed") != "true":
        board.locator(".hand-button").first.click()
    box = board.wait_for_function(BOX, arg=what).json_value()
    low = box["y"] + box["height"] - 4
    board.mouse.move(box["x"] + 4, low)
    board.mouse.down()
    board.mouse.move(box["x"] + box["width"] / 2, low - 4, steps=5)
    with board.expect_response("**/events"):
        board.mouse.up()


def off(board: Page, what: str) -> list[float]:
    """Return how far the last stroke begins from a thing's lower left corner, in units."""
    board.wait_for_selector(".strokes path", state="attached")
    ends = """(what) => {
        const line = [...document.querySelectorAll(".strokes path")].at(-1);
        const box = [...document.querySelectorAll(what)].at(-1).getBoundingClientRect();
        const mark = line.getBoundingClientRect();
        const unit = innerHeight / 100;
        return [(mark.left - box.left) / unit, (mark.bottom - box.bottom) / unit];
    }"""
    return board.evaluate(ends, what)


@pytest.mark.parametrize("ground", ["h1.problem", ".ways:not(.bench) .scene", ".string .scene"])
def test_a_stroke_stays_at_what_it_was_drawn_on(room, ground):
    if ground != "h1.problem":
        room.line("no, 40+27=67-1=66")
        room.shows("Noor")
    if ground.startswith(".string"):
        room.desk.locator('[data-key="connect"]').click()
        room.board.wait_for_selector(ground)
    underline(room.board, ground)
    room.board.wait_for_timeout(300)
    before = off(room.board, ground)
    room.board.set_viewport_size({"width": 1024, "height": 768})
    room.board.wait_for_timeout(900)
    assert off(room.board, ground) == pytest.approx(before, abs=1)


def test_a_stroke_folds_and_comes_back_with_its_way(room):
    room.line("br, 40+27=67-1=66")
    room.shows("Bram")
    underline(room.board, ".ways:not(.bench) .scene")
    for name in ("el", "mei", "no", "to"):
        room.line(f"{name}, 40+27=67-1=66")
    room.shows("Tomas")
    room.board.wait_for_selector(".strokes path", state="detached")
    room.board.locator(".fold button").click()
    room.board.wait_for_selector(".strokes path", state="attached")
