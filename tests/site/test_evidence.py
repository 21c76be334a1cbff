"""Rows of evidence follow the events: gathered once, again when more came, gone with a child."""

import pytest

from tests.site.made import child_id, problem_id, sent, way
from waysaid.growth import How, lessons, past_of
from waysaid.site.demo import fill
from waysaid.site.erasing import forget_child, forget_talks
from waysaid.site.evidence import forget_gathered, held_of, past_of_class, read_past
from waysaid.site.models import Gathered, ShownRow


@pytest.fixture
def told(cast):
    events = [way(problem_id(cast.talk), child_id(cast.school_class), 1)]
    path = f"/talks/{cast.talk.pk}/events"
    assert cast.owner.post(path, sent(*events), content_type="application/json").status_code == 200
    return cast


def test_what_a_way_shows_is_read_back_from_rows(told):
    past = past_of_class(told.school_class)
    assert [talk.id for talk in past.talks] == [str(told.talk.pk)]
    (piece,) = past.shown
    assert (piece.child, piece.how, piece.family.value) == (
        child_id(told.school_class),
        How.SAID,
        "bridge",
    )


def test_more_of_a_talk_is_gathered_and_what_was_undone_is_not(told):
    past_of_class(told.school_class)
    path = f"/talks/{told.talk.pk}/events"
    more = way(problem_id(told.talk), child_id(told.school_class, "Elif"), 2)
    told.owner.post(path, sent(more), content_type="application/json")
    assert len(past_of_class(told.school_class).shown) == 2
    undo = {"sequence": 3, "kind": "undo", "event": {"client": "desk-1", "sequence": 1}}
    told.owner.post(path, sent(undo), content_type="application/json")
    assert [p.child for p in past_of_class(told.school_class).shown] == [
        child_id(told.school_class, "Elif")
    ]
    assert Gathered.objects.count() == 1


def test_reading_again_gathers_nothing_anew(told):
    past_of_class(told.school_class)
    first = Gathered.objects.get().pk
    forgotten = past_of_class(told.school_class)
    assert Gathered.objects.get().pk == first
    assert forgotten == read_past(told.school_class)


def test_rows_say_what_the_events_themselves_say(cast):
    fill(cast.school_class, lessons()[:6], 3)
    talks = cast.school_class.talks.order_by("made_at", "pk")
    assert past_of_class(cast.school_class) == past_of(held_of(talk) for talk in talks)


def test_a_forgotten_child_is_in_no_row(told):
    past_of_class(told.school_class)
    bram = told.school_class.children.get(name="Bram")
    forget_child(bram, said_too=False)
    assert not ShownRow.objects.filter(child=bram.key).exists()
    (piece,) = past_of_class(told.school_class).shown
    assert piece.child is None


def test_rows_go_with_their_talk(told):
    past_of_class(told.school_class)
    forget_talks([told.talk])
    assert not ShownRow.objects.exists()
    assert past_of_class(told.school_class).shown == ()


def test_what_was_gathered_can_be_gathered_again(cast):
    fill(cast.school_class, lessons()[:4], 5)
    before = past_of_class(cast.school_class)
    forget_gathered(cast.school_class.pk)
    assert not ShownRow.objects.exists()
    for talk in cast.school_class.talks.all():
        talk.refresh_from_db()
    from waysaid.site.record import mark_change

    mark_change()
    assert past_of_class(cast.school_class) == before
