"""The live pages in a real browser: what they promise of sizes, taps, keys and lost touch."""

import signal

import pytest

from tests.site.live_room import NAMES, cookies, letters, open_room
from tests.site.server import begin

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCREENS = {"4:3": (1024, 768), "16:9": (1920, 1080), "21:9": (2560, 1080)}
CUT_OFF = """() => [...document.querySelectorAll(".ways:not(.bench) .way")].filter((way) => {
  const box = way.getBoundingClientRect();
  return [...way.querySelectorAll("li, .scene, .said")].some((one) => {
    const inner = one.getBoundingClientRect();
    return inner.right > box.right + 1 || inner.bottom > box.bottom + 1;
  });
}).map((way) => way.textContent)"""
OVER = """() => ["html", ".who-part", ".how-part", ".see-part", ".seen", ".stops", ".links"]
    .map((name) => document.querySelector(name))
    .filter((node) => node.scrollHeight > node.clientHeight + 1 ||
        node.scrollWidth > node.clientWidth + 1)
    .map((node) => node.className || node.nodeName)"""


@pytest.fixture
def room(serve, open_page):
    yield from open_room(serve, open_page)


def test_nothing_a_child_reads_is_smaller_than_promised(room):
    room.line("no, 40+27=67-1=66")
    room.line("to, 30+20=50 9+7=16 50+6=56")
    room.line("br, 39+1=40 40+1=41 41+1=42 42+1=43 43+1=44 44+1=45 45+21=66")
    room.line("mei, I gave one from the 27 to the 39, so it is forty and twenty-six")
    room.desk.locator(".name", has_text="Wren").click()
    room.desk.locator(".chip", has=room.desk.locator(".scene")).first.click()
    room.settled()
    for phase in ("think", "answers", "ways", "connect"):
        if phase == "connect":
            room.desk.locator('[data-key="connect"]').click()
        else:
            room.desk.locator(f'[data-key="phase-{phase}"]').click()
        room.board.wait_for_selector(f'[data-view="{phase}"]')
        for name, (width, height) in SCREENS.items():
            room.board.set_viewport_size({"width": width, "height": height})
            room.board.wait_for_timeout(900)
            found = letters(room.board)
            assert found, (phase, name)
            least = {"problem": 12, "way": 8, "other": 6}
            small = [each for each in found if each[1] < least[each[0]] - 0.01]
            assert small == [], (phase, name)
            assert room.board.evaluate(CUT_OFF) == [], (phase, name)


def test_a_foreseen_way_takes_two_taps_and_undo_one(room):
    room.desk.locator(".name", has_text="Wren").click()
    room.desk.locator(".chip").first.click()
    room.shows("Wren")
    room.settled()
    room.desk.locator("#undo").click()
    room.board.wait_for_selector('[data-view="think"]')


def test_the_keyboard_alone_records_a_way(room):
    desk = room.desk
    desk.keyboard.press("l")
    desk.keyboard.type("no, 37+3=40+22")
    desk.keyboard.press("Enter")
    room.shows("Noor")
    room.settled()
    desk.locator(".seen-way").click()
    desk.locator(".options select").select_option("equations")
    room.shows("37 + 3 = 40")
    room.shows("40 + 22")


def test_two_children_with_the_same_first_letter_are_asked_about(room):
    field = room.desk.locator("#line .said-line")
    field.fill("m, 40+26")
    field.press("Enter")
    asked = room.desk.locator("#who-typed button")
    asked.nth(1).wait_for()
    assert asked.all_inner_texts() == ["Mei", "Milo"]
    asked.nth(1).click()
    field.press("Enter")
    room.shows("Milo")


def test_what_was_not_saved_is_shown_outlives_a_reload_and_is_sent_again(room, watch):
    room.context.route("**/events", lambda route: route.abort())
    room.desk.locator(".name", has_text="Elif").click()
    room.desk.locator(".chip").first.click()
    room.desk.wait_for_selector("#alarm:not([hidden])")
    room.desk.reload()
    room.desk.wait_for_selector("#alarm:not([hidden])")
    room.context.unroute("**/events")
    room.shows("Elif")
    room.desk.wait_for_selector("#alarm", state="hidden")
    # The console tells of the requests that this test broke off.
    watch.errors = [each for each in watch.errors if "ERR_FAILED" not in each]


def test_a_board_that_lost_touch_keeps_its_last_state_and_says_so(room):
    room.line("no, I gave one away")
    room.shows("Noor")
    room.context.set_offline(True)
    room.board.evaluate("dispatchEvent(new Event('online'))")
    room.board.wait_for_function("() => document.getElementById('touch').textContent !== ''")
    room.board.get_by_text("“I gave one away”").wait_for()
    room.context.set_offline(False)
    room.board.wait_for_function("() => document.getElementById('touch').textContent === ''")


def test_a_stream_that_fell_silent_is_opened_anew(serve, open_page):
    server = serve()
    teacher = server.teacher()
    given = begin(teacher, names=NAMES)
    page = open_page()
    page.context.add_cookies(cookies(teacher))
    page.clock.install()
    page.goto(f"{teacher.origin}/talks/{given['talk']}/desk")
    page.wait_for_selector(".chip")
    server.process.send_signal(signal.SIGSTOP)
    page.clock.fast_forward(46_000)
    page.wait_for_function("() => document.getElementById('touch').textContent !== ''")
    server.process.send_signal(signal.SIGCONT)
    page.clock.fast_forward(2_000)
    page.wait_for_function("() => document.getElementById('touch').textContent === ''")


def test_many_ways_and_problems_scroll_nothing_out_of_sight(room):
    desk = room.desk
    for name in ("br", "el", "mei", "mil", "no", "to", "br", "el", "mei"):
        room.line(f"{name}, 40+27=67 67-1=66")
    desk.locator(".name", has_text="Wren").click()
    desk.locator("#line .said-line").fill("39+1=40 40+26=66")
    desk.wait_for_selector("#preview .read")
    assert desk.evaluate(OVER) == []
    desk.keyboard.press("Escape")
    for number in range(6):
        desk.locator('[data-key="add"]').click()
        desk.locator("#add-problem input").fill(f"4{number} + 2{number}")
        desk.locator("#add-problem [data-show]").click()
        desk.locator("#strip .now", has_text=f"4{number} + 2{number}").wait_for()
    desk.locator('[data-key="connect"]').click()
    desk.locator('[data-key="tab-link"]').click()
    desk.locator('[data-key="ask-links"]').click()
    desk.wait_for_selector(".links li")
    assert desk.evaluate(OVER) == []
    tops = desk.evaluate("[...document.querySelectorAll('.string li')].map((li) => li.offsetTop)")
    assert tops == sorted(set(tops))


def test_nothing_scrolls_on_the_desk_of_a_large_class(serve, open_page):
    teacher = serve().teacher()
    names = "\n".join(f"Child{chr(65 + n // 26)}{chr(97 + n % 26)}" for n in range(32))
    given = begin(teacher, names=names)
    desk = open_page(viewport={"width": 1180, "height": 820})
    desk.context.add_cookies(cookies(teacher))
    desk.goto(f"{teacher.origin}/talks/{given['talk']}/desk")
    desk.wait_for_selector(".chip")
    desk.locator(".name").first.click()
    desk.locator("#line .said-line").fill("39+1=40 40+26=66")
    desk.wait_for_selector("#preview .read")
    over = desk.evaluate(
        "() => ['html', '.who-part', '.how-part', '.see-part', '.strip'].filter((name) => {"
        "  const node = document.querySelector(name);"
        "  return node.scrollHeight > node.clientHeight + 1 ||"
        "    node.scrollWidth > node.clientWidth + 1; })"
    )
    assert over == []
    desk.set_viewport_size({"width": 320, "height": 640})
    assert desk.evaluate("document.documentElement.scrollWidth") <= 320


def test_the_oldest_way_folds_to_its_tag_and_comes_back_when_touched(room):
    for name in ("br", "el", "mei", "no", "to"):
        room.line(f"{name}, 40+27=67-1=66")
    room.shows("Tomas")
    tags = """() => [...document.querySelectorAll(".ways:not(.bench) .tag")]
        .map((tag) => tag.textContent)"""
    assert room.board.evaluate(tags) == ["Elif", "Mei", "Noor", "Tomas"]
    room.board.locator(".fold button").click()
    assert room.board.evaluate(tags) == ["Bram", "Mei", "Noor", "Tomas"]
    room.line("wr, 40+27=67-1=66")
    room.shows("Wren")
    assert room.board.evaluate(tags) == ["Mei", "Noor", "Tomas", "Wren"]


def test_a_way_that_ends_elsewhere_looks_just_the_same(room):
    look = """() => document.getElementById("main").innerHTML
        .replace(/data-key="[^"]*"/g, "").replace(/scene-\\d+/g, "")"""
    looks = []
    for answer in ("66", "56"):
        room.line(f"no, 30+20=50 9+7=16 50+16={answer}")
        room.desk.locator(".seen-way").click()
        room.desk.locator(".options select").select_option("equations")
        room.shows(f"50 + 16 = {answer}")
        looks.append(room.board.evaluate(look).replace(answer, "the end"))
        for _ in range(2):
            room.desk.locator("#undo").click()
            room.settled()
        room.board.wait_for_selector('[data-view="think"]')
    assert looks[0] == looks[1]


def test_ending_the_talk_is_taken_back_by_one_tap(room):
    room.line("no, 40+27=67-1=66")
    room.desk.locator("#open-more").click()
    room.desk.locator("[data-do=close-talk]").click()
    room.board.wait_for_selector('[data-view="after"]')
    room.settled()
    room.desk.locator("#undo").click()
    room.board.wait_for_selector('[data-view="ways"]')


def test_a_line_typed_while_out_of_touch_is_read_when_it_comes_through(room, watch):
    room.context.set_offline(True)
    field = room.desk.locator("#line .said-line")
    field.fill("no, 39+1=40 40+26=66")
    field.press("Enter")
    room.desk.wait_for_selector("#alarm:not([hidden])")
    room.context.set_offline(False)
    room.shows("Noor")
    room.desk.locator(".seen-way", has_text="39 + 1 = 40, 40 + 26 = 66").wait_for()
    room.board.wait_for_selector(".ways:not(.bench) .scene")
    watch.errors = [each for each in watch.errors if "ERR_INTERNET" not in each]


def test_no_accessibility_fault_is_found_on_the_live_pages(room, axe):
    room.line("no, 40+27=67-1=66")
    room.shows("Noor")
    assert axe(room.desk) == []
    assert axe(room.board) == []
    room.desk.locator('[data-key="connect"]').click()
    room.board.wait_for_selector('[data-view="connect"]')
    assert axe(room.desk) == []
    assert axe(room.board) == []


def test_a_page_and_its_letters_weigh_little(room):
    weight = (
        "() => [...performance.getEntriesByType('resource'),"
        " ...performance.getEntriesByType('navigation')]"
        ".reduce((all, each) => all + (each.decodedBodySize || 0), 0)"
    )
    for page in (room.desk, room.board):
        assert page.evaluate(weight) <= 200 * 1024
