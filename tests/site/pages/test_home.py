"""The start: two taps to a first problem, what waits, what is planned, what was."""

from datetime import timedelta

import pytest
from django.utils import timezone

from tests.site.made import sent
from waysaid.site.first_problems import GRADES, ready_problems
from waysaid.site.models import Plan, SchoolClass, Talk
from waysaid.site.record import at_hand


def say(cast, talk, kind):
    event = sent({"sequence": 50, "kind": kind}, client="desk-9")
    cast.owner.post(f"/talks/{talk.pk}/events", event, content_type="application/json")


def test_a_ready_problem_is_on_the_board_with_the_second_tap(cast):
    page = cast.owner.get("/")
    assert 'href="/start"' in page.text
    ready = ready_problems(1)[0]
    begun = cast.owner.post("/start", {"ready": ready, "problem": ""})
    talk = Talk.objects.exclude(pk=cast.talk.pk).get()
    assert begun.headers["Location"] == f"/talks/{talk.pk}/desk"
    state = at_hand(talk.pk).state
    assert state.problem(state.now).text == ready


def test_there_are_six_ready_problems_for_every_grade():
    assert all(len(set(ready_problems(grade))) == 6 for grade in GRADES)


def test_the_grade_she_chose_is_offered_again(cast):
    cast.owner.get("/start?grade=3")
    assert 'href="?grade=3" aria-current="true"' in cast.owner.get("/start").text


def test_a_script_gets_the_addresses_of_the_desk_and_the_board(cast):
    begun = cast.owner.post("/start", {"problem": "8 + 7"}, headers={"accept": "application/json"})
    talk = Talk.objects.exclude(pk=cast.talk.pk).get()
    assert begun.json() == {"desk": f"/talks/{talk.pk}/desk", "board": f"/board/{talk.board_token}"}


def test_a_problem_that_cannot_be_read_is_shown_again_with_its_place(cast):
    page = cast.owner.post("/start", {"problem": "39 + x"})
    assert page.status_code == 400
    assert "place 6" in page.text
    assert 'value="39 + x"' in page.text
    assert Talk.objects.filter(school_class=cast.school_class).count() == 1


def test_a_script_gets_the_sentence_alone(cast):
    asked = {"accept": "application/json"}
    refused = cast.owner.post("/start", {"problem": "39 +"}, headers=asked)
    assert refused.status_code == 400
    assert "39 +" in refused.json()["error"]


def test_an_empty_field_is_told_and_the_signals_need_none(cast):
    assert cast.owner.post("/start", {"do": "typed", "problem": " "}).status_code == 400
    begun = cast.owner.post("/start", {"do": "signals", "problem": "left here"})
    assert begun.status_code == 302
    talk = Talk.objects.exclude(pk=cast.talk.pk).get(school_class=cast.school_class)
    assert at_hand(talk.pk).state.problems == ()


def test_a_substitutes_talk_tells_nothing_of_before(cast):
    cast.owner.post("/start", {"problem": "8 + 7", "substitute": "on"})
    assert Talk.objects.exclude(pk=cast.talk.pk).get().history is False


def test_a_paused_talk_is_on_top_and_goes_on(cast):
    say(cast, cast.talk, "paused")
    Talk.objects.filter(pk=cast.talk.pk).update(made_at=timezone.now() - timedelta(days=9))
    page = cast.owner.get("/").text
    assert f'action="/talks/{cast.talk.pk}/resume"' in page.split('id="begin"')[0]
    cast.owner.post(f"/talks/{cast.talk.pk}/resume")
    assert at_hand(cast.talk.pk).state.paused is False


def test_a_talk_that_is_over_does_not_wait(cast):
    say(cast, cast.talk, "closed")
    assert (
        f'action="/talks/{cast.talk.pk}/resume"' not in cast.owner.get("/").text.split('"begin"')[0]
    )


def test_the_plan_for_the_nearest_day_is_offered(cast):
    today = timezone.localdate()
    rows = [{"id": "a", "text": "8 + 7", "why": "", "locked": False}]
    for days, title in ((-1, "gone"), (3, "later"), (1, "nearest")):
        Plan.objects.create(
            school_class=cast.school_class,
            title=title,
            problems=rows,
            made_for=today + timedelta(days=days),
        )
    page = cast.owner.get("/").text
    assert "nearest" in page
    assert "later" not in page
    assert "gone" not in page


def test_she_turns_to_another_class(cast):
    other = SchoolClass.objects.create(owner=cast.school_class.owner, name="Other")
    cast.owner.post("/class/choose", {"class": other.pk})
    assert "<h1>Other</h1>" in cast.owner.get("/").text


@pytest.mark.parametrize("path", ["/", "/start", "/plans/", "/talks/", "/class", "/settings"])
def test_a_stranger_sees_nothing_of_a_class(cast, path):
    page = cast.outsider.get(path)
    assert page.status_code == 403
    assert "2B" not in page.text


def test_a_colleagues_class_cannot_be_turned_to(cast):
    assert cast.colleague.post("/class/choose", {"class": cast.school_class.pk}).status_code == 404
