"""Look back: a talk as it stood at each step, its chart, and going on with it."""

import io
import re
from typing import get_args

import pikepdf
import pytest
from django.utils import translation

from tests.site.made import answer, child_id, problem_id, sent, way
from waysaid.drawing import Frame, Picture, Telling, draw, scene_json
from waysaid.number import parse
from waysaid.site import look_back
from waysaid.site.look_back import scene_of
from waysaid.site.models import EventRow, Talk
from waysaid.site.record import at_hand, forget_all
from waysaid.talk import Body
from waysaid.ways import ways


@pytest.fixture
def told(cast):
    """A talk: Elif gave an answer, Bram told a way, something was drawn by hand, and noticed."""
    problem, bram = problem_id(cast.talk), child_id(cast.school_class)
    elif_ = child_id(cast.school_class, "Elif")
    events = [
        answer(problem, "56", 1, child=elif_),
        way(problem, bram, 2, picture="number-line"),
        {"sequence": 3, "kind": "way-agreed", "way": "way-2", "child": elif_},
        {"sequence": 4, "kind": "strokes-drawn", "id": "s", "problem": problem,
         "strokes": [[10, 10, 20, 30]]},
        {"sequence": 5, "kind": "phase-set", "phase": "connect"},
        {"sequence": 6, "kind": "noticed", "id": "n", "child": bram, "words": "one <less>",
         "marks": [], "join": False},
        {"sequence": 7, "kind": "closed"},
    ]  # fmt: skip
    path = f"/talks/{cast.talk.pk}/events"
    saved = cast.owner.post(path, sent(*events), content_type="application/json")
    assert saved.status_code == 200, saved.text
    return cast


def back(cast, step=""):
    return cast.owner.get(f"/talks/{cast.talk.pk}/back?step={step}").text


def board(cast, step=""):
    page = back(cast, step)
    return page[page.index('class="then"') : page.index('class="stepper')]


def test_each_step_shows_the_board_of_that_moment_and_nothing_later(told):
    assert "56" not in board(told, 2)
    assert "56" in board(told, 4)
    assert "Bram" not in board(told, 3)
    assert "Bram" in board(told, 4)
    assert "Elif" not in board(told, 4)
    assert "Elif" in board(told, 5)
    assert "by-hand" in board(told, 6)
    assert "less" not in board(told, 7)
    assert "one &lt;less&gt;" in board(told, 8)
    assert "Thank you" in board(told, 9)


def test_the_drawing_is_the_boards_own(told):
    assert "<svg" in board(told, 4)
    assert ">+26</text>" in board(told, 4).replace(" ", "")


def test_a_step_that_is_not_there_shows_the_last(told):
    assert board(told, 999) == board(told) == board(told, "x") == board(told, 9)


def test_the_whole_talk_is_there_at_any_step(told):
    page = back(told, 1)
    whole = page[page.index('class="whole-talk"') :]
    assert "39 + 27 = 56, 66" in whole
    assert "Bram" in whole
    assert "and Elif" in whole
    assert whole.count("<svg") == 1
    assert "one &lt;less&gt;" in whole


def test_steps_are_said_with_names(told):
    page = back(told)
    assert "Elif answered 56 to 39 + 27" in page
    assert "Bram told a way of 39 + 27" in page
    assert "Step 9 of 9" in page
    assert "The board turned to: connect" in page


@pytest.mark.parametrize("kind", [re.sub(r"(?<=[a-z])(?=[A-Z])", "-", each.__name__).lower()
                                  for each in get_args(Body)])  # fmt: skip
def test_every_kind_of_event_has_a_sentence_of_its_own_in_each_language(kind):
    with translation.override("en"):
        english = look_back.said_of(kind)
    with translation.override("es"):
        spanish = look_back.said_of(kind)
    assert english
    assert spanish
    assert english != spanish


def test_a_scene_comes_back_whole_from_its_json():
    problem = parse("39 + 27")
    for found in ways(problem)[:12]:
        for picture in Picture:
            scene = draw(picture, Telling(problem, found.steps), Frame(600, 290))
            assert scene_of(scene_json(scene)) == scene


@pytest.mark.parametrize(
    ("size", "wide"), [("a4", 595), ("letter", 612), ("poster", 1684), ("x", 595)]
)
def test_the_chart_is_a_pdf_on_the_paper_asked_for(told, size, wide):
    answer_ = told.owner.get(f"/talks/{told.talk.pk}/chart.pdf?size={size}")
    assert answer_.headers["Content-Type"] == "application/pdf"
    with pikepdf.open(io.BytesIO(answer_.content)) as pdf:
        assert abs(float(pdf.pages[0].mediabox[2]) - wide) < 2


def test_the_chart_has_names_only_when_they_are_wanted(told):
    path = f"/talks/{told.talk.pk}/chart.pdf?size=a4"
    assert told.owner.get(f"{path}&names=on").content != told.owner.get(path).content


def test_a_talk_that_is_over_is_opened_again_once(told):
    path = f"/talks/{told.talk.pk}/resume"
    assert told.owner.post(path).headers["Location"] == f"/talks/{told.talk.pk}/desk"
    told.owner.post(path)
    assert at_hand(told.talk.pk).state.closed is False
    assert EventRow.objects.filter(kind="resumed").count() == 1
    told.talk.refresh_from_db()
    assert told.talk.closed_at is None


def test_a_talk_is_deleted_for_good(told):
    assert "Delete" in told.owner.get(f"/talks/{told.talk.pk}/forget").text
    told.owner.post(f"/talks/{told.talk.pk}/forget")
    assert not EventRow.objects.exists()
    assert told.owner.get(f"/talks/{told.talk.pk}/back").status_code == 404


def test_the_list_has_the_problems_and_how_many_ways(told):
    page = told.owner.get("/talks/").text
    assert "39 + 27" in page
    assert "1 way" in page


def test_a_restart_changes_nothing_of_it(told):
    before = board(told, 5)
    forget_all()
    assert board(told, 5) == before


@pytest.mark.parametrize("path", ["back", "chart.pdf", "forget"])
def test_a_colleague_sees_nothing_of_it(told, path):
    assert told.colleague.get(f"/talks/{told.talk.pk}/{path}").status_code == 404


def test_a_colleague_can_neither_open_nor_delete_it(told):
    assert told.colleague.post(f"/talks/{told.talk.pk}/resume").status_code == 404
    assert told.colleague.post(f"/talks/{told.talk.pk}/forget").status_code == 404
    assert Talk.objects.filter(pk=told.talk.pk).exists()


def test_the_state_of_a_step_is_what_a_board_gets_and_no_more(told):
    path = f"/talks/{told.talk.pk}/back/state.json?step=4&wide=1333"
    given = told.owner.get(path).json()
    assert given["phase"] == "ways"
    assert [tile["name"] for tile in given["tiles"]] == ["Bram"]
    assert "family" not in str(given)
    assert told.colleague.get(path).status_code == 404
    assert told.outsider.get(path).status_code == 403
