"""The board knows its token, and a token shows the board and nothing else."""

import json
from datetime import timedelta

import pytest
from django.db import connection
from django.utils import timezone

from tests.site.made import answer, child_id, problem_id, sent, way
from waysaid.site import access, broadcast
from waysaid.site.around import around, row_of
from waysaid.site.hub import HUB, Looking, Room
from waysaid.site.models import Talk
from waysaid.site.payload import payload
from waysaid.site.record import at_hand
from waysaid.site.talks import start_talk

FIELDS = {
    "order", "phase", "title", "language", "paused", "closed", "turn_and_talk", "signals", "norms",
    "starters", "background", "layout", "problem", "earlier", "answers", "tiles", "strokes",
    "connect", "image",
}  # fmt: skip
TILE = {
    "id", "name", "also", "relation", "to_name", "folded", "picture", "words", "lines", "scene",
}  # fmt: skip


def shown(cast, looking=Looking.BOARD):
    return payload(Room(cast.talk.pk, looking), at_hand(cast.talk.pk))


def test_the_board_gets_the_listed_fields_and_no_other(cast):
    event = way(problem_id(cast.talk), child_id(cast.school_class), 0)
    cast.owner.post(f"/talks/{cast.talk.pk}/events", sent(event), content_type="application/json")
    board = shown(cast)
    assert set(board) <= FIELDS
    assert set(board["tiles"][0]) <= TILE


def test_nothing_private_reaches_the_board(cast):
    problem = problem_id(cast.talk)
    plan = cast.school_class.plans.create(
        title="canary-plan", problems=[], questions=["canary-question"]
    )
    cast.talk.plan = plan
    cast.talk.save()
    told = way(problem, child_id(cast.school_class), 0, foreseen=True, words="canary-words")
    wrong = answer(problem, "56", 1)
    cast.owner.post(
        f"/talks/{cast.talk.pk}/events", sent(told, wrong), content_type="application/json"
    )
    desk = json.dumps(shown(cast, Looking.DESK))
    assert "canary-question" in desk
    assert "bridge" in desk
    for looking in (Looking.BOARD, Looking.ONE):
        seen = json.dumps(shown(cast, looking))
        for private in ("canary", "bridge", "foreseen", "family", "slip", "chips", "flags",
                        "lately", "token", "history", "private", "wrong"):  # fmt: skip
            assert private not in seen, (looking, private)


def test_the_one_screen_adds_the_names_and_undo_and_nothing_else(cast):
    board, one = shown(cast), shown(cast, Looking.ONE)
    assert set(one) - set(board) == {"roster", "can_undo", "next", "once_more"}
    assert set(one["roster"][0]) == {"id", "name"}


def test_a_board_needs_no_session_and_its_token_opens_nothing_else(cast):
    token = cast.talk.board_token
    assert cast.outsider.get(f"/board/{token}").status_code == 200
    for path in (f"/one/{token}", f"/talks/{token}/desk", f"/talks/{cast.talk.pk}/desk",
                 f"/talks/{cast.talk.pk}/desk.json", f"/talks/{cast.talk.pk}/links"):  # fmt: skip
        assert cast.outsider.get(path).status_code == 404, path
    assert access.talk_of_board(access.visitor_of_cookies({}, None), token, one_screen=True) is None


@pytest.mark.parametrize("kind", ["way-shared", "answer-heard", "phase-set", "closed", "undo"])
def test_a_board_records_what_is_drawn_by_hand_and_nothing_else(cast, kind):
    bodies = {
        "way-shared": way(problem_id(cast.talk), None),
        "answer-heard": answer(problem_id(cast.talk), "66"),
        "phase-set": {"sequence": 0, "kind": "phase-set", "phase": "connect"},
        "closed": {"sequence": 0, "kind": "closed"},
        "undo": {"sequence": 0, "kind": "undo", "event": {"client": "server", "sequence": 1}},
    }
    path = f"/board/{cast.talk.board_token}/events"
    refused = cast.panel.post(path, sent(bodies[kind]), content_type="application/json")
    assert refused.status_code == 422
    assert at_hand(cast.talk.pk).order == 2


def test_whoever_only_knows_the_token_gets_no_pen(cast):
    path = f"/board/{cast.talk.board_token}"
    drawn = sent({"sequence": 0, "kind": "strokes-drawn", "id": "s", "problem": None}, client="b")
    refused = cast.outsider.post(f"{path}/events", drawn, content_type="application/json")
    assert refused.status_code == 404
    pages = {who: getattr(cast, who).get(path).content.decode() for who in ("owner", "outsider")}
    assert "data-events" in pages["owner"]
    assert "data-events" not in pages["outsider"]
    assert f"{path}/events" in cast.panel.get(path).content.decode()


def test_strokes_on_the_board_are_kept_and_can_be_rubbed_out(cast):
    path = f"/board/{cast.talk.board_token}/events"
    problem = problem_id(cast.talk)
    strokes = {"kind": "strokes-drawn", "id": "s1", "problem": problem, "on": "problem"}
    drawn = {"sequence": 0, **strokes, "on": "problem", "strokes": [[10, 20, 30, 40]]}
    kept = cast.panel.post(path, sent(drawn, client="b"), content_type="application/json")
    assert kept.status_code == 200
    assert shown(cast)["strokes"][0]["strokes"] == [[10, 20, 30, 40]]
    rubbed = {"sequence": 1, "kind": "erased", "id": "s1"}
    cast.panel.post(path, sent(rubbed, client="b"), content_type="application/json")
    assert shown(cast)["strokes"] == []


def test_a_board_cannot_rub_out_what_a_child_noticed(cast):
    noticed = {"sequence": 0, "kind": "noticed", "id": "n1", "words": "both end in 6"}
    desk = f"/talks/{cast.talk.pk}/events"
    cast.owner.post(desk, sent(noticed), content_type="application/json")
    path = f"/board/{cast.talk.board_token}/events"
    erased = sent({"sequence": 0, "kind": "erased", "id": "n1"}, client="b")
    assert cast.panel.post(path, erased, content_type="application/json").status_code == 422


def test_a_closed_talks_token_says_thank_you_for_an_hour_and_then_nothing(cast):
    path = f"/board/{cast.talk.board_token}"
    cast.talk.closed_at = timezone.now() - timedelta(minutes=59)
    cast.talk.save()
    assert cast.outsider.get(path).status_code == 200
    cast.talk.closed_at = timezone.now() - timedelta(minutes=61)
    cast.talk.save()
    assert cast.outsider.get(path).status_code == 404


def test_every_frame_carries_the_whole_state_and_its_order(cast):
    room = Room(cast.talk.pk, Looking.BOARD)
    frame = broadcast.frame_of(room, at_hand(cast.talk.pk))
    event, number, data, *_ = frame.data.decode().split("\n")
    assert (event, number) == ("event: state", "id: 2")
    assert json.loads(data.removeprefix("data: "))["problem"]["text"] == "39 + 27"


def reopened(cast, minutes):
    """Close the talk, let so many minutes pass, and go on; return its first board token."""
    first = cast.talk.board_token
    path = f"/talks/{cast.talk.pk}/events"
    closed, resumed = ({"sequence": n, "kind": k} for n, k in enumerate(("closed", "resumed")))
    cast.owner.post(path, sent(closed), content_type="application/json")
    Talk.objects.update(closed_at=timezone.now() - timedelta(minutes=minutes))
    cast.owner.post(path, sent(resumed), content_type="application/json")
    cast.talk.refresh_from_db()
    return first


def test_a_talk_that_goes_on_at_once_keeps_its_board(cast):
    assert reopened(cast, 5) == cast.talk.board_token
    assert cast.outsider.get(f"/board/{cast.talk.board_token}").status_code == 200


def test_a_talk_that_goes_on_another_day_has_new_tokens(cast):
    before = reopened(cast, 61)
    assert cast.outsider.get(f"/board/{before}").status_code == 404
    assert cast.outsider.get(f"/board/{cast.talk.board_token}").status_code == 200


def test_a_plans_title_stays_on_the_desk_for_it_may_tell_the_idea(cast):
    plan = cast.school_class.plans.create(
        title="canary-idea", problems=[{"id": "a", "text": "39 + 27"}]
    )
    talk = start_talk(cast.school_class, plan=plan)
    assert payload(Room(talk.pk, Looking.DESK), at_hand(talk.pk))["title"] == "canary-idea"
    for looking in (Looking.BOARD, Looking.ONE):
        assert "canary" not in json.dumps(payload(Room(talk.pk, looking), at_hand(talk.pk)))
    page = cast.owner.get(f"/board/{talk.board_token}").content.decode()
    assert "canary" not in page


class Frames:
    """What a board and a desk that watch a talk are handed, in turn."""

    def __init__(self, monkeypatch, talk):
        self.sent = []
        self.rooms = (Room(talk.pk, Looking.DESK, owner=True), Room(talk.pk, Looking.BOARD))
        monkeypatch.setattr(HUB, "rooms_of", lambda _talk: self.rooms)
        monkeypatch.setattr(HUB, "send", self.take)

    def take(self, room, frame):
        state = json.loads(frame.data.decode().split("\n")[2].removeprefix("data: "))
        self.sent.append((room.looking, frame.version, state))


def test_the_board_is_told_before_the_desk_and_once(cast, monkeypatch):
    frames = Frames(monkeypatch, cast.talk)
    told = sent(way(problem_id(cast.talk), child_id(cast.school_class)))
    cast.owner.post(f"/talks/{cast.talk.pk}/events", told, content_type="application/json")
    assert [looking for looking, *_ in frames.sent] == [Looking.BOARD, Looking.DESK]
    assert frames.sent[0][2]["tiles"][0]["name"] == "Bram"


def test_a_board_is_told_again_when_a_name_was_changed_meanwhile(cast, monkeypatch):
    frames = Frames(monkeypatch, cast.talk)
    told = sent(way(problem_id(cast.talk), child_id(cast.school_class)))
    cast.owner.post(f"/talks/{cast.talk.pk}/events", told, content_type="application/json")
    frames.sent.clear()
    before = around(row_of(cast.talk.pk))
    cast.school_class.children.filter(name="Bram").update(name="Bran")
    broadcast.tell(cast.talk.pk, None, before)
    boards = [one for one in frames.sent if one[0] is Looking.BOARD]
    assert [state["tiles"][0]["name"] for _, _, state in boards] == ["Bram", "Bran"]
    versions = [version for _, version, _ in frames.sent]
    assert versions == sorted(versions)


def test_few_questions_are_put_to_the_database_before_the_board_is_told(cast, monkeypatch):
    frames = Frames(monkeypatch, cast.talk)
    asked = []

    def note(execute, sql, params, many, context):
        if not frames.sent:
            asked.append(sql)
        return execute(sql, params, many, context)

    told = sent(way(problem_id(cast.talk), child_id(cast.school_class)))
    # Whoever taps has opened the desk before.
    cast.owner.get(f"/talks/{cast.talk.pk}/desk.json")
    with connection.execute_wrapper(note):
        cast.owner.post(f"/talks/{cast.talk.pk}/events", told, content_type="application/json")
    # The session, who it is, the talk, the list; then the lock, the last order, the event.
    assert len([sql for sql in asked if sql.startswith(("SELECT", "INSERT"))]) <= 7, asked
