"""The year planned again from what happened, and the work that is done beside the site."""

import time
from pathlib import Path

import pytest
from django.utils import timezone

from tests.site.made import problem_id, sent, way
from tests.site.year_made import coming, press, proposed, rows, texts, waited, year
from waysaid.site.models import SchoolYear
from waysaid.site.year_days import LATELY
from waysaid.site.year_work import WORKS

pytestmark = pytest.mark.slow

__all__ = ["rows", "year"]


def not_heard(cast, year):
    """Say that there was a talk each day; return an idea of late that is not coming soon."""
    for day in year.days.filter(date__lte=timezone.localdate()):
        press(cast, day, "talk")
    soon = {day.idea for day in coming(year)[:8]}
    late = list(year.days.filter(date__lt=timezone.localdate()).order_by("-date")[:8])
    return next(day.idea for day in late if day.idea not in soon)


def test_planning_again_says_what_would_move_and_moves_it_when_told(cast, year):
    idea = not_heard(cast, year)
    skipped = coming(year)[0]
    press(cast, skipped, "skip")
    locked = {coming(year)[1].date, coming(year)[3].date}
    year.days.filter(date__in=locked).update(locked=True)
    before = texts(year)
    page = proposed(cast, **{f"idea-{idea}": "not-yet"})
    assert texts(year) == before
    assert "Move them" in page
    assert "since it was not heard yet" in page
    assert cast.owner.post("/year/again", {"do": "take"}).status_code == 302
    after = texts(year)
    changed = {day for day in before if before[day] != after[day]}
    assert changed
    assert not changed & {*locked, skipped.date}
    assert min(changed) > timezone.localdate()
    year.refresh_from_db()
    assert year.proposal is None
    assert idea in [day.idea for day in coming(year)[:6]]
    assert year.days.get(date=skipped.date).settled


def test_what_was_missed_long_ago_counts_only_where_somebody_said_so(cast, year):
    today = timezone.localdate()
    past = list(year.days.filter(date__lte=today))
    lately = [day for day in past[-LATELY:] if day.date < today]
    waiting = cast.owner.get("/year/again").text.split('id="missed"')[1].split("</section>")[0]
    assert waiting.count("<a ") == len(lately) >= LATELY - 1
    press(cast, past[0], "skip")
    waiting = cast.owner.get("/year/again").text.split('id="missed"')[1].split("</section>")[0]
    assert f"/year/day/{past[0].date}" in waiting


def test_a_plan_that_cannot_be_found_leaves_what_was_missed_waiting(cast, year):
    day = coming(year)[0]
    press(cast, day, "skip")
    year.proposal = {"moves": [], "without": [], "possible": False, "missed": [str(day.date)]}
    year.save()
    page = cast.owner.get("/year/again").text
    assert "nothing would be moved" in page
    assert 'value="take"' not in page
    cast.owner.post("/year/again", {"do": "leave"})
    assert not year.days.get(pk=day.pk).settled


def test_a_settled_day_s_string_is_on_one_day_alone(cast, year):
    one, other = coming(year)[:2]
    year.days.filter(pk=one.pk).update(settled=True, skipped=True, problems=other.problems)
    assert "on another day now" in press(cast, one, "talk").text
    year.days.filter(pk=one.pk).update(problems=one.problems)
    assert press(cast, one, "talk").status_code == 302
    assert not year.days.get(pk=one.pk).settled


def test_a_year_can_be_left_as_it_is(cast, year):
    press(cast, coming(year)[0], "skip")
    before = texts(year)
    proposed(cast)
    cast.owner.post("/year/again", {"do": "leave"})
    assert texts(year) == before
    assert cast.owner.post("/year/again", {"do": "take"}).status_code == 200
    assert texts(year) == before


def test_a_proposal_for_days_that_are_others_by_now_moves_nothing(cast, year):
    idea = not_heard(cast, year)
    proposed(cast, **{f"idea-{idea}": "not-yet"})
    year.refresh_from_db()
    moved = year.proposal["moves"][0]["before"]["date"]
    year.days.filter(date=moved).update(locked=True)
    before = texts(year)
    page = cast.owner.post("/year/again", {"do": "take"})
    assert "nothing was moved" in page.text
    assert texts(year) == before


def test_an_idea_whose_family_was_not_heard_in_its_talk_is_offered_as_not_heard_yet(cast, year):
    today = timezone.localdate()
    day, _made = year.days.update_or_create(
        date=today, defaults={"idea": coming(year)[0].idea, "problems": ["39 + 27"]}
    )
    event = way(problem_id(cast.talk), None)
    told = cast.owner.post(
        f"/talks/{cast.talk.pk}/events", sent(event), content_type="application/json"
    )
    assert told.status_code == 200
    page = cast.owner.get("/year/again").text
    shown = page.split(f'name="idea-{day.idea}" value="not-yet"')[1][:10]
    assert shown.startswith(" checked")


@pytest.mark.slow
@pytest.mark.skipif(not Path("/proc").is_dir(), reason="looks for processes where Linux has them")
def test_a_server_that_stops_while_a_year_is_laid_out_leaves_no_trace(serve):
    server = serve()
    teacher = server.teacher()
    teacher.get("/welcome")
    teacher.send_form("/welcome", name="2B", names="Bram", language="en")
    teacher.get("/year/")
    asked = {"grade": "3", "curriculum": "ccss", "first": "2026-08-31", "last": "2027-06-11"}
    assert teacher.send_form("/year/", **asked).status == 302
    assert teacher.get("/year/busy").json() == {"busy": True}
    working = _children(server.process.pid)
    assert working
    assert server.stop() == 0
    for _ in range(200):
        if not any(Path(f"/proc/{each}").exists() for each in working):
            break
        time.sleep(0.05)
    assert [each for each in working if Path(f"/proc/{each}").exists()] == []
    again = serve().teacher()
    assert "data-busy" not in again.get("/year/").text
    assert "data-day=" not in again.get("/year/").text


def _children(process):
    """Return the processes that a process started and that are there; waits until one is."""
    for _ in range(200):
        found = Path(f"/proc/{process}/task/{process}/children")
        tasks = Path(f"/proc/{process}/task").glob("*/children")
        ids = [each for one in (found, *tasks) for each in one.read_text().split()]
        if ids:
            return sorted(set(ids))
        time.sleep(0.05)
    return []


def test_work_that_fails_is_told_once_and_leaves_no_trace(cast):
    assert WORKS.begin(cast.school_class.pk, _broken, str)
    waited(cast.school_class.pk)
    assert "nothing was changed" in cast.owner.get("/year/").text
    assert "nothing was changed" not in cast.owner.get("/year/").text
    assert not SchoolYear.objects.exists()


def _broken():
    raise SystemExit(3)
