"""A whole talk of five problems, played on the desk while the class's screens are open.

Sixteen ways are told: by tap, in shorthand, in free words, agreed with, added to, changed, some of
them wrong. After each step the board says exactly what is written here, and breaks no promise.
"""

import pytest

from tests.talks.hall import SCREEN, TABLET
from tests.talks.screens import PROBLEM, WAY, faults, fits, waited

pytestmark = pytest.mark.browser

PROJECTOR = {"width": 1024, "height": 768}
PANEL = {"width": 2560, "height": 1080}
WALL = {
    "norms": [
        "We give everyone time to think.",
        "We listen to each other.",
        "There is more than one way.",
    ],
    "signals": ["still thinking", "I have a way", "I agree", "another way"],
}
SIGNALS = {"signals": WALL["signals"]}
STARTERS = ["I noticed …", "I did it another way: …", "I agree, because …"]


class Show:
    """The desk, the board that is read, and more boards of other shapes beside it."""

    def __init__(self, desk, boards, title):
        self.title = [title]
        self.desk, self.board, self.boards = desk, boards[0], boards
        self.side = []

    def expect(self, view, **says):
        """Wait until the board says this, then look at every board for broken promises."""
        if view in ("think", "answers", "ways"):
            says |= {"side": self.side, "now": self.side[-1:], "problem": self.side[-1:]}
        self.board.expect(view=view, **says)
        for board in self.boards:
            assert waited(lambda board=board: faults(board), []) == [], board.page.viewport_size
        assert waited(lambda: fits(self.desk.page), []) == []
        self.sizes(view)

    def sizes(self, view):
        """Look at the promised heights of the problem and the ways."""
        for board in self.boards if view in ("think", "answers", "ways") else ():
            texts = board.texts()
            problem = [each["size"] for each in texts if "problem" in each["part"].split()]
            assert max(problem) >= PROBLEM
            told = [each for each in texts if each["part"] in ("lines", "said")]
            assert [each for each in told if each["size"] < WAY - 0.01] == []

    def next(self, problem, *, before=None):
        """Go on to a problem; the one before stays at the side with what was heard."""
        if before:
            self.side[-1] = before
        self.desk.next(problem)
        self.side.append(problem)
        self.expect("think", **SIGNALS)


def way(says, *tags):
    return {"tags": list(tags) or ["·"], "says": list(says)}


AROHA = ("19 | 20 | 25 | +1 | +5",)
BRAM = ("9 | 15 | +6 | +10",)
KNOWN = way(["“I just know it is 24”"])
VIGDIS = way(["6 + 19 = 24"], "Vigdis")


def first_problem(show):
    desk = show.desk
    show.expect("before", title=show.title, **WALL)
    show.next("19 + 6")
    desk.answer("25")
    desk.answer("42")
    desk.phase("answers")
    heard = {"lead": ["Answers we have:"], **SIGNALS}
    show.expect("answers", answers=["25", "42"], **heard)
    desk.press("Undo")
    desk.press("Undo")
    show.expect("think", **SIGNALS)
    desk.tap("Aroha", "19 + 1 = 20", "20 + 5 = 25")
    show.expect("ways", ways=[way(AROHA, "Aroha")])
    desk.speaker("Bram")
    desk.line("9+6=15+10")
    desk.line("I just know it is 24")
    desk.line("Vig, 6+19=24", "as equations")
    show.expect("ways", ways=[way(AROHA, "Aroha"), way(BRAM, "Bram"), KNOWN, VIGDIS])
    desk.speaker("Hana")
    desk.relate("same")
    show.expect("ways", ways=[way(AROHA, "Aroha", "Hana"), way(BRAM, "Bram"), KNOWN, VIGDIS])
    desk.speaker("Wren")
    desk.relate("adds")
    desk.line("and I like tens best")
    added = way(["“and I like tens best”"], "Wren", "adds to", "Aroha")
    folded = ["Show the way of Aroha", "Show the way of Bram"]
    show.expect("ways", ways=[KNOWN, VIGDIS, added], folded=folded)
    show.board.page.locator(".folded").first.click()
    back = [way(AROHA, "Aroha", "Hana"), VIGDIS, added]
    folded = ["Show the way of Bram", "Show the way of no name"]
    show.expect("ways", ways=back, folded=folded)


IMANI = way(["30 + 20", "9 + 7", "50 + 6"], "Imani")
NOOR = way(["39 | 40 | 66 | +1 | +26"], "Noor")


def second_problem(show):
    desk = show.desk
    show.next("39 + 27", before="19 + 6 = 25, 24")
    desk.press("Turn and talk")
    show.expect("think", talking=["turn and talk"], starters=STARTERS, **SIGNALS)
    desk.press("Turn and talk")
    show.expect("think", **SIGNALS)
    desk.tap("Noor", "39 + 1 = 40", "40 + 26 = 66")
    desk.speaker("Imani")
    desk.line("30+20 9+7 50+6", "as equations")
    show.expect("ways", ways=[NOOR, IMANI])
    desk.tap("Goran", "40 + 27 = 67", "67 − 1 = 66")
    desk.speaker("Noor")
    desk.relate("changes")
    desk.line("39+20=59 59+7=66", "as equations")
    goran = way(["40 | 66 | 67 | +27 | −1"], "Goran")
    anew = way(["39 + 20 = 59", "59 + 7 = 66"], "Noor", "a new way")
    show.expect("ways", ways=[IMANI, goran, anew], folded=["Show the way of Noor"])


UMA = way(["60 − 20 = 40", "5 − 2 = 3", "40 + 3 = 43"], "Uma")
YUSUF = way(["25 | 30 | 60 | 62 | +5 | +30 | +2"], "Yusuf")
TARIQ = way(["62 = 50 + 12", "12 − 5 = 7", "50 − 20 = 30", "30 + 7 = 37"], "Tariq")
STEPS_BACK = "37 | 38 | 39 | 40 | 41 | 42 | 52 | 62 | −10 | −10 | −1 | −1 | −1 | −1 | −1"


def third_problem(show):
    desk = show.desk
    show.next("62 − 25", before="39 + 27 = 66")
    desk.answer("37")
    desk.phase("answers")
    show.expect("answers", answers=["37"], lead=["Answers we have:"], **SIGNALS)
    desk.press("Pause")
    show.expect("paused", title=["We pause here."], lead=["We go on another time."])
    desk.press("Go on")
    desk.tap("Tariq", "62 = 50 + 12", "12 − 5 = 7", "50 − 20 = 30 …")
    desk.speaker("Uma")
    desk.line("60-20=40 5-2=3 40+3=43", "as equations")
    desk.speaker("Yusuf")
    desk.line("25+5=30+30=60+2=62")
    show.expect("ways", ways=[TARIQ, UMA, YUSUF])
    desk.tap("Bao", "62 − 10 = 52", "52 − 10 = 42", "42 − 1 = 41 …")
    told = [UMA, YUSUF, way([STEPS_BACK], "Bao")]
    show.expect("ways", ways=told, folded=["Show the way of Tariq"])
    desk.speaker("Rangi")
    desk.page.locator('[data-key="pass"]').click()
    desk.page.locator("#names .unseen", has_text="passed").wait_for(state="attached")
    show.expect("ways", ways=told, folded=["Show the way of Tariq"])


def last_problems(show):
    desk = show.desk
    show.next("62 − 27", before="62 − 25 = 37, 43")
    desk.tap("Cata B.", "62 − 30 = 32", "32 + 3 = 35")
    desk.line("Cata M., 62-20=42 42-7=36")
    ways = [
        way(["32 | 35 | 62 | −30 | +3"], "Cata B."),
        way(["36 | 42 | 62 | −20 | −7"], "Cata M."),
    ]
    show.expect("ways", ways=ways)
    show.next("148 + 37", before="62 − 27 = 35, 36")
    desk.tap("Zofia", "37 + 3 = 40", "40 + 145 = 185")
    show.expect("ways", ways=[way(["37 | 40 | 185 | +3 | +145"], "Zofia")])
    desk.page.locator(".seen-way").click()
    desk.page.locator(".seen select").select_option("number-bond")
    show.expect("ways", ways=[way(["148 | 3 | 145 | + | 37 | = | 185"], "Zofia")])


def string(third="37, 43"):
    rows = ("19 + 6 = 25, 24", "39 + 27 = 66", f"62 − 25 = {third}", "62 − 27 = 35, 36",
            "148 + 37 = 185")  # fmt: skip
    parts = (row.replace(", ", ",").split() for row in rows)
    return [" | ".join(part.replace(",", ", ") for row in parts for part in row)]


TOLD = [
    ["Aroha", "“both take from 62”"],
    ["Odd", "“all the answers are odd”"],
    ["María José", "“39 is one before 40”"],
]


def connecting(show):
    desk = show.desk
    desk.press("Connect")
    asked = {"lead": ["What do you notice?"]}
    show.expect("connect", string=string(), **asked)
    desk.page.locator('[data-key="settle-p3-37"]').click()
    asked["string"] = string("37")
    show.expect("connect", **asked)
    desk.notice("Aroha", "both take from 62", ("p3", 0), ("p4", 0))
    show.expect("connect", noticings=TOLD[:1], **asked)
    desk.notice("Odd", "all the answers are odd")
    desk.notice("María José", "39 is one before 40", ("p2", 0))
    show.expect("connect", noticings=TOLD, **asked)
    desk.tab("what-if")
    desk.mark("p1", 0)
    desk.mark("p2", 0)
    desk.page.locator('input[name="amount"]').fill("10")
    desk.speaker("Saoirse")
    desk.press("Try it on the board")
    supposed = ["29 + 6", "49 + 27", "62 − 25", "62 − 27", "148 + 37"]
    waited(lambda: show.board.says().get("what_if"), supposed)
    said = show.board.says()
    assert said["what_if"] == supposed
    kept = len(said.get("noticings", ())) + len(said["folded"])
    assert (said["string"], kept) == (asked["string"], len(TOLD))
    field = desk.page.locator('[data-key="what-if-p1"]')
    field.fill("35")
    field.press("Enter")
    supposed[0] = "29 + 6 = 35"
    assert waited(lambda: show.board.says()["what_if"], supposed) == supposed
    for board in show.boards:
        assert waited(lambda board=board: faults(board), []) == []


@pytest.mark.usefixtures("calm")
@pytest.mark.parametrize(
    ("desk_size", "board_sizes"),
    [(TABLET, [SCREEN]), (SCREEN, [TABLET, PROJECTOR, PANEL])],
    ids=["tablet-and-screen", "screen-and-three-boards"],
)
def test_a_whole_talk_stands_on_the_board_as_it_was_said(
    hall, open_desk, open_board, desk_size, board_sizes
):
    talk = hall.begin("Over a ten")
    desk = open_desk(talk, desk_size)
    boards = [open_board(talk, size) for size in board_sizes]
    show = Show(desk, boards, hall.state(talk)["board"]["title"])
    first_problem(show)
    second_problem(show)
    third_problem(show)
    last_problems(show)
    connecting(show)
    desk.press("Say thank you")
    show.expect("after", title=["Thank you."], lead=show.title)
    state = hall.state(talk)
    assert len(state["ways"]) == 16
    assert len(state["noticings"]) == 3
    assert [len([w for w in state["ways"] if w["problem"] == f"p{n}"]) for n in range(1, 6)] == [
        5, 4, 4, 2, 1,
    ]  # fmt: skip
    desk.press("End the talk")
    show.expect("after", title=["Thank you."], lead=show.title)
