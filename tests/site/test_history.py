"""What talks before this one tell the desk, and the order of the chips that follows from it."""

from datetime import timedelta

from tests.site.made import answer, child_id, problem_id, sent, way
from waysaid.number import Language
from waysaid.site.chips import chips_for, foreseen, ordered, orders_by_child
from waysaid.site.history import History, history_before, think_seconds
from waysaid.site.models import Talk
from waysaid.site.record import at_hand
from waysaid.site.talks import start_talk
from waysaid.site.wording import Wording
from waysaid.talk import Record, body_from_json

WORDING = Wording(Language.EN)


def told(cast, family, child):
    """Have a talk of yesterday in which a child told a way of this family."""
    talk = start_talk(cast.school_class, problems=["39 + 27"])
    event = way(problem_id(talk), child_id(cast.school_class, child), 0, family=family)
    cast.owner.post(f"/talks/{talk.pk}/events", sent(event), content_type="application/json")
    earlier = cast.talk.made_at - timedelta(days=1)
    Talk.objects.filter(pk=talk.pk).update(made_at=earlier)
    return talk


def test_a_first_talk_has_no_history(cast):
    assert history_before(cast.talk) == History()


def test_ways_of_earlier_talks_are_counted_by_class_and_by_child(cast):
    told(cast, "split", "Bram")
    told(cast, "split", "Elif")
    told(cast, "adjust", "Bram")
    history = history_before(cast.talk)
    bram = child_id(cast.school_class, "Bram")
    assert (history.talks, dict(history.families)) == (3, {"split": 2, "adjust": 1})
    assert dict(history.by_child[bram]) == {"split": 1, "adjust": 1}
    assert history.lately == {bram, child_id(cast.school_class, "Elif")}


def test_what_was_taken_back_does_not_count(cast):
    talk = told(cast, "split", "Bram")
    undo = {"sequence": 1, "kind": "undo", "event": {"client": "desk-1", "sequence": 0}}
    cast.owner.post(f"/talks/{talk.pk}/events", sent(undo), content_type="application/json")
    assert dict(history_before(cast.talk).families) == {}


def test_the_talk_itself_and_another_class_do_not_count(cast):
    event = way(problem_id(cast.talk), child_id(cast.school_class))
    cast.owner.post(f"/talks/{cast.talk.pk}/events", sent(event), content_type="application/json")
    assert history_before(cast.talk) == History()


def test_a_talk_that_showed_no_problem_is_no_talk_before(cast):
    talk = start_talk(cast.school_class)
    Talk.objects.filter(pk=talk.pk).update(made_at=cast.talk.made_at - timedelta(days=1))
    assert history_before(cast.talk).talks == 0


def test_think_time_runs_from_the_problem_to_what_is_heard_first():
    def record(order, seconds, **body):
        return Record(order, "c", order, body_from_json(body), seconds * 1000)

    records = [
        record(1, 0, kind="problem-shown", problem="a"),
        record(2, 9, kind="names-hidden", on=True),
        record(3, 12, kind="answer-heard", id="x", problem="a", text="66"),
        record(4, 30, kind="way-shared", id="y", problem="a"),
        record(5, 40, kind="problem-shown", problem="b"),
        record(6, 41, kind="problem-shown", problem="c"),
        record(7, 61, kind="way-shared", id="z", problem="c"),
        record(8, 70, kind="problem-shown", problem="d"),
        record(9, 5000, kind="way-shared", id="w", problem="d"),
    ]
    assert think_seconds(records) == [12, 20]


def families(chips):
    return [chip["family"] for chip in chips]


def test_without_history_the_chips_begin_with_one_of_each_family_the_easiest_first():
    known = foreseen("39 + 27")
    kinds = len({way.family for way in known})
    assert len({way.family for way in known[:kinds]}) == kinds
    order = ordered(known, {}, {})
    assert order[:kinds] == list(range(kinds))
    assert sorted(order) == list(range(len(known)))


def test_what_the_class_says_often_comes_first():
    usual = families(chips_for("39 + 27", History(), WORDING))
    last = usual[4]
    liked = families(chips_for("39 + 27", History(talks=5, families={last: 9}), WORDING))
    assert liked[0] == last
    assert set(liked[:5]) == set(usual[:5])


def test_a_childs_own_ways_come_first_for_that_child_alone():
    usual = families(chips_for("39 + 27", History(), WORDING))
    history = History(talks=5, by_child={"7": {usual[3]: 4}})
    assert families(chips_for("39 + 27", history, WORDING)) == usual
    orders = orders_by_child("39 + 27", history)
    assert usual[orders["7"][0]] == usual[3]
    assert sorted(orders["7"]) == list(range(len(usual)))


def test_a_problem_nobody_knows_ways_for_has_no_chips():
    assert chips_for("no problem", History(), WORDING) == []


def test_the_desk_says_who_was_not_heard_lately_only_when_there_was_a_lately(cast):
    desk = cast.owner.get(f"/talks/{cast.talk.pk}/desk.json").json()
    assert desk["private"]["not_heard"] == []
    told(cast, "split", "Bram")
    desk = cast.owner.get(f"/talks/{cast.talk.pk}/desk.json").json()
    assert desk["private"]["not_heard"] == ["Aroha", "Chidi", "Dunya", "Elif"]
    heard = answer(problem_id(cast.talk), "66", child=child_id(cast.school_class, "Elif"))
    cast.owner.post(f"/talks/{cast.talk.pk}/events", sent(heard), content_type="application/json")
    desk = cast.owner.get(f"/talks/{cast.talk.pk}/desk.json").json()
    assert desk["private"]["not_heard"] == ["Aroha", "Chidi", "Dunya"]
    assert at_hand(cast.talk.pk).state.spoke() == (child_id(cast.school_class, "Elif"),)
