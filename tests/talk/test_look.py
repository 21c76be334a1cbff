"""A quick image is in sight for its seconds, once more if asked, and to stay if it is to."""

import json

import pytest

from waysaid.drawing import Picture
from waysaid.hearing import Part
from waysaid.number import parse_equation
from waysaid.talk import Phase, PlannedProblem, Record, SaidStep, Wall, board_view, fold
from waysaid.talk import event as happened
from waysaid.ways import Kind

OPENED = happened.TalkOpened(
    "Today",
    "en",
    "es",
    (PlannedProblem("p1", "image dice: 4 3"), PlannedProblem("p2", "4 + 3")),
    image_seconds=2,
)
SHOWN = happened.ProblemShown("p1")
START = 1_000_000


def state(*bodies, second=1000):
    """Fold the bodies, one every so many milliseconds from START on."""
    opened = Record(1, "server", 0, OPENED, START - second)
    rest = [Record(2 + at, "desk", at, body, START + at * second) for at, body in enumerate(bodies)]
    return fold([opened, *rest])


def board(folded, now):
    return board_view(folded, Wall(), 1778, now)


def dots(folded, now):
    image = board(folded, now)["image"]
    return 0 if image["scene"] is None else sum(s["t"] == "dot" for s in image["scene"]["shapes"])


def test_a_picture_is_in_sight_for_its_seconds_and_then_its_dots_leave_the_board():
    shown = state(SHOWN)
    assert dots(shown, START) == 7
    assert board(shown, START)["image"]["left"] == 2000
    assert dots(shown, START + 1999) == 7
    assert dots(shown, START + 2000) == 0
    assert board(shown, START + 2000)["image"] == {"scene": None, "left": 0}


def test_without_a_clock_nothing_is_in_sight():
    assert board_view(state(SHOWN), Wall(), 1778)["image"] == {"scene": None, "left": 0}


@pytest.mark.parametrize("phase", list(Phase))
def test_while_it_is_hidden_nothing_on_the_board_tells_how_many_dots_there_are(phase):
    hidden = state(SHOWN, happened.PhaseSet(phase))
    said = json.dumps({**board(hidden, START + 60_000), "layout": 0, "order": 0, "connect": 0})
    assert "dot" not in said.replace("dados", "")
    assert "4" not in said
    assert "7" not in said
    assert "image" not in said.replace('"image"', "")
    connect = json.dumps(board(hidden, START + 60_000)["connect"])
    assert "image" not in connect
    assert "Puntos de dados" in connect or phase is not Phase.CONNECT


def test_one_more_look_is_as_long_as_the_first_and_there_is_one_alone():
    again = state(SHOWN, happened.PhaseSet(Phase.THINK), *[happened.LookedAgain("p1")] * 4)
    looked = START + 2000
    assert dots(again, looked + 1999) == 7
    assert dots(again, looked + 2000) == 0
    assert again.looked_again == ("p1",)


def test_a_look_taken_back_can_be_had_again():
    undo = happened.Undo(happened.EventId("desk", 1))
    back = state(SHOWN, happened.LookedAgain("p1"), undo)
    assert back.looked_again == ()
    assert dots(back, START + 5000) == 0
    anew = state(SHOWN, happened.LookedAgain("p1"), undo, happened.LookedAgain("p1"))
    assert dots(anew, START + 4000) == 7


def test_the_teacher_may_let_it_stay_and_hide_it_again():
    kept = state(SHOWN, happened.PhaseSet(Phase.WAYS), happened.ImageKept("p1", on=True))
    assert dots(kept, START + 10**9) == 7
    assert board(kept, START + 10**9)["image"]["left"] is None
    away = state(SHOWN, happened.ImageKept("p1", on=True), happened.ImageKept("p1", on=False))
    assert dots(away, START + 2100) == 0


def test_going_back_to_a_picture_shows_it_to_nobody_again():
    back = state(SHOWN, happened.ProblemShown("p2"), SHOWN)
    assert dots(back, START + 2001) == 0
    assert board(state(SHOWN, happened.ProblemShown("p2")), START + 1500)["image"] is None


@pytest.mark.parametrize("over", [happened.Paused(), happened.Closed()])
def test_nothing_is_in_sight_while_the_talk_rests_or_is_over(over):
    assert dots(state(SHOWN, over), START + 1001) == 0


def test_a_look_at_something_else_changes_nothing():
    shown = state(SHOWN, happened.LookedAgain("p2"), happened.ImageKept("nobody", on=True))
    assert (shown.looked_again, shown.kept) == ((), ())


def way(line, picture=Picture.DOTS, unsaid=()):
    step = SaidStep(Kind.JOIN, parse_equation(line), unsaid)
    return happened.WayShared("w1", "p1", "c1", steps=(step,), picture=picture)


def test_a_way_stands_on_the_board_as_the_groups_that_were_seen():
    tile = board(state(SHOWN, way("4 + 3 = 7")), START + 9000)["tiles"][0]
    assert tile["picture"] == "dots"
    kinds = [shape["t"] for shape in tile["scene"]["shapes"]]
    assert (kinds.count("dot"), kinds.count("path")) == (7, 2)
    wrong = board(state(SHOWN, way("4 + 3 = 8")), START + 9000)["tiles"][0]
    assert [s for s in wrong["scene"]["shapes"] if s["t"] != "label"] == [
        s for s in tile["scene"]["shapes"] if s["t"] != "label"
    ]


def test_what_nobody_said_of_a_way_stays_off_its_picture():
    shared = way("4 + 3 = 7", unsaid=(Part.RESULT,))
    tile = board(state(SHOWN, shared), START + 9000)["tiles"][0]
    labels = [shape["text"] for shape in tile["scene"]["shapes"] if shape["t"] == "label"]
    assert labels == ["4 + 3"]
