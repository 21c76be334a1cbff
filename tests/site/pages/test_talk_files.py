"""Talk files out and in: looked at before anything is kept, and nothing lost on the way."""

import json
from datetime import UTC, datetime, timedelta

import pytest
from django.contrib.auth.models import User
from django.core.files.uploadedfile import SimpleUploadedFile
from hypothesis import HealthCheck, given, settings

from tests.counts import count
from tests.site.made import NAMES, answer, child_id, make_class, problem_id, sent, way
from tests.talk.strategies import talks
from waysaid.paper import LARGEST_TALK_FILE, ChildInFile, TalkFile, outside, talk_file_bytes
from waysaid.site import held, talk_out
from waysaid.site.models import Child, EventRow, Plan, SchoolClass, Talk
from waysaid.site.people_models import Member, Part
from waysaid.site.record import at_hand, forget_all, milliseconds, moment_of
from waysaid.site.talk_in import as_past_talk
from waysaid.talk import Phase, Record
from waysaid.talk import event as happened

SHARED = "Which one helps with the next?"


def deliver(client, talk, *events, by="desk-1"):
    return client.post(
        f"/talks/{talk.pk}/events",
        json.dumps(sent(*events, client=by)),
        content_type="application/json",
    )


@pytest.fixture
def told(cast):
    """The cast's talk with a way, somebody who agreed, one who passed, an undo, and its end."""
    problem = problem_id(cast.talk)
    bram, elif_ = (child_id(cast.school_class, name) for name in ("Bram", "Elif"))
    events = (
        way(problem, bram, 1, words="like Aroha said"),
        {"sequence": 2, "kind": "way-agreed", "way": "way-1", "child": elif_},
        {"sequence": 3, "kind": "passed", "problem": problem, "child": elif_},
        answer(problem, "56", 4, child=elif_),
        {"sequence": 5, "kind": "undo", "event": {"client": "desk-1", "sequence": 4}},
        {"sequence": 6, "kind": "noticed", "id": "n", "child": bram, "words": "it is near"},
        {"sequence": 7, "kind": "phase-set", "phase": "connect"},
        {"sequence": 8, "kind": "closed"},
    )
    assert deliver(cast.owner, cast.talk, *events).status_code == 200
    cast.talk.refresh_from_db()
    return cast


def exported(client, talk, names=True):
    answer = client.get(f"/talks/{talk.pk}/talk.json" + ("?names=on" if names else ""))
    assert answer.status_code == 200, answer.text
    return answer.content


def look(client, content, name="talk.json"):
    return client.post("/talks/bring", {"file": SimpleUploadedFile(name, content)})


def keep(client, content, do="talk", **chosen):
    token = look(client, content).context["held"]
    return client.post("/talks/bring", {"held": token, "do": do, **chosen})


def kept_rows():
    models = (SchoolClass, Child, Plan, Talk, EventRow)
    return [list(model.objects.order_by("pk").values_list()) for model in models]


def test_a_talk_that_goes_to_a_like_class_and_back_is_the_same_file(told):
    content = exported(told.owner, told.talk)
    page = look(told.colleague, content)
    chosen = {f"child-{each.id}": each.child for each in page.context["matches"]}
    assert all(chosen.values())
    kept = keep(told.colleague, content, **chosen)
    made = Talk.objects.get(school_class__name="3A")
    assert kept.headers["Location"] == f"/talks/{made.pk}/back"
    assert exported(told.colleague, made) == content


def test_a_past_talk_stands_as_it_stood_on_the_day_on_which_it_was(told):
    day = datetime(2026, 3, 5, 9, 30, tzinfo=UTC)
    EventRow.objects.filter(talk=told.talk).update(received_at=day)
    Talk.objects.filter(pk=told.talk.pk).update(made_at=day)
    forget_all()
    content = exported(told.owner, Talk.objects.get(pk=told.talk.pk))
    keep(told.owner, content)
    made = Talk.objects.exclude(pk=told.talk.pk).get(school_class=told.school_class)
    assert made.made_at == day
    assert made.closed_at is not None
    state, before = at_hand(made.pk).state, at_hand(told.talk.pk).state
    assert state.phase is before.phase is Phase.AFTER
    assert [each.steps for each in state.ways] == [each.steps for each in before.ways]
    assert [each.words for each in state.noticings] == ["it is near"]
    assert not state.answers_of(state.now)[1:]
    assert told.owner.get(f"/talks/{made.pk}/back").status_code == 200


def test_a_file_is_without_names_unless_they_are_asked_for(told):
    content = exported(told.owner, told.talk, names=False)
    assert b"Bram" not in content
    assert {each["name"] for each in json.loads(content)["children"]} == {""}
    named = json.loads(exported(told.owner, told.talk))
    assert [each["name"] for each in named["children"]] == ["Bram", "Elif"]


def test_unknown_names_are_asked_for_and_nobody_is_added_unasked(told):
    told.colleague.get("/class")
    Child.objects.filter(school_class__name="3A", name="Bram").delete()
    content = exported(told.owner, told.talk)
    page = look(told.colleague, content)
    assert [(each.name, bool(each.child)) for each in page.context["matches"]] == [
        ("Bram", False),
        ("Elif", True),
    ]
    for name in ("stays nameless", "add Bram to the list", "is Aroha"):
        assert name in page.text
    before = Child.objects.filter(school_class__name="3A").count()
    keep(told.colleague, content)
    made = Talk.objects.get(school_class__name="3A")
    assert Child.objects.filter(school_class__name="3A").count() == before
    assert at_hand(made.pk).state.spoke() == ()
    assert not EventRow.objects.filter(talk=made, kind="passed").exists()
    assert [each.words for each in at_hand(made.pk).state.ways] == ["like Aroha said"]


def test_a_child_is_added_or_matched_as_chosen(told):
    content = exported(told.owner, told.talk)
    aroha = Child.objects.get(school_class__name="3A", name="Aroha")
    keep(told.colleague, content, **{"child-c1": "new", "child-c2": aroha.key})
    made = Talk.objects.get(school_class__name="3A")
    added = Child.objects.get(school_class__name="3A", name="Bram (2)")
    state = at_hand(made.pk).state
    assert state.ways[0].child == added.key
    assert state.ways[0].agreed == (aroha.key,)
    assert [child for _, child in state.passed] == [aroha.key]


def test_a_child_of_another_class_cannot_be_chosen(told):
    content = exported(told.owner, told.talk)
    other = child_id(told.school_class, "Bram")
    keep(told.colleague, content, **{"child-c1": other, "child-c2": "nonsense"})
    assert at_hand(Talk.objects.get(school_class__name="3A").pk).state.spoke() == ()


def test_a_plan_goes_out_and_comes_in_as_a_plan(cast):
    cast.owner.post("/plans/", {"problems": "40+26 | to begin\nimage dice: 3 2", "title": "Near"})
    plan = Plan.objects.get()
    plan.questions, plan.made_for = [SHARED], "2026-09-14"
    plan.save()
    content = cast.owner.get(f"/plans/{plan.pk}/plan.json").content
    assert look(cast.colleague, content).context["matches"] == ()
    kept = keep(cast.colleague, content)
    made = Plan.objects.get(school_class__name="3A")
    assert kept.headers["Location"] == f"/plans/{made.pk}"
    assert (made.title, made.questions) == ("Near", [SHARED])
    assert [row["why"] for row in made.problems] == ["to begin", ""]
    assert cast.colleague.get(f"/plans/{made.pk}/plan.json").content == content
    assert cast.colleague.get(f"/plans/{made.pk}").status_code == 200


def test_a_talk_makes_a_plan_where_that_is_asked_for(told):
    kept = keep(told.colleague, exported(told.owner, told.talk), do="plan")
    assert kept.headers["Location"].startswith("/plans/")
    assert Talk.objects.filter(school_class__name="3A").count() == 0


def test_the_plan_of_a_talk_goes_with_it(told):
    plan = Plan.objects.create(
        school_class=told.school_class, title="Its idea", questions=[SHARED], problems=[]
    )
    Talk.objects.filter(pk=told.talk.pk).update(plan=plan)
    content = exported(told.owner, told.talk)
    keep(told.colleague, content)
    made = Talk.objects.get(school_class__name="3A")
    assert (made.plan.title, made.plan.questions) == ("Its idea", [SHARED])
    assert made.title == told.talk.title
    assert "Its idea" not in at_hand(made.pk).state.title


@pytest.mark.parametrize(("part", "offered"), [(Part.TEACHER, True), (Part.CO_TEACHER, False)])
def test_files_of_talks_are_offered_to_whoever_may_have_them(told, part, offered):
    person = User.objects.create(username="colleague-2")
    Member.objects.create(school_class=told.school_class, person=person, part=part)
    told.outsider.force_login(person)
    assert ('href="/talks/bring"' in told.outsider.get("/talks/").text) is offered
    page = told.outsider.get(f"/talks/{told.talk.pk}/back")
    assert ("talk.json" in page.text) is offered
    assert (told.outsider.get("/talks/bring").status_code == 200) is offered


def test_looking_keeps_nothing(told):
    content, before = exported(told.owner, told.talk), kept_rows()
    assert look(told.owner, content).status_code == 200
    assert kept_rows() == before


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "Line 1"),
        (b"{}", "waysaid-talk"),
        (b"\xff\xfe", "UTF-8"),
        (b" " * (LARGEST_TALK_FILE + 1), "5 MB"),
    ],
)
def test_what_is_no_talk_file_is_told_in_a_sentence_and_keeps_nothing(cast, content, said):
    before = kept_rows()
    page = look(cast.owner, content)
    assert page.status_code == 400
    assert said in page.text
    assert kept_rows() == before
    assert cast.owner.post("/talks/bring").status_code == 400


def test_a_list_that_would_grow_too_long_is_told_and_the_file_stays_at_hand(told):
    school_class = make_class(User.objects.create(username="full"), "5C", NAMES)
    Child.objects.bulk_create(
        Child(school_class=school_class, name=f"n{place}") for place in range(115)
    )
    told.owner.force_login(User.objects.get(username="full"))
    owner = User.objects.get(username="owner")
    told.colleague.force_login(owner)
    content = exported(told.colleague, told.talk)
    page = keep(told.owner, content, **{"child-c1": "new"})
    assert page.status_code == 400
    assert "121 names" in page.text
    assert not Talk.objects.filter(school_class=school_class).exists()
    again = told.owner.post("/talks/bring", {"held": page.context["held"], "do": "talk"})
    assert again.status_code == 302


def test_a_file_at_hand_is_nobody_elses_and_goes_after_a_while(told, monkeypatch):
    content = exported(told.owner, told.talk)
    token = look(told.owner, content).context["held"]
    stolen = told.colleague.post("/talks/bring", {"held": token, "do": "talk"})
    assert stolen.status_code == 400
    now = held.time.monotonic()
    monkeypatch.setattr(held.time, "monotonic", lambda: now + held.SECONDS)
    late = told.owner.post("/talks/bring", {"held": token, "do": "talk"})
    assert (late.status_code, Talk.objects.count()) == (400, 1)
    assert "no longer at hand" in late.text


def test_only_so_many_files_are_at_hand():
    tokens = [held.hold(7, place) for place in range(held.MOST + 1)]
    assert held.holds(7, tokens[0], int) is None
    assert held.holds(7, tokens[1], int) == 1
    assert held.holds(7, tokens[1], str) is None
    held.let_go(8, tokens[1])
    assert held.holds(7, tokens[1], int) == 1
    held.let_go(7, tokens[1])
    assert held.holds(7, tokens[1], int) is None


@settings(max_examples=count(test=6, sweep=300), suppress_health_check=list(HealthCheck))
@given(talks())
def test_whatever_happened_in_a_talk_that_comes_in_its_pages_open(cast, records):
    children, events = outside(records, {})
    keys = [child.key for child in cast.school_class.children.all()]
    chosen = dict(zip([each.id for each in children], keys, strict=False))
    talk = TalkFile("T", children=children, events=events)
    made = as_past_talk(cast.school_class, talk, chosen)
    for page in ("back", "back?step=3", "chart.pdf?names=on", "desk.json", "talk.json?names=on"):
        assert cast.owner.get(f"/talks/{made.pk}/{page}").status_code == 200
    for page in ("/talks/", "/class/showed", "/class/evidence.csv"):
        assert cast.owner.get(page).status_code == 200
    made.delete()


def test_numbers_as_large_as_a_file_may_have_break_no_page(cast):
    most = 10**9
    spot = (happened.Mark("p", most), happened.Mark("p", "nowhere"))
    opened = happened.TalkOpened("", "es", "en", (happened.PlannedProblem("p", "40 + 25"),), 60)
    bodies = (
        opened,
        happened.ProblemShown("p"),
        happened.StrokesDrawn("s", "p", None, ((most, -most, 0), (most,), ())),
        happened.WhatIf("w", most, spot, "c1"),
        happened.WhatIfAnswer("w", "p", "9" * 2000),
        happened.Noticed("n", None, "x" * 2000, spot * 500, True),
        happened.LinkDrawn("l", "no-kind", spot),
        happened.PhaseSet(Phase.CONNECT),
    )
    events = tuple(Record(at, "d", at, body, 0) for at, body in enumerate(bodies, 1))
    content = talk_file_bytes(TalkFile("T", children=(ChildInFile("c1"),), events=events))
    kept = keep(cast.owner, content)
    assert kept.status_code == 302
    made = Talk.objects.latest("pk")
    for page in ("back", "back?step=3", "chart.pdf", "desk.json", "desk", "back/board"):
        assert cast.owner.get(f"/talks/{made.pk}/{page}").status_code == 200, page


def test_what_is_erased_for_good_waits_nowhere(told):
    token = look(told.owner, exported(told.owner, told.talk)).context["held"]
    child = told.school_class.children.get(name="Bram")
    forgotten = told.owner.post(f"/class/child/{child.pk}/forget", {"what": "all"})
    assert forgotten.status_code in (200, 302)
    late = told.owner.post("/talks/bring", {"held": token, "do": "talk"})
    assert (late.status_code, Talk.objects.count()) == (400, 1)


def test_a_talk_that_no_file_takes_is_told_and_not_given_out_in_part(told, monkeypatch):
    monkeypatch.setattr(talk_out, "LONGEST", 400)
    Talk.objects.filter(pk=told.talk.pk).update(title="x" * 120)
    norms = ["n" * 400]
    SchoolClass.objects.filter(pk=told.school_class.pk).update(norms=norms)
    answer = told.owner.get(f"/talks/{told.talk.pk}/talk.json")
    assert answer.status_code == 409
    assert "more than a talk file takes" in answer.json()["error"]


def test_a_moment_is_the_same_millisecond_out_and_back():
    for at in (0, 1, 1_700_000_000_001, 1_790_000_000_999):
        assert milliseconds(moment_of(at)) == at
    assert milliseconds(moment_of(5) + timedelta(microseconds=999)) == 5


def test_a_reason_behind_a_bar_is_understood_as_no_part_of_the_problem(cast):
    page = cast.owner.get("/typed", {"text": "40 + 25 | to begin"})
    assert page.json() == {"says": "40 + 25: forty plus twenty-five", "wrong": False}
    cast.owner.post("/plans/", {"problems": "40+26 | to begin\n39+26", "title": "T"})
    assert (
        "40 + 26 | to begin\n39 + 26\n</textarea>"
        in cast.owner.get(f"/plans/{Plan.objects.get().pk}").text
    )
