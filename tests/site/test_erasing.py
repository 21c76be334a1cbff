"""What is forgotten is gone, and what is left can still be opened."""

import json

import pytest

from tests.site.made import child_id, problem_id, sent, way
from waysaid.site.erasing import forget_child, forget_class, forget_talks
from waysaid.site.hub import HUB
from waysaid.site.models import EventRow, SchoolClass, Talk
from waysaid.site.record import at_hand

JSON = "application/json"


@pytest.fixture
def told(cast):
    """A talk in which Bram shared a way, agreed, gave an answer and passed."""
    problem, child = problem_id(cast.talk), child_id(cast.school_class)
    events = (
        way(problem, child, 0),
        {"sequence": 1, "kind": "way-agreed", "way": "way-0", "child": child},
        {"sequence": 2, "kind": "passed", "problem": problem, "child": child},
        {"sequence": 3, "kind": "noticed", "id": "n", "child": child, "words": "one more"},
    )
    answered = cast.owner.post(
        f"/talks/{cast.talk.pk}/events", json.dumps(sent(*events)), content_type=JSON
    )
    assert answered.status_code == 200
    return cast


@pytest.mark.parametrize("said_too", [False, True])
def test_a_talk_opens_after_a_child_was_forgotten(told, said_too):
    child = told.school_class.children.get(name="Bram")
    key = child.key
    forget_child(child, said_too=said_too)
    state = at_hand(told.talk.pk).state
    assert key not in {each.child for each in state.ways}
    assert state.passed == ()
    assert len(state.ways) == (0 if said_too else 1)
    assert not EventRow.objects.filter(body__child=key).exists()
    assert told.owner.get(f"/talks/{told.talk.pk}/desk.json").status_code == 200


def test_no_screen_goes_on_looking_at_what_was_forgotten(told, monkeypatch):
    ended = []
    monkeypatch.setattr(HUB, "empty", ended.append)
    talk = told.talk.pk
    forget_talks([told.talk])
    forget_class(told.school_class)
    assert ended == [talk]
    assert not Talk.objects.filter(pk=talk).exists()
    assert not SchoolClass.objects.filter(pk=told.school_class.pk).exists()
