"""POST /talks/<id>/events: saved once, in the server's order, or refused in one sentence."""

import pytest

from tests.site.made import answer, child_id, problem_id, sent, way
from waysaid.number import Language, Unreadable, parse
from waysaid.site.models import EventRow
from waysaid.site.record import at_hand


def post(cast, given, who="owner", talk=None):
    path = f"/talks/{(talk or cast.talk).pk}/events"
    return getattr(cast, who).post(path, given, content_type="application/json")


def test_an_event_gets_its_place_in_the_talk(cast):
    event = way(problem_id(cast.talk), child_id(cast.school_class), 7)
    response = post(cast, sent(event))
    assert response.status_code == 200
    assert response.json() == {"saved": [{"sequence": 7, "order": 3}], "order": 3}
    row = EventRow.objects.get(talk=cast.talk, order=3)
    assert (row.client, row.sequence, row.kind) == ("desk-1", 7, "way-shared")


def test_a_retry_gets_the_same_answer_and_nothing_is_doubled(cast):
    given = sent(way(problem_id(cast.talk), None, 0), answer(problem_id(cast.talk), "66", 1))
    first, again = post(cast, given), post(cast, given)
    assert first.json() == again.json()
    assert EventRow.objects.filter(talk=cast.talk).count() == 4


def test_a_retry_among_new_events_saves_only_the_new(cast):
    problem = problem_id(cast.talk)
    post(cast, sent(answer(problem, "66", 0)))
    both = post(cast, sent(answer(problem, "66", 0), answer(problem, "56", 1)))
    orders = {each["sequence"]: each["order"] for each in both.json()["saved"]}
    assert orders == {0: 3, 1: 4}


def test_the_same_sequence_with_something_else_in_it_is_refused(cast):
    problem = problem_id(cast.talk)
    post(cast, sent(answer(problem, "66", 0)))
    refused = post(cast, sent(answer(problem, "56", 0), answer(problem, "57", 1)))
    assert refused.status_code == 409
    assert refused.json()["error"].count(".") == 1
    assert EventRow.objects.filter(talk=cast.talk).count() == 3


def test_a_retry_of_what_an_earlier_version_kept_is_still_the_same(cast):
    given = sent(way(problem_id(cast.talk), None, 0))
    first = post(cast, given).json()
    row = EventRow.objects.get(client="desk-1")
    del row.body["foreseen"]
    row.save()
    assert post(cast, given).json() == first


def test_two_clients_may_use_the_same_sequence(cast):
    problem = problem_id(cast.talk)
    post(cast, sent(answer(problem, "66", 0)))
    other = post(cast, sent(answer(problem, "56", 0), client="desk-2"))
    assert other.json()["order"] == 4


@pytest.mark.parametrize(
    "given",
    [
        [],
        {},
        {"client": "", "events": [{"sequence": 0, "kind": "paused"}]},
        {"client": "server", "events": [{"sequence": 0, "kind": "paused"}]},
        {"client": "a b", "events": [{"sequence": 0, "kind": "paused"}]},
        {"client": "desk-1", "events": []},
        {"client": "desk-1", "events": [{"sequence": -1, "kind": "paused"}]},
        {"client": "desk-1", "events": [{"sequence": True, "kind": "paused"}]},
        {"client": "desk-1", "events": [{"sequence": 0, "kind": "praised"}]},
        {"client": "desk-1", "events": [{"sequence": 0, "kind": "paused", "score": 1}]},
        {"client": "desk-1", "events": ["paused"]},
        {"client": "desk-1", "events": [{"sequence": n, "kind": "paused"} for n in range(201)]},
    ],
)
def test_what_is_no_event_is_refused_in_one_sentence_and_nothing_is_saved(cast, given):
    refused = post(cast, given)
    assert refused.status_code == 400
    assert len(refused.json()["error"]) > 10
    assert EventRow.objects.filter(talk=cast.talk).count() == 2


def test_one_bad_event_keeps_the_whole_delivery_out(cast):
    good = answer(problem_id(cast.talk), "66", 0)
    assert post(cast, sent(good, {"sequence": 1, "kind": "praised"})).status_code == 400
    assert EventRow.objects.filter(talk=cast.talk).count() == 2


def test_only_the_server_opens_a_talk(cast):
    opened = {"kind": "talk-opened", "title": "x", "language": "en", "board_language": "en"}
    assert post(cast, sent({"sequence": 0, **opened})).status_code == 422


def test_a_child_of_another_class_is_refused(cast):
    refused = post(cast, sent(way(problem_id(cast.talk), "999999", 0)))
    assert refused.status_code == 400


def test_the_sentence_is_in_the_desks_language(cast):
    cast.school_class.desk_language = "es"
    cast.school_class.save()
    english = "‘client’ takes 1 to 64 letters, digits, - and _."
    refused = post(cast, {"client": "", "events": []})
    assert refused.json()["error"] != english


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_problem_that_cannot_be_read_is_refused_with_its_place_marked(cast, language):
    cast.school_class.desk_language = language
    cast.school_class.save()
    added = {"sequence": 0, "kind": "problem-added", "problem": "p2", "text": "37 + + 25"}
    refused = post(cast, sent(added))
    assert refused.status_code == 400
    with pytest.raises(Unreadable) as unreadable:
        parse("37 + + 25")
    assert refused.json()["error"] == unreadable.value.sentence(Language(language))
    assert EventRow.objects.filter(talk=cast.talk).count() == 2


def test_an_undo_takes_back_one_event_and_can_be_taken_back(cast):
    problem = problem_id(cast.talk)
    post(cast, sent(answer(problem, "66", 0)))
    target = {"client": "desk-1", "sequence": 0}
    post(cast, sent({"sequence": 1, "kind": "undo", "event": target}))
    assert not at_hand(cast.talk.pk).state.answers_of(problem)
    target = {"client": "desk-1", "sequence": 1}
    post(cast, sent({"sequence": 2, "kind": "undo", "event": target}))
    assert at_hand(cast.talk.pk).state.answers_of(problem)


def test_closing_is_noted_beside_the_talk_and_going_on_takes_the_note_away(cast):
    post(cast, sent({"sequence": 0, "kind": "closed"}))
    cast.talk.refresh_from_db()
    assert cast.talk.closed_at is not None
    post(cast, sent({"sequence": 1, "kind": "resumed"}))
    cast.talk.refresh_from_db()
    assert cast.talk.closed_at is None


def test_a_restart_finds_the_talk_as_it_was(cast):
    from waysaid.site import record

    post(cast, sent(way(problem_id(cast.talk), None, 0)))
    before = at_hand(cast.talk.pk).state
    record.forget_all()
    assert at_hand(cast.talk.pk).state == before


def test_what_is_at_hand_after_each_event_is_what_is_on_disk(cast):
    from waysaid.site import record

    problem = problem_id(cast.talk)
    undo = {"kind": "undo", "event": {"client": "desk-1", "sequence": 1}}
    events = [way(problem, None, 0), answer(problem, "56", 1), {"sequence": 2, **undo}]
    for number in range(1, len(events) + 1):
        talk = at_hand(cast.talk.pk)
        assert post(cast, sent(*events[:number])).status_code == 200
        assert talk.order == 2 + number
        heard = (talk.state, tuple(talk.records), dict(talk.saved_by))
        record.forget_all()
        read = at_hand(cast.talk.pk)
        assert heard == (read.state, tuple(read.records), read.saved_by)


def test_a_get_takes_nothing(cast):
    assert cast.owner.get(f"/talks/{cast.talk.pk}/events").status_code == 405
