"""What a year leaves goes by itself: it is said before, it is all gone, and the rest stays."""

from datetime import UTC, date, datetime, timedelta

import pytest
from django.utils import timezone

from tests.site.conftest import ON_POSTGRES
from waysaid.site import keeping
from waysaid.site.backups import backups, counted, make_backup, shelf
from waysaid.site.daily import back_up, let_go_what_is_due
from waysaid.site.keep_dates import LATEST_DAYS, SEEN_DAYS
from waysaid.site.keeping import due_in, let_go, say
from waysaid.site.models import Child, SchoolYear, Talk
from waysaid.site.people_models import Keeping
from waysaid.site.talks import start_talk

END = date(2026, 7, 31)
DUE = date(2026, 9, 29)


@pytest.fixture
def past(cast):
    """The cast in a year that ended on 31 July 2026; the other class began later."""
    then = datetime(2026, 5, 4, 9, tzinfo=UTC)
    Talk.objects.update(made_at=then)
    type(cast.school_class).objects.filter(pk=cast.school_class.pk).update(made_at=then)
    cast.school_class.refresh_from_db()
    yield cast
    for path in shelf().glob("*"):
        path.unlink()


def talk_on(school_class, day):
    talk = start_talk(school_class, problems=["8 + 7"])
    Talk.objects.filter(pk=talk.pk).update(made_at=datetime(*day.timetuple()[:3], 9, tzinfo=UTC))
    return talk


def test_nothing_is_said_before_its_time_and_nothing_goes(past):
    assert due_in(past.school_class, date(2026, 7, 31)) is None
    assert due_in(past.school_class, DUE - timedelta(31)) is None
    assert let_go(DUE - timedelta(31)) == 0


def test_it_is_said_thirty_days_before_and_goes_on_the_day_with_the_names(past):
    due = say(past.school_class, DUE - timedelta(30))
    assert (due.on, due.end, len(due.talks), len(due.children)) == (DUE, END, 1, 5)
    assert let_go(DUE - timedelta(1)) == 0
    assert let_go(DUE) == 1
    assert not Talk.objects.exists()
    assert not past.school_class.children.exists()
    assert Child.objects.count() == 5, "the other class stays"
    assert due_in(past.school_class, DUE + timedelta(1)) is None


def test_it_waits_a_week_from_its_being_seen_and_a_month_if_nobody_looks(past):
    assert let_go(DUE) == 0
    seen = DUE + timedelta(3)
    assert say(past.school_class, seen).on == seen + timedelta(SEEN_DAYS)
    Keeping.objects.update(said_on=None)
    assert let_go(DUE + timedelta(LATEST_DAYS - 1)) == 0
    assert let_go(DUE + timedelta(LATEST_DAYS)) == 1


def test_names_of_a_class_that_goes_on_stay_and_those_who_left_go(past):
    new = talk_on(past.school_class, date(2026, 9, 7))
    past.school_class.children.filter(name="Bram").update(active=False)
    say(past.school_class, DUE - timedelta(20))
    assert let_go(DUE) == 1
    assert list(Talk.objects.values_list("pk", flat=True)) == [new.pk]
    assert {each.name for each in past.school_class.children.all()} == {
        "Aroha", "Chidi", "Dunya", "Elif"
    }  # fmt: skip


def test_a_year_that_is_laid_out_keeps_the_names_and_says_when_it_ends(past):
    year = SchoolYear.objects.create(
        school_class=past.school_class, grade=2, curriculum="ccss",
        first=date(2025, 9, 1), last=date(2026, 6, 19),
    )  # fmt: skip
    assert say(past.school_class, date(2026, 7, 25)).on == date(2026, 6, 19) + timedelta(60)
    year.first, year.last = date(2026, 9, 1), date(2027, 6, 18)
    year.save()
    assert due_in(past.school_class, DUE).children == ()


def test_keeping_it_until_it_is_deleted_is_a_choice_but_not_beyond_the_schools(past, monkeypatch):
    page = past.owner.post("/class/record", {"days": "60", "ends": "07-31"})
    assert page.status_code == 302
    assert due_in(past.school_class, date(2030, 1, 1)) is None
    monkeypatch.setattr(keeping.settings, "KEEP_DAYS", 10)
    assert due_in(past.school_class, date(2026, 8, 5)).on == date(2026, 8, 10) + timedelta(30)
    past.owner.post("/class/record", {"on": "yes", "days": "90", "ends": "07-31"})
    assert "at most 10 days" in past.owner.get("/class/record").text


@pytest.mark.parametrize(
    ("days", "ends"), [("", "07-31"), ("-1", "07-31"), ("9999", "07-31"), ("60", "31.7.")]
)
def test_what_is_no_day_is_one_sentence_and_changes_nothing(past, days, ends):
    page = past.owner.post("/class/record", {"on": "yes", "days": days, "ends": ends})
    assert page.status_code == 400
    assert 'role="alert"' in page.text
    kept = keeping.keeping_of(past.school_class)
    assert (kept.days, kept.ends) == (60, "07-31")


def test_the_start_says_it_and_from_then_on_it_counts_as_said(cast):
    long_ago = timezone.now() - timedelta(days=500)
    Talk.objects.update(made_at=long_ago)
    page = cast.owner.get("/").text
    assert "will be deleted" in page
    assert "1 talk" in page
    assert Keeping.objects.get(school_class=cast.school_class).said_on == timezone.localdate()
    assert "will be deleted" in cast.owner.get("/class/record").text


@pytest.mark.skipif(ON_POSTGRES, reason="backups are of one machine's own file")
def test_the_days_work_lets_it_go_from_the_backups_too(past):
    make_backup(DUE - timedelta(5))
    say(past.school_class, DUE - timedelta(20))
    assert let_go_what_is_due(DUE)
    back_up(DUE)
    assert len(backups()) == 2
    for each in backups():
        assert counted(each.path) == {"talks": 0, "children": 5, "events": 0}
