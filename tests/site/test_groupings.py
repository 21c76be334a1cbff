"""How a child saw a quick image, chosen in a real browser: before it is on the board and after."""

import pytest

from tests.site.live_room import open_room

pytestmark = [pytest.mark.browser, pytest.mark.slow]
OUTLINES = """() => [...document.querySelectorAll(".ways:not(.bench) .way")].map(
    (way) => [...way.querySelectorAll(".scene path")].map((one) => one.getBBox())
        .filter((box) => box.width > 0)
        .map((box) => box.width > box.height ? "row" : "column"))"""
ROWS, COLUMNS = ["row"] * 4, ["column"] * 4


@pytest.fixture
def room(serve, open_page):
    yield from open_room(serve, open_page, "image array: 4 x 4", "[data-view=think]")


def waited(room, *ways):
    """Wait until the board's ways are circled so."""
    room.settled()
    wanted = [list(way) for way in ways]
    same = f"(wanted) => JSON.stringify(({OUTLINES})()) === JSON.stringify(wanted)"
    room.board.wait_for_function(same, arg=wanted, polling=50)
    room.desk.bring_to_front()


def test_a_square_of_dots_is_circled_as_the_teacher_says_it_was_seen(room):
    desk = room.desk
    grouped = desk.locator(".chip-grouped", has_text="4 × 4 = 16").first
    grouped.get_by_role("button", name="by columns").click()
    waited(room, COLUMNS)
    grouped.locator(".chip").click()
    waited(room, COLUMNS, ROWS)

    field = desk.locator("#line .said-line")
    field.fill("4 x 4 = 16")
    preview = desk.locator("#preview")
    preview.get_by_role("button", name="by rows", pressed=True).wait_for()
    preview.get_by_role("button", name="by columns").click()
    preview.get_by_role("button", name="by columns", pressed=True).wait_for()
    field.press("Enter")
    waited(room, COLUMNS, ROWS, COLUMNS)

    desk.locator(".seen-way").nth(1).click()
    options = desk.locator(".options")
    options.get_by_role("button", name="by rows", pressed=True).wait_for()
    options.get_by_role("button", name="by columns").click()
    waited(room, COLUMNS, COLUMNS, COLUMNS)
    desk.locator("#undo").click()
    waited(room, COLUMNS, ROWS, COLUMNS)
    desk.goto(f"{desk.url.split('/talks/')[0]}/talks/{room.talk}/back")
    desk.locator("h1").first.wait_for()
    told = [each["seen"] for each in shared(room)]
    assert [seen[0][:2] for seen in told] == [[0, 4], [0, 1], [0, 4]]


def shared(room):
    """The ways as the record keeps them."""
    page = room.context.request.get(f"{room.desk.url.split('/back')[0]}/desk.json").json()
    return [
        {"seen": next(one["seen"] for one in way["groupings"] if one["chosen"])}
        for way in page["ways"]
    ]


def test_numbers_are_doubled_halved_and_made_ten_times_in_a_what_if(room):
    desk = room.desk
    for problem in ("12 x 5", "7 x 5"):
        desk.locator('[data-key="add"]').click()
        desk.locator("#add-problem input[name=text]").fill(problem)
        desk.get_by_role("button", name="Show it now").click()
        room.board.locator("h1.problem", has_text=problem.replace("x", "×")).wait_for()
    desk.locator('[data-key="connect"]').click()
    desk.locator('[data-key="tab-what-if"]').click()
    for button, shown in (("double", "24 × 5"), ("ten times", "120 × 5"), ("half", "6 × 5")):
        desk.get_by_role("button", name="12, 12 × 5", exact=True).click()
        desk.get_by_role("button", name=button, exact=True).click()
        room.board.locator(".what-if", has_text=shown).wait_for()
        room.desk.bring_to_front()
    desk.get_by_role("button", name="7, 7 × 5", exact=True).click()
    desk.get_by_role("button", name="half", exact=True).click()
    desk.get_by_text("would not stay whole").wait_for()
    room.board.locator(".what-if").wait_for(state="detached")
    desk.locator('[data-key="erase-what-if"]').click()
    room.board.locator(".what-if", has_text="6 × 5").wait_for()
