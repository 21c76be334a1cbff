"""The year of a class: laid out from a calendar, changed by hand, taken along."""

from datetime import date, timedelta

import pytest
from django.utils import timezone

from tests.site.made import make_class
from tests.site.year_made import (
    KINDER,
    coming,
    exchange,
    press,
    proposed,
    rows,
    texts,
    waited,
    year,
)
from waysaid.site.models import Plan, SchoolYear, YearDay
from waysaid.site.talks import start_talk
from waysaid.site.year_days import keep_laid, whole_year
from waysaid.site.year_laid import Row, row_of
from waysaid.strings import Curriculum

__all__ = ["rows", "year"]
CALENDAR = b"""BEGIN:VCALENDAR
VERSION:2.0
BEGIN:VEVENT
SUMMARY:First day of school
DTSTART;VALUE=DATE:20270104
END:VEVENT
BEGIN:VEVENT
SUMMARY:Winter break
DTSTART;VALUE=DATE:20270107
DTEND;VALUE=DATE:20270109
END:VEVENT
BEGIN:VEVENT
SUMMARY:Last day of school
DTSTART;VALUE=DATE:20270112
END:VEVENT
END:VCALENDAR
"""


def test_a_year_is_laid_out_from_a_calendar_beside_the_site(cast, tmp_path):
    path = tmp_path / "school.ics"
    path.write_bytes(CALENDAR)
    with path.open("rb") as file:
        asked = cast.owner.post("/year/", {"grade": "0", "calendar": file})
    assert asked.status_code == 302
    waited(cast.school_class.pk)
    year = SchoolYear.objects.get(school_class=cast.school_class)
    assert [str(day.date) for day in year.days.all()] == [
        "2027-01-04",
        "2027-01-05",
        "2027-01-06",
        "2027-01-11",
        "2027-01-12",
    ]
    page = cast.owner.get("/year/").text
    assert "January 2027" in page
    assert page.count("data-day=") == 5


def test_a_bad_calendar_is_one_sentence_with_its_line_and_nothing_is_kept(cast, tmp_path):
    path = tmp_path / "school.ics"
    path.write_bytes(CALENDAR.replace(b"20270107", b"2027-1-7"))
    with path.open("rb") as file:
        page = cast.owner.post("/year/", {"grade": "0", "calendar": file})
    assert page.status_code == 400
    assert "Line 9 of the calendar" in page.text
    assert not SchoolYear.objects.exists()


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({}, "Choose a grade"),
        ({"grade": "7"}, "Choose a grade"),
        ({"grade": "0"}, "Say the first and the last day"),
        ({"grade": "0", "first": "2027-01-04", "last": "2027-01-01"}, "No year fits"),
        ({"grade": "0", "first": "2027-01-04", "last": "2028-02-01"}, "No year fits"),
        ({"grade": "0", "first": "2027-01-02", "last": "2027-01-03"}, "No year fits"),
        ({"grade": "0", "off": "2027-01-04\nsoon"}, "Line 2 of the days off, “soon”"),
        ({"grade": "0", "curriculum": "own"}, "Choose a grade"),
    ],
)
def test_what_cannot_be_laid_out_is_one_sentence_and_what_was_typed_stays(cast, given, said):
    page = cast.owner.post("/year/", given)
    assert page.status_code == 400
    assert said in page.text
    assert given.get("off", "") in page.text
    assert not SchoolYear.objects.exists()


def test_more_days_than_talks_leave_the_year_as_it_was(cast, year, monkeypatch):
    from waysaid.site.views import pages_year
    from waysaid.site.year_laid import TooManyDays

    before = texts(year)
    asked = (pages_year.Frame(0, Curriculum.CCSS), (date.min, date.max, frozenset()))
    said = pages_year._keep(cast.school_class.pk, *asked, TooManyDays())
    assert "not enough talks" in pages_year.told(said)
    assert texts(SchoolYear.objects.get()) == before


def test_the_year_is_shown_with_ideas_standards_and_the_talks_that_were(cast, year):
    page = cast.owner.get("/year/").text
    first = year.days.first()
    assert f'id="day-{first.date}"' in page
    assert "K.OA" in page
    today = timezone.localdate()
    if today.weekday() < 5:
        shown = page.split(f'id="day-{today}"')[1].split("</li>")[0]
        assert f"/talks/{cast.talk.pk}/back" in shown
        assert "no talk" not in shown
    assert "no talk" in page.split(f'id="day-{first.date}"')[1].split("</li>")[0]


def test_two_days_change_places_and_back(cast, year):
    one, other = coming(year)[:2]
    before = texts(year)
    exchange(cast, one, other)
    after = texts(year)
    assert (after[one.date], after[other.date]) == (before[other.date], before[one.date])
    assert "have changed places" in cast.owner.get("/year/").text
    assert "have changed places" not in cast.owner.get("/year/").text
    exchange(cast, one, other)
    assert texts(year) == before


def test_what_comes_before_what_it_builds_on_is_told(cast, year):
    days = coming(year)
    known = {row.idea: row for row in days}
    later, need = _needing(year, known)
    exchange(cast, known[need], known[later])
    assert "which it builds on" in cast.owner.get("/year/").text


def _needing(year, known):
    """Return an idea of a day to come and one that it needs, its first time still to come."""
    from waysaid.site.year_days import frame_of
    from waysaid.site.year_laid import ideas_of

    ideas = ideas_of(frame_of(year))
    for slug in known:
        for need in ideas[slug].needs:
            if need in known and known[need].date < known[slug].date:
                year.days.filter(idea=need).exclude(date=known[need].date).delete()
                year.days.filter(idea=slug).exclude(date=known[slug].date).delete()
                return slug, need
    raise AssertionError("no idea of these days needs another")


def test_locked_and_past_days_do_not_change_places(cast, year):
    one, other = coming(year)[:2]
    past = year.days.first()
    before = texts(year)
    press(cast, one, "lock")
    assert "is locked" in exchange(cast, one, other).text
    assert "is past" in exchange(cast, past, other).text
    assert "two school days" in exchange(cast, other, other).text
    assert texts(year) == before
    press(cast, one, "unlock")
    assert exchange(cast, one, other).status_code == 302


def test_a_past_day_is_not_locked(cast, year):
    past = year.days.first()
    press(cast, past, "lock")
    past.refresh_from_db()
    assert not past.locked


def test_a_day_is_left_out_and_taken_back(cast, year):
    day = coming(year)[0]
    press(cast, day, "skip")
    assert "no talk" in cast.owner.get(f"/year/day/{day.date}").text
    assert len(whole_year(year).talks) == year.days.count() - 1
    press(cast, day, "talk")
    assert len(whole_year(year).talks) == year.days.count()


def test_a_talk_that_is_not_kept_here_can_be_said(cast, year):
    past = year.days.first()
    press(cast, past, "talk")
    assert "There was no talk" in cast.owner.get(f"/year/day/{past.date}").text


def test_a_day_s_string_becomes_one_plan_that_follows_it(cast, year):
    one, other = coming(year)[:2]
    made = press(cast, one, "plan")
    plan = Plan.objects.get()
    assert made.headers["Location"] == f"/plans/{plan.pk}"
    assert [row["text"] for row in plan.problems] == one.problems
    assert plan.made_for == one.date
    press(cast, one, "plan")
    assert Plan.objects.count() == 1
    exchange(cast, one, other)
    plan.refresh_from_db()
    assert plan.made_for == other.date
    assert "Open the plan" in cast.owner.get(f"/year/day/{other.date}").text
    assert cast.owner.get(f"/plans/{plan.pk}").status_code == 200


def test_the_year_is_taken_along_as_icalendar_without_days_left_out(cast, year):
    press(cast, coming(year)[0], "skip")
    file = cast.owner.get("/year/calendar.ics")
    assert file.headers["Content-Type"].startswith("text/calendar")
    assert file.content.count(b"BEGIN:VEVENT") == year.days.count() - 1


def test_what_is_kept_is_what_was_laid_out(cast, year, rows):
    again = tuple(row_of(talk) for talk in whole_year(year).talks)
    assert again == rows[1]
    assert all(isinstance(row, Row) for row in again)


def test_anothers_year_is_not_there(cast, year):
    day = coming(year)[0]
    for path in ("/year/again", "/year/calendar.ics", f"/year/day/{day.date}"):
        assert cast.colleague.get(path).status_code == 404
        assert cast.panel.get(path).status_code == 403
        assert cast.outsider.get(path).status_code == 403
    asked = {"one": str(day.date), "other": str(coming(year)[1].date)}
    before = texts(year)
    for path in ("/year/swap", "/year/forget", f"/year/day/{day.date}", "/year/again"):
        assert cast.colleague.post(path, {**asked, "do": "skip"}).status_code == 404
    assert texts(year) == before
    assert "data-day=" not in cast.colleague.get("/year/").text


def test_a_day_that_is_no_school_day_is_not_there(cast, year):
    saturday = year.first + timedelta(days=5)
    for day in (saturday, "soon", "2026-99-99"):
        assert cast.owner.get(f"/year/day/{day}").status_code == 404
    asked = {"one": str(saturday), "other": str(coming(year)[0].date)}
    assert cast.owner.post("/year/swap", asked).status_code == 404


def test_the_year_goes_alone_and_with_its_class(cast, year):
    plan = press(cast, coming(year)[0], "plan").headers["Location"]
    cast.owner.post("/year/forget")
    assert not YearDay.objects.exists()
    assert cast.owner.get(plan).status_code == 200
    other = make_class(cast.school_class.owner, name="K")
    keep_laid(other, KINDER, (date(2027, 1, 4), date(2027, 1, 4), frozenset()), ())
    other.delete()
    assert not SchoolYear.objects.exists()


def test_the_board_shows_nothing_of_the_year(cast, year):
    talk = start_talk(cast.school_class, problems=["8 + 5"])
    name = cast.owner.get(f"/year/day/{coming(year)[0].date}").text
    idea = name.split('class="under">')[1].split("<")[0].split(" · ")[0].strip()
    assert idea
    assert idea not in cast.outsider.get(f"/board/{talk.board_token}").text


def test_a_string_that_a_later_version_cannot_read_breaks_no_page(cast, year):
    one, other = coming(year)[:2]
    year.days.filter(pk=one.pk).update(problems=["?? no problem"])
    year.days.filter(pk=other.pk).update(idea="an-idea-that-went")
    for path in ("/year/", "/year/again", "/year/calendar.ics", f"/year/day/{one.date}"):
        assert cast.owner.get(path).status_code == 200
    assert "an-idea-that-went" in cast.owner.get(f"/year/day/{other.date}").text
    assert press(cast, one, "plan").status_code == 302
    assert Plan.objects.get().problems == []
    assert len(whole_year(year).talks) == year.days.count() - 2
    assert 'id="moves"' in proposed(cast)


def test_the_record_of_the_class_holds_its_year(cast, year):
    kept = cast.owner.get("/class/record.json").json()["year"]
    assert kept["first"] == str(year.first)
    assert [day["date"] for day in kept["days"]] == [str(day) for day in texts(year)]


def test_laying_out_anew_begins_with_the_days_of_the_year_that_there_is(cast, year):
    year.off = ["2026-12-24", "2026-12-25", "2026-12-28"]
    year.save()
    page = cast.owner.get("/year/").text
    assert f'name="first" type="date" class="field" value="{year.first}"' in page
    assert "2026-12-24 – 2026-12-28</textarea>" in page


def test_the_next_talk_is_the_first_one_that_is_not_left_out_or_held(cast, year):
    first, second = coming(year)[:2]
    page = cast.owner.get("/year/").text
    assert f'class="button" href="/year/day/{first.date}"' in page
    press(cast, first, "skip")
    assert f'class="button" href="/year/day/{second.date}"' in cast.owner.get("/year/").text


def test_a_picture_is_drawn_on_its_day(cast, year):
    day = next(one for one in coming(year) if one.problems[0].startswith("image"))
    assert cast.owner.get(f"/year/day/{day.date}").text.count("<svg") == len(day.problems)
