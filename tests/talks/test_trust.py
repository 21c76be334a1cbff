"""What a class trusts: nothing is lost, nothing is doubled, the board is never blank."""

import pytest
from playwright.sync_api import TimeoutError as Late

from tests.talks.hall import TABLET, Hall
from tests.talks.screens import STATES, Board, Desk, waited

pytestmark = pytest.mark.browser


@pytest.fixture
def own_hall(tmp_path):
    hall = Hall(tmp_path / "hall")
    yield hall
    hall.server.kill()


def board_of(hall, talk, open_page):
    page = open_page()
    page.goto(f"{hall.origin}/board/{talk.board}")
    return Board(page)


def only_lost_touch(watch):
    """Tell whether every error of the pages was a server that did not answer."""
    return all("net::ERR_" in error for error in watch.errors)


def test_a_talk_outlives_its_server_in_a_browser(own_hall, open_page, watch):
    hall = own_hall
    talk = hall.begin("Over a ten")
    desk = Desk(hall.page(open_page, talk.desk_path, viewport=TABLET))
    board = board_of(hall, talk, open_page)
    desk.next("19 + 6")
    desk.tap("Aroha", "19 + 1 = 20", "20 + 5 = 25")
    desk.saved()
    one = [{"tags": ["Aroha"], "says": ["19 | 20 | 25 | +1 | +5"]}]
    assert waited(lambda: board.says().get("ways"), one) == one
    hall.server.kill()
    desk.tap("Bram", "20 + 6 = 26", "26 − 1 = 25")
    desk.tap("Chidi", "19 + 1 = 20", "20 + 5 = 25")
    alarm = desk.page.locator("#alarm")
    alarm.wait_for()
    assert "Not saved yet" in alarm.inner_text()
    assert desk.page.locator("#saved.full").count() == 0
    touch = ["waiting for the desk"]
    assert waited(lambda: board.says().get("touch"), touch) == touch
    assert board.says()["ways"] == one
    hall.restart()
    alarm.wait_for(state="hidden")
    desk.saved()
    two = [*one, {"tags": ["Bram"], "says": ["20 | 25 | 26 | +6 | −1"]},
           {"tags": ["Chidi"], "says": one[0]["says"]}]  # fmt: skip
    assert waited(lambda: board.says().get("ways"), two) == two
    assert waited(lambda: board.says().get("touch"), None) is None
    names = [way["name"] for way in hall.state(talk)["ways"]]
    assert names == ["Aroha", "Bram", "Chidi"]
    assert only_lost_touch(watch), watch.errors


def test_what_waits_outlives_a_reload_of_the_desk(own_hall, open_page, watch):
    hall = own_hall
    talk = hall.begin("Over a ten")
    desk = Desk(hall.page(open_page, talk.desk_path, viewport=TABLET))
    desk.next("19 + 6")
    desk.page.route("**/events", lambda route: route.abort())
    desk.tap("Aroha", "19 + 1 = 20", "20 + 5 = 25")
    desk.page.locator("#alarm").wait_for()
    assert hall.state(talk)["ways"] == []
    desk.page.unroute("**/events")
    desk.page.reload()
    Desk(desk.page).saved()
    assert waited(lambda: len(hall.state(talk)["ways"]), 1) == 1
    assert only_lost_touch(watch), watch.errors


def test_an_answer_that_is_lost_on_its_way_back_doubles_nothing(own_hall, open_page, watch):
    hall = own_hall
    talk = hall.begin("Over a ten")
    desk = Desk(hall.page(open_page, talk.desk_path, viewport=TABLET))
    desk.next("19 + 6")
    lost = []

    def lose(route):
        route.fetch()
        lost.append(route.request.url)
        route.abort()

    desk.page.route("**/events", lose, times=1)
    desk.tap("Aroha", "19 + 1 = 20", "20 + 5 = 25")
    while not lost:
        desk.page.wait_for_timeout(20)
    desk.saved()
    assert [way["name"] for way in hall.state(talk)["ways"]] == ["Aroha"]
    assert len(lost) == 1
    assert only_lost_touch(watch), watch.errors


@pytest.mark.usefixtures("calm")
def test_the_board_stays_when_the_desk_goes_and_after_its_own_reload(hall, open_desk, open_board):
    talk = hall.begin("Over a ten")
    desk, board = open_desk(talk), open_board(talk)
    desk.next("19 + 6")
    desk.tap("Aroha", "19 + 1 = 20", "20 + 5 = 25")
    desk.saved()
    told = [{"tags": ["Aroha"], "says": ["19 | 20 | 25 | +1 | +5"]}]
    assert waited(lambda: board.says().get("ways"), told) == told
    before = board.says()
    desk.page.context.close()
    assert board.says() == before
    board.page.reload()
    assert waited(Board(board.page).says, before) == before


@pytest.mark.parametrize("presses", [1, 2, 3])
@pytest.mark.usefixtures("calm")
def test_undo_takes_back_what_is_saved_and_not_shown_yet(hall, open_page, presses):
    talk = hall.begin("Over a ten")
    page = open_page(viewport=TABLET)
    page.add_init_script(STATES)
    hall.sign_in(page.context)
    page.goto(hall.origin + talk.desk_path)
    desk = Desk(page)
    desk.next("19 + 6")
    desk.saved()
    page.evaluate("window.held = true")
    given = ["25", "42", "26", "24"]
    for answer in given:
        desk.answer(answer)

    def heard():
        return [answer["text"] for answer in hall.state(talk)["board"]["answers"]]

    assert waited(heard, given) == given
    desk.saved()
    for _ in range(presses):
        desk.press("Undo")
    left = given[:-presses]
    assert waited(heard, left) == left
    page.evaluate("window.let_go()")
    desk.answer("27")
    left.append("27")
    assert waited(heard, left) == left


@pytest.mark.usefixtures("calm")
def test_the_one_screen_takes_no_tap_before_it_knows_where_the_talk_stands(hall, open_page):
    talk = hall.begin("Over a ten")
    hall.teacher.get(talk.desk_path)
    page = open_page(viewport=TABLET)
    page.add_init_script("window.held = true;" + STATES)
    page.goto(f"{hall.origin}/one/{talk.one}")
    button = page.get_by_role("button", name="Next", exact=True, include_hidden=True)
    with pytest.raises(Late):
        button.click(timeout=1000)
    page.evaluate("window.let_go()")
    button.click()
    page.locator("h1", has_text="19 + 6").wait_for()
    assert hall.state(talk)["board"]["phase"] == "think"


@pytest.mark.usefixtures("calm")
def test_two_desks_on_one_talk_show_the_same(hall, open_desk, open_board):
    talk = hall.begin("Over a ten")
    one, two, board = open_desk(talk), open_desk(talk), open_board(talk)
    one.next("19 + 6")
    two.page.locator("#strip .now", has_text="19 + 6").wait_for()
    one.tap("Aroha", "19 + 1 = 20", "20 + 5 = 25")
    two.tap("Bram", "20 + 6 = 26", "26 − 1 = 25")
    one.speaker("Hana")
    one.page.locator('#relate [data-key^="same-"]', has_text="Bram").click()
    told = [
        {"tags": ["Aroha"], "says": ["19 | 20 | 25 | +1 | +5"]},
        {"tags": ["Bram", "Hana"], "says": ["20 | 25 | 26 | +6 | −1"]},
    ]

    def in_order_of_names():
        return sorted(board.says().get("ways", ()), key=lambda way: way["tags"])

    assert waited(in_order_of_names, told) == told
    two.page.locator("#names .heard", has_text="Hana").wait_for()  # undo takes back what it shows
    two.press("Undo")
    told[1] = {"tags": ["Bram"], "says": told[1]["says"]}
    assert waited(in_order_of_names, told) == told

    def seen(desk):
        return desk.page.locator("#seen").inner_text()

    assert waited(lambda: seen(one) == seen(two), True)
    assert "Aroha" in seen(one)
    assert "Bram" in seen(one)
