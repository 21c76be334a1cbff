"""Every page in a real browser: with a keyboard alone, without script, narrow, in two languages."""

import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]

PATHS = (
    "/",
    "/start",
    "/welcome",
    "/class",
    "/class/board",
    "/class/showed",
    "/class/child/{child}/ways",
    "/class/record",
    "/class/forget",
    "/class/child/{child}/forget",
    "/plans/",
    "/plans/compose",
    "{plan}",
    "{plan}?open={row}",
    "{plan}/print",
    "{plan}/written",
    "/starters?grade=2",
    "/starters/moving-a-few-across",
    "/year/",
    "/talks/",
    "/talks/written",
    "/talks/bring",
    "{talk}/back",
    "{talk}/back?step=1",
    "{talk}/back?step=4",
    "{talk}/forget",
    "/settings",
    "/settings/old-talks",
    "/join",
    "/nothing/here",
)
NARROW = {"width": 320, "height": 640}
TOO_WIDE = """() => [...document.querySelectorAll("body *")]
  .filter((one) => one.getBoundingClientRect().right > innerWidth + 1 && !one.closest(".unseen"))
  .map((one) => one.outerHTML.slice(0, 90))"""
TABBABLE = """() => [...document.querySelectorAll(
    "a[href], button, input, select, textarea, summary, [tabindex='0']")]
  .filter((one) => !one.disabled && one.tabIndex >= 0 && one.checkVisibility()
    && one.type !== "hidden" && (one.type !== "radio" || one.checked)).length"""
FOCUSED = """() => {
  const one = document.activeElement;
  if (one === document.body) return null;
  window.met ??= new Set();
  // A field for a day has several places of its own.
  const again = one !== window.last && window.met.has(one);
  const same = one === window.last;
  window.met.add(one);
  window.last = one;
  const style = getComputedStyle(one);
  const box = one.getBoundingClientRect();
  const seen = style.outlineStyle !== "none" && box.width > 0 && box.right > 0;
  return { again, same, seen, said: one.outerHTML.slice(0, 90) };
}"""


SMALL = """() => [...document.querySelectorAll(
    "a[href], button, input, select, textarea, summary, label.check")]
  .filter((one) => one.checkVisibility() && !one.closest(".unseen, .skip"))
  .filter((one) => getComputedStyle(one).display !== "inline")
  .filter((one) => !["checkbox", "radio"].includes(one.type) || !one.closest("label"))
  .filter((one) => {
    const { width, height } = one.getBoundingClientRect();
    return width > 1 && (width < 44 || height < 44);
  })
  .map((one) => one.outerHTML.slice(0, 90))"""


def address(house, path):
    row = ""
    if "{row}" in path:
        row = house.teacher.get(house.plan).text.split('data-row="')[1].split('"')[0]
    return path.format(plan=house.plan, talk=house.talk, child=house.child, row=row)


@pytest.fixture(params=PATHS)
def path(request, house):
    return address(house, request.param)


def test_axe_finds_nothing_and_no_script_fails(enter, axe, watch, path):
    page = enter(path)
    assert axe(page) == []
    assert [error for error in watch.errors if "404" not in error] == []


def test_nothing_is_wider_than_320_pixels(enter, axe, path):
    page = enter(path, viewport=NARROW)
    assert page.evaluate(TOO_WIDE) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    assert axe(page) == []


def test_a_finger_has_room_on_everything(enter, path):
    page = enter(path, viewport={"width": 768, "height": 1024}, has_touch=True)
    assert page.evaluate("matchMedia('(pointer: coarse)').matches")
    assert page.evaluate(SMALL) == []


def test_the_tab_key_reaches_everything_and_shows_where_it_is(enter, path):
    page = enter(path)
    wanted = page.evaluate(TABBABLE)
    met = []
    for _press in range(wanted + 40):
        page.keyboard.press("Tab")
        one = page.evaluate(FOCUSED)
        if one is None or one["again"]:
            break
        if not one["same"]:
            met.append(one)
    assert [one["said"] for one in met if not one["seen"]] == []
    assert len(met) >= wanted


@pytest.mark.parametrize(
    "path_", ["/", "/class/board", "/class/showed", "{plan}?open={row}", "{talk}/back"]
)
def test_pages_in_spanish_have_no_fault_and_fit_320_pixels(house, enter, axe, path_):
    house.teacher.get("/settings")
    house.teacher.send_form("/settings", language="es")
    try:
        page = enter(address(house, path_), viewport=NARROW)
        assert page.evaluate("document.documentElement.lang") == "es"
        assert axe(page) == []
        assert page.evaluate(TOO_WIDE) == []
    finally:
        house.teacher.send_form("/settings", language="en")


def test_two_taps_from_the_start_put_a_problem_on_the_board(enter):
    page = enter("/")
    page.get_by_role("link", name="Start a talk now").click()
    page.wait_for_url("**/start")
    ready(page)
    with page.context.expect_page() as opened:
        offered = page.locator(".ready-problem").nth(1)
        problem = offered.inner_text()
        offered.click()
    board = opened.value
    board.get_by_text(problem, exact=True).first.wait_for(state="attached")
    page.wait_for_url("**/desk")
    assert "/board/" in board.url


def test_a_problem_that_cannot_be_read_is_told_in_place(enter):
    page = enter("/start")
    page.get_by_label("or one of your own").fill("39 +")
    page.keyboard.press("Enter")
    alert = page.get_by_role("alert")
    alert.wait_for()
    assert "39 +" in alert.inner_text()
    assert page.get_by_label("or one of your own").input_value() == "39 +"
    assert page.url.endswith("/start")


def test_with_the_window_unwanted_only_the_desk_opens(enter):
    page = enter("/start")
    page.get_by_label("Open the board in a window of its own").uncheck()
    page.locator(".ready-problem").first.click()
    page.wait_for_url("**/desk")
    assert len(page.context.pages) == 1
    page.goto(page.url.split("/talks")[0] + "/start")
    assert not page.get_by_label("Open the board in a window of its own").is_checked()


def test_a_talk_starts_and_a_plan_is_made_without_script(enter):
    page = enter("/", java_script_enabled=False)
    page.get_by_role("link", name="Start a talk now").click()
    page.locator(".ready-problem").first.click()
    assert page.url.endswith("/desk")
    page.get_by_text("This page has not started.").wait_for()
    page.goto(page.url.split("/talks")[0] + "/plans/")
    page.get_by_label("One a line").fill("8 + 2\n8 + 5")
    page.get_by_role("button", name="Make the plan").click()
    page.locator(".plan-row", has_text="8 + 5").get_by_role("button", name="Open").click()
    page.get_by_role("button", name="Earlier").click()
    page.locator(".plan-row", has_text="8 + 2").get_by_role("button", name="Open").wait_for()
    page.locator(".plan-row").first.get_by_text("8 + 5", exact=True).first.wait_for()
    assert problems(page) == ["8 + 5", "8 + 2"]


@pytest.fixture
def plan(enter):
    page = enter("/plans/")
    page.get_by_label("One a line").fill("8 + 2\n8 + 5\n8 + 7")
    page.get_by_role("button", name="Make the plan").click()
    page.locator(".plan-row").first.wait_for()
    ready(page)
    return page


def ready(page):
    """Wait until the page's scripts have run."""
    page.locator("html[data-ready]").wait_for()


def problems(page):
    return page.locator(".problem-cell [aria-hidden]").all_inner_texts()


def test_a_row_is_dragged_into_another_order(plan):
    last = plan.locator(".plan-row").nth(2).locator(".problem-cell")
    with plan.expect_navigation():
        last.drag_to(plan.locator(".plan-row").nth(0).locator(".problem-cell"))
    assert problems(plan) == ["8 + 7", "8 + 2", "8 + 5"]


def test_a_plan_saves_itself_when_a_field_is_left(plan):
    plan.locator(".plan-row", has_text="8 + 5").get_by_role("button", name="Open").click()
    plan.wait_for_url("**open=*")
    ready(plan)
    plan.get_by_label("Why it is here").fill("over the ten")
    plan.get_by_label("Why it is here").press("Tab")
    plan.get_by_text("Saved.").wait_for()
    assert "8 + 5 | over the ten\n" in plan.locator("#as-text").input_value()
    plan.goto(plan.url.split("?")[0])
    plan.locator(".why-cell", has_text="over the ten").wait_for()


def test_a_bad_problem_is_told_where_it_is_typed_and_not_saved(plan):
    plan.locator(".plan-row", has_text="8 + 5").get_by_role("button", name="Open").click()
    plan.wait_for_url("**open=*")
    ready(plan)
    plan.get_by_label("Problem", exact=True).fill("8 + ")
    plan.get_by_label("Problem", exact=True).press("Tab")
    status = plan.locator("[data-part=saved]")
    plan.wait_for_function("() => document.querySelector('[data-part=saved]').textContent")
    assert "8 +" in status.inner_text()
    plan.reload()
    assert problems(plan) == ["8 + 2", "8 + 5", "8 + 7"]


def test_arrow_keys_and_the_slider_walk_through_a_talk(enter, house):
    page = enter(f"{house.talk}/back?step=2")
    with page.expect_navigation():
        page.keyboard.press("ArrowRight")
    page.get_by_text("Step 3 of").wait_for()
    with page.expect_navigation():
        page.keyboard.press("Home")
    page.get_by_text("Step 1 of").wait_for()
    page.get_by_role("slider").focus()
    with page.expect_navigation():
        page.keyboard.press("End")
    page.get_by_text("Step 6 of 6").wait_for()
    with page.expect_navigation():
        page.keyboard.press("ArrowLeft")
    page.get_by_text("Step 5 of 6").wait_for()
    assert page.get_by_role("slider").evaluate("one => one === document.activeElement")


def test_icons_stand_beside_the_words_they_are_chosen_by(enter):
    page = enter("/class/board")
    icon = page.locator(".signals-edit > li").first.locator("[data-icon]")
    before = icon.inner_html()
    page.get_by_label("Its picture 1").select_option("question")
    assert icon.inner_html() != before
    page.get_by_label("Its picture 1").select_option("")
    assert icon.inner_html() == ""


def test_the_first_run_is_done_with_the_keyboard_alone(enter):
    page = enter("/welcome")
    page.get_by_label("Name of the class").focus()
    for typed in ("3C", "Ana\nBen\nAna"):
        page.keyboard.insert_text(typed)
        page.keyboard.press("Tab")
    page.get_by_role("button", name="Look at the list").press("Enter")
    page.get_by_role("button", name="Make the class").press("Enter")
    page.get_by_role("heading", name="3C").wait_for()
    page.get_by_text("3 children").wait_for()


def test_a_past_talk_is_seen_on_the_whole_screen_as_the_board_showed_it(house, enter, axe):
    page = enter(f"{house.talk}/back/board?step=2", viewport={"width": 1280, "height": 720})
    page.locator("[data-view='think']").wait_for()
    page.get_by_role("button", name="Next").click()
    page.keyboard.press("ArrowRight")
    page.locator("[data-view='ways'] .scene").wait_for()
    assert page.locator("output").inner_text() == "4 / 6"
    page.locator("[data-go=last]").click()
    page.get_by_text("We pause here.").wait_for()
    assert axe(page) == []
    page.get_by_role("link", name="Close").click()
    page.get_by_text("Step 6 of 6").wait_for()


def test_the_whole_screen_fits_320_pixels(house, enter):
    page = enter(f"{house.talk}/back/board", viewport=NARROW)
    page.get_by_text("We pause here.").wait_for()
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
