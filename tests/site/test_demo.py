"""The demo: an invented class with talks of before and a plan for today."""

from waysaid.site import demo
from waysaid.site.history import TALKS_BACK, history_before
from waysaid.site.models import EventRow, SchoolClass
from waysaid.site.record import at_hand
from waysaid.site.talks import start_talk
from waysaid.talk import Phase


def test_the_demo_has_a_class_of_names_that_differ(db):
    demo.make_demo()
    names = list(SchoolClass.objects.get().children.values_list("name", flat=True))
    assert 24 <= len(names) <= 32
    assert len({name.casefold() for name in names}) == len(names)


def test_its_talks_ran_to_their_end_with_ways_and_answers(db):
    demo.make_demo()
    talks = list(SchoolClass.objects.get().talks.order_by("made_at"))
    assert len(talks) == demo.TALKS
    for talk in talks:
        state = at_hand(talk.pk).state
        assert state.closed
        assert state.phase is Phase.AFTER
        assert len(state.shown) == len(state.problems) >= 3
        assert all(state.answers_of(each) for each in state.shown)
        assert state.ways
        assert state.noticings


def test_its_talks_make_a_history_with_children_not_heard_lately(db):
    demo.make_demo()
    school_class = SchoolClass.objects.get()
    history = history_before(start_talk(school_class))
    assert history.talks == TALKS_BACK
    assert history.usual_seconds is not None
    assert 0 < len(history.lately) < len(demo.NAMES)


def test_a_second_start_changes_nothing(db):
    demo.make_demo()
    before = EventRow.objects.count()
    demo.make_demo()
    assert EventRow.objects.count() == before
    assert SchoolClass.objects.count() == 1


def test_every_demo_is_alike(db):
    def told():
        rows = EventRow.objects.order_by("talk__made_at", "order")
        return [(row.kind, row.body.get("family"), row.body.get("text")) for row in rows]

    demo.make_demo()
    first = told()
    SchoolClass.objects.all().delete()
    demo.make_demo()
    assert told() == first
