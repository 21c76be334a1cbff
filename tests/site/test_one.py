"""The one screen: its drawer records what a class may watch, and shows no reading."""

import pytest

from tests.site.made import child_id, problem_id, sent, way
from waysaid.site.record import at_hand


def post(cast, event):
    path = f"/one/{cast.talk.one_token}/events"
    return cast.outsider.post(path, sent(event), content_type="application/json")


def line(cast, words, **changed):
    return {
        "sequence": 0,
        "kind": "way-shared",
        "id": "w",
        "problem": problem_id(cast.talk),
        "child": child_id(cast.school_class),
        "line": words,
        **changed,
    }


def test_a_line_is_read_on_the_server_and_nothing_of_the_reading_comes_back(cast):
    saved = post(cast, line(cast, "39+1=40+26"))
    assert saved.status_code == 200
    assert set(saved.json()) == {"saved", "order"}
    (told,) = at_hand(cast.talk.pk).state.ways
    assert [(each.equation.left.left, each.equation.left.right) for each in told.steps] == [
        (39, 1),
        (40, 26),
    ]
    assert told.words == "39+1=40+26"


def test_a_retried_line_is_saved_once(cast):
    assert (
        post(cast, line(cast, "39+1=40+26")).json() == post(cast, line(cast, "39+1=40+26")).json()
    )
    assert len(at_hand(cast.talk.pk).state.ways) == 1


def test_free_words_stay_words(cast):
    post(cast, line(cast, "I just saw it"))
    (told,) = at_hand(cast.talk.pk).state.ways
    assert (told.steps, told.words) == ((), "I just saw it")


def test_a_foreseen_way_is_not_for_this_screen(cast):
    tapped = way(problem_id(cast.talk), None, foreseen=True)
    assert post(cast, tapped).status_code == 422
    assert post(cast, line(cast, "39+1", family="bridge")).status_code == 422


@pytest.mark.parametrize("kind", ["closed", "link-drawn", "way-edited"])
def test_what_is_the_desks_is_refused(cast, kind):
    bodies = {
        "closed": {},
        "link-drawn": {"id": "l", "link": "same-number", "marks": []},
        "way-edited": {"way": "w"},
    }
    assert post(cast, {"sequence": 0, "kind": kind, **bodies[kind]}).status_code == 422


def test_a_line_for_no_problem_is_refused(cast):
    assert post(cast, line(cast, "39+1", problem="other")).status_code == 400
