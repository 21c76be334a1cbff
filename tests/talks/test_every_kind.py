"""One problem of every kind goes through a talk: typed, shown, answered, told, connected, kept.

After each step the board breaks no promise and the desk fits its screen; what was told reaches the
board, and nothing the desk knows besides.
"""

import re

import pytest

from tests.talks.hall import SCREEN, TABLET
from tests.talks.screens import faults, fits, waited

pytestmark = pytest.mark.browser

PROJECTOR = {"width": 1024, "height": 768}

KINDS = [
    # problem, as it stands on the desk, a line, an answer (None where a tap says it), on the board
    ("14 x 6", "14 × 6", "10x6 4x6 60+24", "84", ["10 × 6", "4 × 6", "60 + 24"]),
    ("16 / 3", "16 ÷ 3", "3x5=15 5 r 1", "5 r 1", ["3 × 5 = 15", "→ 5 r 1"]),
    ("_ x 6 = 54", "▢ × 6 = 54", "9x6=54", "9", ["9 × 6 = 54"]),
    ("8 + 4 = _ + 5", "8 + 4 = ▢ + 5", "8+4=12-5=7", "7", ["8 + 4 = 12", "12 − 5 = 7"]),
    (
        "29 + 14 = 30 + 13 ?",
        "29 + 14 = 30 + 13 ?",
        "29+14=43 30+13=43 true",
        "true",
        ["29 + 14 = 43", "30 + 13 = 43", "→ true"],
    ),
    ("3/4 ? 5/8", "3/4 ? 5/8", "3/4=6/8 >", ">", ["3/4 = 6/8", "→ >"]),
    ("3/4 + 5/8", "3/4 + 5/8", "6/8+5/8=11/8", "11/8", ["6/8 + 5/8 = 11/8"]),
    (
        "3.8 + 0.45",
        "3.8 + 0.45",
        "3.8+0.2=4+0.25=4.25",
        "4.25",
        ["3.8 + 0.2 = 4", "4 + 0.25 = 4.25"],
    ),
    ("15% of 80", "15% of 80", "10%=8 5%=4 8+4=12", "12", None),
    ("about 398 x 21", "about 398 × 21", "400x20=8000", "8000", ["400 × 20 = 8000"]),
    ("5 - 8", "5 − 8", "5-5=0-3=-3", "-3", ["5 − 5 = 0", "0 − 3 = −3"]),
]


@pytest.fixture
def rooms(hall, open_desk, open_board):
    """A talk without a plan, with its desk and two boards."""
    hall.teacher.get("/")
    started = hall.teacher.send_form("/talks/start", problem="39 + 27")
    talk = started.headers["Location"].split("/")[2]
    known = hall.teacher.get(f"/talks/{talk}/desk.json").json()
    path = f"/board/{known['board_token']}"
    boards = [open_board(None, size, path) for size in (SCREEN, PROJECTOR)]
    desk = open_desk(_At(f"/talks/{talk}/desk"), TABLET)
    return desk, boards, int(talk)


class _At:
    def __init__(self, path):
        self.desk_path = path


def looked_over(desk, boards):
    for board in boards:
        assert waited(lambda board=board: faults(board), []) == [], board.page.viewport_size
    assert waited(lambda: fits(desk.page), []) == []


def told_on(board):
    """Count the ways on a board; a long way may fold the one before it to its name."""
    says = board.says()
    return len(says.get("ways", [])) + len(says.get("folded", []))


def added(desk, typed, shown):
    """Type a problem of the teacher's own; the line under the field says it was understood."""
    desk.press("Add a problem")
    field = desk.page.locator("#add-problem input")
    field.fill(typed)
    said = desk.page.locator("#problem-understood")
    begins = re.compile(f"^{re.escape(shown)}: ")
    assert waited(lambda: bool(begins.match(said.inner_text())), True), said.inner_text()
    desk.press("Show it now")
    now = re.compile(f"^{re.escape(shown)}$")
    desk.page.locator("#strip .now", has_text=now).wait_for()


@pytest.mark.parametrize("kinds", [KINDS[:3], KINDS[3:6], KINDS[6:9], KINDS[9:]])
def test_a_problem_of_every_kind_goes_through_a_talk(rooms, hall, calm, kinds):
    desk, boards, talk = rooms
    board = boards[0]
    for typed, shown, line, answer, steps in kinds:
        added(desk, typed, shown)
        assert waited(lambda: board.says().get("view"), "think") == "think"
        assert waited(lambda shown=shown: board.says().get("problem"), [shown]) == [shown]
        looked_over(desk, boards)
        chips = desk.chips()
        assert chips, typed
        desk.speaker("Noor")
        desk.line(line, "as equations")
        assert waited(lambda: board.says().get("view"), "ways") == "ways"
        told = [one["says"] for one in board.says()["ways"]]
        assert steps is None or told == [steps], typed
        looked_over(desk, boards)
        desk.speaker("Aroha")
        desk.page.locator("#chips .chip").first.click()
        assert waited(lambda: told_on(board), 2) == 2, typed
        looked_over(desk, boards)
        desk.phase("answers")
        assert answer in waited(lambda: board.says().get("answers"), [answer]), typed
        looked_over(desk, boards)
    desk.press("Connect")
    assert waited(lambda: board.says().get("view"), "connect") == "connect"
    looked_over(desk, boards)
    assert desk.saved()
    back = hall.teacher.get(f"/talks/{talk}/back")
    assert back.status == 200
    for step in range(0, 60, 7):
        assert hall.teacher.get(f"/talks/{talk}/back/board?step={step}").status == 200
    chart = desk.page.request.get(f"{hall.origin}/talks/{talk}/chart.pdf")
    assert (chart.status, chart.headers["content-type"]) == (200, "application/pdf")


def test_few_answers_are_large_taps(rooms, calm):
    desk, boards, _ = rooms
    added(desk, "0.65 ? 0.7", "0.65 ? 0.7")
    taps = desk.page.locator("#answers button")
    wanted = ["0.65 < 0.7", "0.65 = 0.7", "0.65 > 0.7"]
    assert waited(taps.all_inner_texts, wanted) == wanted
    taps.nth(2).click()
    desk.phase("answers")
    assert waited(lambda: boards[0].says().get("answers"), [">"]) == [">"]
    added(desk, "29 + 14 = 30 + 14 ?", "29 + 14 = 30 + 14 ?")
    assert waited(taps.all_inner_texts, ["true", "false"]) == ["true", "false"]
    assert all(box["height"] >= 32 for box in (tap.bounding_box() for tap in taps.all()))
    taps.nth(0).click()
    desk.phase("answers")
    assert waited(lambda: boards[0].says().get("answers"), ["true"]) == ["true"]


def test_an_estimate_has_a_range_for_the_teacher_and_no_right_answer(rooms, calm):
    desk, boards, _ = rooms
    added(desk, "about 398 x 21", "about 398 × 21")
    private = desk.page.locator("#private")
    assert waited(lambda: "from 8000 to 8400" in private.inner_text(), True)
    desk.answer("12000")
    desk.line("400x30=12000", "as equations")
    assert waited(lambda: len(boards[0].says().get("ways", [])), 1) == 1
    assert desk.page.locator("#seen .flag").count() == 0
    assert "8400" not in boards[0].text()


def test_a_number_in_any_form_is_one_place_on_the_string(rooms, calm):
    desk, _, _ = rooms
    added(desk, "1 1/4 ? 0.65", "1 1/4 ? 0.65")
    desk.answer(">")
    added(desk, "15% of 80", "15% of 80")
    desk.press("Connect")
    row = desk.page.locator("#connecting li", has_text="0.65").first
    wanted = ["•", "1 1/4", "0.65", ">"]
    assert waited(row.locator("button.spot").all_inner_texts, wanted) == wanted
    last = desk.page.locator("#connecting li", has_text="15%").first
    assert waited(last.locator("button.spot").all_inner_texts, ["•", "15%", "80"])[1:] == [
        "15%",
        "80",
    ]


def test_a_long_list_of_problems_leaves_every_folded_name_in_sight(rooms, calm):
    desk, boards, _ = rooms
    for typed, shown, *_rest in KINDS:
        added(desk, typed, shown)
    for place, name in enumerate(("Noor", "Aroha", "Bram", "Tariq", "Imani")):
        desk.speaker(name)
        desk.page.locator("#chips .chip").nth(place % 2).click()
        assert waited(lambda place=place: told_on(boards[0]), place + 1) == place + 1
    assert boards[0].says().get("folded")
    assert len(boards[0].says()["side"]) <= len(KINDS)
    for board in boards:
        assert waited(lambda board=board: faults(board), []) == [], board.page.viewport_size


LONG = [
    ("123456 + 234567 + 87 - 12345", "123456 + 234567 + 87 − 12345"),
    ("29 + 14 = 30 + 13 ?", "29 + 14 = 30 + 13 ?"),
]


def test_long_problems_are_whole_while_connecting(rooms, calm):
    desk, boards, _ = rooms
    for typed, shown in LONG:
        added(desk, typed, shown)
        desk.saved()
    desk.press("Connect")
    desk.tab("what-if")
    desk.page.locator(".spot").nth(1).click()
    desk.press("Try it on the board")
    changed = ["40 + 27", *(shown for _, shown in LONG)]
    for board in boards:
        assert waited(lambda board=board: board.says().get("what_if"), changed) == changed
        whole = board.says()["string"][0].replace(" | ", " ")
        assert all(shown in whole for _, shown in LONG)
        assert waited(lambda board=board: faults(board), []) == [], board.page.viewport_size
    desk.page.locator("#strip .stop").first.click()
    for board in boards:
        assert waited(lambda board=board: board.says().get("now"), ["39 + 27"]) == ["39 + 27"]
        assert waited(lambda board=board: faults(board), []) == [], board.page.viewport_size


def test_with_many_ways_told_the_next_is_put_on_the_board_without_scrolling(rooms, open_desk):
    _, boards, talk = rooms
    desk = open_desk(_At(f"/talks/{talk}/desk"), {"width": 1366, "height": 768})
    for child in ("Aroha", "Bram", "Chidi", "Dunya", "Elif", "Fenna", "Goran"):
        desk.line(f"{child}, 30+20=50 9+7=16 50+16=66", "as equations")
    desk.speaker("Hana")
    desk.page.locator("#line input").fill("39+20=59 59+7=66")
    desk.page.locator("#preview p").first.wait_for()
    same = desk.page.locator('#relate [data-key^="same-"]')
    newest = ["Dunya", "Elif", "Fenna", "Goran"]
    assert waited(same.all_inner_texts, newest) == newest
    assert fits(desk.page) == []
    desk.page.locator('[data-key="earlier-ways"]').click()
    assert waited(same.count, 7) == 7
    same.first.click()
    assert waited(lambda: boards[0].says()["folded"][:1], []) != []
