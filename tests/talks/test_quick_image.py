"""A quick image in a talk: seen for its seconds, once more, told in groups, kept to speak about."""

import json

import pytest

from tests.talks.screens import faults, fits, waited

pytestmark = pytest.mark.browser

LINES = 3
"""How many steps a chip shows before it says that there are more."""
DOTS = "() => document.querySelectorAll('.stage circle, .head circle').length"
GROUPS = """() => [...document.querySelectorAll('.ways:not(.bench) .way')].map((way) => ({
  dots: way.querySelectorAll('.scene circle').length,
  outlines: way.querySelectorAll('.scene path').length,
  says: [...way.querySelectorAll('.scene text')].map((one) => one.textContent),
}))"""


def dots(board):
    return lambda: board.page.evaluate(DOTS)


def seen(hall, talk):
    """What the server sends a board that opens now."""
    return hall.state(talk)["board"]["image"]


@pytest.mark.usefixtures("calm")
def test_a_picture_is_shown_hidden_looked_at_once_more_and_told_in_groups(
    hall, open_desk, open_board, axe
):
    talk = hall.begin("Pictures")
    desk, board = open_desk(talk), open_board(talk)
    desk.next("image dice: 4 3")
    assert waited(dots(board), 7) == 7
    assert desk.page.locator("#image circle").count() == 7
    assert waited(dots(board), 0) == 0
    assert "How many?" in board.page.locator("#main").inner_text()
    assert seen(hall, talk) == {"scene": None, "left": 0}
    board.page.reload()
    board.page.wait_for_selector(".asked")
    assert board.page.evaluate(DOTS) == 0
    assert "image dice" not in board.text()
    assert board.page.locator(".scene").count() == 0

    desk.press("One more look")
    assert waited(dots(board), 7) == 7
    assert waited(dots(board), 0) == 0
    assert waited(lambda: desk.page.get_by_role("button", name="Show it to stay").count(), 1) == 1
    assert desk.page.get_by_role("button", name="One more look").count() == 0

    desk.answer("7")
    desk.tap("Noor", "4 + 3 = 7")
    desk.tap("Wren", "4 + 1 = 5", "5 + 2 = 7")
    told = waited(lambda: len(board.page.evaluate(GROUPS)), 2)
    assert told == 2
    first, second = board.page.evaluate(GROUPS)
    assert first == {"dots": 7, "outlines": 2, "says": ["4 + 3 = 7"]}
    assert (second["dots"], second["outlines"]) == (7, 3)
    assert board.page.locator(".head circle").count() == 0

    desk.press("Show it to stay")
    assert waited(lambda: board.page.locator(".head circle").count(), 7) == 7
    assert faults(board) == []
    assert axe(board.page) == []
    assert axe(desk.page) == []
    assert fits(desk.page) == []
    said = json.dumps(hall.state(talk)["board"])
    assert "split" not in said
    assert "bridge" not in said
    desk.press("Hide it")
    assert waited(lambda: board.page.locator(".head circle").count(), 0) == 0


@pytest.mark.usefixtures("calm")
def test_a_look_taken_back_is_there_to_be_had_again(hall, open_desk, open_board):
    talk = hall.begin("Pictures")
    desk, board = open_desk(talk), open_board(talk)
    desk.next("image dice: 4 3")
    assert waited(dots(board), 7) == 7
    assert waited(dots(board), 0) == 0
    desk.press("One more look")
    assert waited(dots(board), 7) == 7
    desk.page.locator("#undo").click()
    assert waited(dots(board), 0) == 0
    once_more = desk.page.get_by_role("button", name="One more look")
    assert waited(once_more.count, 1) == 1


@pytest.mark.usefixtures("calm")
def test_every_way_of_a_picture_costs_two_taps_and_is_circled(hall, open_desk, open_board):
    talk = hall.begin("Pictures")
    desk, board = open_desk(talk), open_board(talk)
    desk.next("image dice: 4 3")
    desk.next("image frame 20: 8 6")
    chips = hall.state(talk)["chips"]
    assert len(chips) > 5
    for place, chip in enumerate(chips[:4]):
        assert chip["scene"]
        assert chip["picture"] == "dots"
        more = " …" if len(chip["lines"]) > LINES else ""
        *lines, last = chip["lines"][:LINES]
        desk.tap("Elif", *lines, last + more)
        assert waited(lambda: len(hall.state(talk)["ways"]), place + 1) == place + 1
    tiles = hall.state(talk)["board"]["tiles"]
    assert [tile["picture"] for tile in tiles] == ["dots"] * 4
    assert waited(lambda: bool(board.page.evaluate(GROUPS)), True)
    assert all(one["dots"] == 14 for one in board.page.evaluate(GROUPS))
    desk.page.locator('#strip [data-key="connect"]').click()
    board.page.wait_for_selector(".connect")
    assert "Ten frame" in board.page.locator("#main").inner_text()
    assert "8 6" not in board.text()
    assert faults(board) == []


@pytest.mark.usefixtures("calm")
def test_the_one_screen_can_look_again(hall, open_page, axe):
    talk = hall.begin("Pictures")
    hall.teacher.get(talk.desk_path)
    one = hall.page(open_page, f"/one/{talk.one}", viewport={"width": 1920, "height": 1080})
    one.get_by_role("button", name="Next", exact=True).click()
    one.wait_for_selector(".stage circle")
    one.wait_for_selector(".asked")
    assert one.evaluate(DOTS) == 0
    one.get_by_role("button", name="One more look").click()
    one.wait_for_selector(".stage circle")
    one.wait_for_selector(".asked")
    one.get_by_role("button", name="Show it to stay").click()
    one.wait_for_selector(".stage circle")
    assert axe(one) == []
