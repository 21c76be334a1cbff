"""A line that a desk sends unread is read on the server, as one of the one screen is."""

import pytest

from tests.site.made import child_id, problem_id, sent, way
from waysaid.site.record import at_hand


def unread(cast, line, **changed):
    usual = {"sequence": 0, "kind": "way-shared", "id": "w", "problem": problem_id(cast.talk)}
    told = {"child": child_id(cast.school_class), "line": line, "words": line, "steps": []}
    return {**usual, **told, "picture": None, "foreseen": False, **changed}


def post(cast, *events):
    path = f"/talks/{cast.talk.pk}/events"
    return cast.owner.post(path, sent(*events), content_type="application/json")


def told(cast):
    return at_hand(cast.talk.pk).state.ways[0]


def test_a_line_sent_unread_is_read_and_drawn_as_a_read_one_is(cast):
    assert post(cast, unread(cast, "39+1=40 40+26=66")).status_code == 200
    way = told(cast)
    assert len(way.steps) == 2
    assert (way.words, way.answer, way.family) == ("39+1=40 40+26=66", "66", "bridge")
    assert way.picture == "number-line"


def test_the_picture_asked_for_is_kept(cast):
    post(cast, unread(cast, "39+1=40 40+26=66", picture="equations"))
    assert told(cast).picture == "equations"


def test_free_words_sent_unread_stay_words(cast):
    post(cast, unread(cast, "I just saw it"))
    assert (told(cast).steps, told(cast).picture) == ((), "words")


def test_a_line_for_a_problem_added_in_the_same_delivery_is_read(cast):
    added = {"sequence": 0, "kind": "problem-added", "problem": "new", "text": "8 + 5"}
    line = unread(cast, "8+2=10 10+3=13", sequence=1, problem="new")
    assert post(cast, added, line).status_code == 200
    assert len(told(cast).steps) == 2


def test_a_way_written_anew_while_out_of_touch_is_read(cast):
    anew = {"sequence": 1, "kind": "way-edited", "way": "w", "line": "40+27=67 67-1=66"}
    body = {"words": "", "steps": [], "picture": None}
    assert post(cast, unread(cast, "about sixty"), {**anew, **body}).status_code == 200
    assert [step.equation.right for step in told(cast).steps] == [67, 66]


@pytest.mark.parametrize("kind", ["way-shared", "way-edited"])
def test_a_line_for_what_nobody_knows_is_refused(cast, kind):
    event = unread(cast, "39+1", problem="other")
    if kind == "way-edited":
        event = {"sequence": 0, "kind": kind, "way": "x", "line": "39+1"}
    assert post(cast, event).status_code == 400


@pytest.mark.parametrize(
    "words", ["palabra " * 250, "قلت أربعين ثم\u200f 22", "𝟛𝟟 ＝ 40 👩\u200d👧", "<b>37</b>"]
)
def test_words_of_any_letters_and_length_are_read_and_kept_as_they_are(cast, words):
    at, problem = f"/talks/{cast.talk.pk}", problem_id(cast.talk)
    line = {"problem": problem, "line": words}
    read = cast.owner.post(f"{at}/read", line, content_type="application/json")
    told = sent(way(problem, None, 0, words=words))
    kept = cast.owner.post(f"{at}/events", told, content_type="application/json")
    assert (read.status_code, kept.status_code) == (200, 200)
    assert read.json()["words"] == words
    assert cast.owner.get(f"{at}/desk.json").json()["ways"][0]["words"] == words
