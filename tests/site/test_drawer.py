"""The drawer of the one screen in a real browser: what it shows, hides and lets be chosen."""

import pytest

from tests.site.live_room import letters, open_room

pytestmark = [pytest.mark.browser, pytest.mark.slow]
LOWEST = """() => {
    const drawer = document.querySelector(".drawer-row").getBoundingClientRect().top;
    const ways = document.querySelectorAll(
        ".ways:not(.bench) .lines li, .ways:not(.bench) .scene text");
    return [...ways].filter((line) => {
        const box = line.getBoundingClientRect();
        return box.bottom - 0.2 * box.height > drawer;
    }).map((line) => line.textContent);
}"""


@pytest.fixture
def room(serve, open_page):
    yield from open_room(serve, open_page)


def test_the_one_screen_shows_only_what_is_typed(room):
    page = room.context.new_page()
    page.goto(room.one_address)
    field = page.locator(".one-line")
    field.fill("wr, 39+1=40 40+26=66")
    page.wait_for_timeout(300)
    assert "bridge" not in page.content()
    field.press("Enter")
    page.get_by_text("39 + 1 = 40", exact=True).first.wait_for(state="attached")
    assert "bridge" not in page.content()
    assert page.locator(".chip, .flag, .card").count() == 0


@pytest.mark.parametrize(("width", "height"), [(1366, 768), (1920, 1080), (1024, 768)])
def test_the_drawer_lies_over_no_way_and_no_letter_shrinks(room, width, height):
    for name in ("br", "el"):
        room.line(f"{name}, 30+20=50 9+7=16 50+16=66")
        room.line("no, 40+27=67-1=66")
    page = room.context.new_page()
    page.set_viewport_size({"width": width, "height": height})
    page.goto(room.one_address)
    page.locator(".ways:not(.bench) .way").nth(3).wait_for()
    page.wait_for_timeout(900)
    assert page.locator(".ways:not(.bench) .way").count() == 4
    assert page.evaluate(LOWEST) == []
    least = {"problem": 12, "way": 8, "other": 6}
    assert [each for each in letters(page) if each[1] < least[each[0]] - 0.01] == []
    page.locator(".drawer select").first.wait_for()


def test_numbers_are_chosen_on_the_one_screen_by_a_tap(room):
    room.line("no, 40+27=67-1=66")
    room.desk.locator('[data-key="connect"]').click()
    page = room.context.new_page()
    page.goto(room.one_address)
    numbers = page.locator(".number")
    numbers.nth(2).wait_for()
    labels = [each.get_attribute("aria-label") for each in numbers.all()]
    assert labels == ["39, 39 + 27", "27, 39 + 27", "66, 39 + 27"]
    numbers.nth(0).click()
    numbers.nth(2).click()
    page.locator(".one-line").fill("no, both end near a ten")
    page.locator(".one-line").press("Enter")
    room.board.get_by_text("“both end near a ten”").wait_for()
    assert room.board.locator(".string .scene rect").count() == 2
    numbers.nth(0).click()
    page.locator(".one-line").fill("+1")
    page.get_by_role("button", name="What if?").click()
    room.board.locator(".what-if", has_text="40 + 27").wait_for()
