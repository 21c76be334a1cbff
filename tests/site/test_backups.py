"""Backups: made by themselves, opened, let go, copied elsewhere, and gone back to."""

import json
import sqlite3
from datetime import date, timedelta

import pytest
from django.conf import settings
from django.db import connection

from tests.site.conftest import ON_POSTGRES
from tests.site.made import problem_id, sent, way
from waysaid.site.backups import (
    BadBackupError,
    Choice,
    backups,
    choose,
    copies_folder,
    counted,
    index,
    make_backup,
    shelf,
)
from waysaid.site.daily import back_up, backup_due
from waysaid.site.models import Child, Talk
from waysaid.site.record import at_hand
from waysaid.site.rewriting import go_back_to
from waysaid.site.talks import start_talk

pytestmark = pytest.mark.skipif(ON_POSTGRES, reason="backups are of one machine's own file")
TODAY = date(2026, 11, 27)


@pytest.fixture
def home(cast):
    """The cast; the shelf is empty before and after."""
    yield cast
    for path in shelf().glob("*"):
        path.unlink()


def test_a_day_has_one_backup_made_by_itself_opened_and_counted(home):
    assert backup_due(TODAY)
    back_up(TODAY)
    back_up(TODAY)
    (made,) = backups()
    assert not backup_due(TODAY)
    assert backup_due(TODAY + timedelta(1))
    assert counted(made.path) == {"talks": 1, "children": 10, "events": 2}
    assert index()[made.name]["opens"] == "yes"
    assert made.path.stat().st_mode & 0o077 == 0 or settings.DATA.stat().st_mode & 0o077 == 0


def test_nothing_is_made_without_a_class_or_where_it_is_switched_off(home):
    choose(Choice(on=False))
    assert not backup_due(TODAY)
    choose(Choice())
    home.school_class.owner.delete()
    home.outsider.get("/")
    for each in [*home.school_class._meta.model.objects.all()]:
        each.delete()
    assert not backup_due(TODAY)


def test_day_after_day_seven_and_four_stay(home, tmp_path):
    choose(Choice(folder=str(tmp_path)))
    for back in (60, 40, 33, 26, 25, 19, 12, *range(7, -1, -1)):
        make_backup(TODAY - timedelta(back))
    assert len(backups()) == 7 + 4
    assert [each.name for each in backups(copies_folder(str(tmp_path)))] == [
        each.name for each in backups()
    ]


def test_a_damaged_file_is_called_no_backup(home):
    made = make_backup(TODAY)
    content = bytearray(made.path.read_bytes())
    content[4096:8192] = b"\xff" * 4096
    made.path.write_bytes(content)
    with pytest.raises(BadBackupError):
        counted(made.path)
    before = list(Talk.objects.values_list("pk", flat=True))
    with pytest.raises(BadBackupError):
        go_back_to(made, TODAY)
    assert list(Talk.objects.values_list("pk", flat=True)) == before
    page = home.owner.post("/settings/backups/back", {"name": made.name})
    assert page.status_code == 400
    assert "does not open" in page.text


def test_going_back_takes_three_clicks_and_can_be_taken_back(home):
    problem = problem_id(home.talk)
    home.owner.post("/settings/backups", {"do": "now"})
    (made,) = backups()
    told = sent(way(problem, None, 0))
    home.owner.post(
        f"/talks/{home.talk.pk}/events", json.dumps(told), content_type="application/json"
    )
    start_talk(home.school_class, problems=["8 + 7"])
    later = Child.objects.create(school_class=home.school_class, name="Later", order=9)
    assert "backups/back" in home.owner.get("/settings/backups").text
    assert home.owner.get(f"/settings/backups/back?name={made.name}").status_code == 200
    assert home.owner.post("/settings/backups/back", {"name": made.name}).status_code == 302
    assert home.owner.get("/settings").status_code == 200
    assert Talk.objects.count() == 1
    assert at_hand(home.talk.pk).state.ways == ()
    assert not Child.objects.filter(name="Later").exists()
    newer = Child.objects.create(school_class=home.school_class, name="Newer", order=9)
    assert newer.pk > later.pk
    before = next(each for each in backups() if each.before)
    go_back_to(before, TODAY)
    assert Talk.objects.count() == 2
    assert Child.objects.filter(name="Later").exists()
    with connection.cursor() as cursor:
        cursor.execute("PRAGMA journal_mode")
        assert cursor.fetchone() == ("wal",)


def test_a_backup_lets_nobody_in(home):
    with sqlite3.connect(make_backup(TODAY).path) as kept:
        for table in ("django_session", "waysaid_site_opening", "waysaid_site_devicekey"):
            assert kept.execute(f"SELECT count(*) FROM {table}").fetchone() == (0,)
    kept.close()


@pytest.mark.parametrize("name", ["", "../waysaid.sqlite3", "waysaid-2026-01-01.sqlite3"])
def test_no_other_file_is_gone_back_to(home, name):
    assert home.owner.get("/settings/backups/back", {"name": name}).status_code == 404
    assert home.owner.post("/settings/backups/back", {"name": name}).status_code == 404


@pytest.mark.parametrize("folder", ["relative", "/no/such/folder", "DATA"])
def test_a_folder_that_takes_no_copies_is_one_sentence(home, folder):
    given = str(settings.DATA) if folder == "DATA" else folder
    page = home.owner.post("/settings/backups", {"do": "choose", "on": "yes", "folder": given})
    assert page.status_code == 400
    assert 'role="alert"' in page.text


def test_an_earlier_versions_backup_is_brought_up_to_date(home):
    made = make_backup(TODAY)
    with sqlite3.connect(made.path) as old:
        for table in ("handedover", "counted", "keeping"):
            old.execute(f"DROP TABLE waysaid_site_{table}")
        old.execute("DELETE FROM django_migrations WHERE app = 'waysaid_site' AND name >= '0012'")
    old.close()
    go_back_to(made, TODAY)
    assert home.owner.get("/").status_code in (200, 302, 403)
    assert Talk.objects.count() == 1
    for model in home.school_class._meta.apps.get_app_config("waysaid_site").get_models():
        assert model.objects.count() >= 0
