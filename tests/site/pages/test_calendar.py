"""The year in a real browser: by keyboard alone, dragged, narrow, in two languages."""

import time
from datetime import date, timedelta

import pytest

from tests.browser import pictures_folder
from tests.site.pages.test_in_browser import FOCUSED, NARROW, SMALL, TABBABLE, TOO_WIDE, ready

pytestmark = [pytest.mark.browser, pytest.mark.slow]
TODAY = date.today()
FIRST = TODAY - timedelta(days=TODAY.weekday() + 14)
SIZES = ((1280, 800), (820, 1180), (390, 844))


@pytest.fixture(scope="module")
def year(house):
    """Lay out ten weeks of a kindergarten's year; return its days to come as ISO dates."""
    teacher = house.teacher
    teacher.get("/year/")
    last = FIRST + timedelta(days=67)
    laid = teacher.send_form(
        "/year/", grade="0", first=str(FIRST), last=str(last), curriculum="ccss"
    )
    assert laid.status == 302
    for _ in range(600):
        if not teacher.get("/year/busy").json()["busy"]:
            break
        time.sleep(0.1)
    page = teacher.get("/year/").text
    days = [each.split('"')[0] for each in page.split('data-day="')[1:]]
    return [day for day in days if day > str(TODAY)]


@pytest.fixture(params=["/year/", "/year/again", "/year/day/{day}", "/year/day/{past}"])
def path(request, year):
    return request.param.format(day=year[1], past=FIRST)


def ideas(page):
    return {
        each.get_attribute("data-day"): each.locator(".idea").inner_text()
        for each in page.locator("[data-day]").all()
    }


def test_axe_finds_nothing_at_any_width_and_nothing_is_too_wide(enter, axe, watch, path):
    page = enter(path)
    assert axe(page) == []
    page.set_viewport_size(NARROW)
    assert page.evaluate(TOO_WIDE) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    assert axe(page) == []
    assert watch.errors == []


def test_a_finger_has_room_on_everything(enter, path):
    page = enter(path, viewport={"width": 768, "height": 1024}, has_touch=True)
    assert page.evaluate(SMALL) == []


def test_the_tab_key_reaches_everything(enter, path):
    page = enter(path)
    wanted = page.evaluate(TABBABLE)
    met = 0
    for _press in range(wanted + 40):
        page.keyboard.press("Tab")
        one = page.evaluate(FOCUSED)
        if one is None or one["again"]:
            break
        met += not one["same"]
    assert met >= wanted


def test_a_day_is_swapped_locked_and_left_out_by_keyboard(enter, year):
    page = enter("/year/")
    before = ideas(page)
    one, other = year[2], year[3]
    open_by_key(page, one)
    press_button(page, "Change places with the day after")
    page.get_by_text("have changed places").wait_for()
    after = ideas(page)
    assert (after[one], after[other]) == (before[other], before[one])
    press_button(page, "Change them back")
    page.get_by_text("have changed places").wait_for()
    assert ideas(page) == before
    open_by_key(page, one)
    press_button(page, "Lock this day")
    page.get_by_role("button", name="Unlock this day").wait_for()
    assert page.get_by_role("button", name="Change places").count() == 0
    press_button(page, "No talk on this day")
    press_button(page, "There is a talk after all")
    press_button(page, "Make this a plan")
    page.wait_for_url("**/plans/*")


def open_by_key(page, day):
    page.locator(f"#day-{day} .day-link").focus()
    with page.expect_navigation():
        page.keyboard.press("Enter")


def press_button(page, name):
    page.get_by_role("button", name=name).first.focus()
    with page.expect_navigation():
        page.keyboard.press("Enter")


def test_a_day_is_dragged_onto_another(enter, year):
    page = enter("/year/")
    ready(page)
    before = ideas(page)
    one, other = year[5], year[7]
    with page.expect_navigation():
        page.locator(f"#day-{one}").drag_to(page.locator(f"#day-{other}"))
    after = ideas(page)
    assert (after[one], after[other]) == (before[other], before[one])
    assert page.locator(f"#day-{other}").evaluate("(day) => day.matches(':target')")


def test_planning_again_waits_for_the_work_and_shows_it(enter, year):
    page = enter("/year/again")
    page.get_by_role("button", name="See what would move").click()
    page.locator("#moves").wait_for(timeout=60_000)
    page.get_by_role("button", name="Leave the year as it is").or_(
        page.get_by_role("button", name="Good")
    ).click()


def test_the_year_in_spanish_fits_320_pixels(house, enter, axe, path):
    house.teacher.get("/settings")
    house.teacher.send_form("/settings", language="es")
    try:
        page = enter(path, viewport=NARROW)
        assert page.evaluate("document.documentElement.lang") == "es"
        assert axe(page) == []
        assert page.evaluate(TOO_WIDE) == []
    finally:
        house.teacher.get("/settings")
        house.teacher.send_form("/settings", language="en")


@pytest.mark.parametrize("size", SIZES)
def test_pictures_of_the_year(enter, year, size):
    page = enter("/year/", viewport={"width": size[0], "height": size[1]})
    shown = page.locator(".year-day").first
    assert shown.evaluate("(day) => day.scrollWidth <= day.clientWidth")
    folder = pictures_folder()
    if folder is not None:
        for name, path in (
            ("year", "/year/"),
            ("day", f"/year/day/{year[1]}"),
            ("again", "/year/again"),
        ):
            page.goto(page.url.split("/year")[0] + path)
            page.screenshot(path=folder / f"{name}-{size[0]}.png", full_page=True)
