"""Settings: languages, where the data is, a copy that holds, old talks that may go."""

import sqlite3
from datetime import timedelta

import pytest
from django.utils import timezone

from tests.site.conftest import ON_POSTGRES
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.talks import start_talk


def test_the_language_of_the_pages_is_chosen(cast):
    cast.owner.post("/settings", {"language": "es"})
    page = cast.owner.get("/settings").text
    assert '<html lang="es">' in page
    assert "Ajustes" in page
    cast.school_class.refresh_from_db()
    assert (cast.school_class.desk_language, cast.school_class.board_language) == ("es", "en")


def test_an_unknown_language_changes_nothing(cast):
    cast.owner.post("/settings", {"language": "xx"})
    assert '<html lang="en">' in cast.owner.get("/settings").text


@pytest.mark.skipif(ON_POSTGRES, reason="a copy is of one machine's own file")
def test_a_copy_opens_has_the_talk_and_lets_nobody_in(cast, tmp_path):
    copy = cast.owner.post("/settings/copy")
    assert copy.headers["Content-Disposition"].startswith("attachment")
    path = tmp_path / "copy.sqlite3"
    path.write_bytes(copy.content)
    with sqlite3.connect(path) as kept:
        assert kept.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert kept.execute("SELECT count(*) FROM waysaid_site_eventrow").fetchone() == (2,)
        for table in ("django_session", "waysaid_site_opening", "waysaid_site_devicekey"):
            assert kept.execute(f"SELECT count(*) FROM {table}").fetchone() == (0,)
    kept.close()


@pytest.mark.skipif(not ON_POSTGRES, reason="on a database server its keeper makes the copies")
def test_a_school_server_has_no_copy_to_give(cast):
    assert cast.owner.post("/settings/copy").status_code == 404


def test_a_copy_is_not_given_to_a_link(cast):
    assert cast.owner.get("/settings/copy").status_code == 405


def test_only_ones_own_old_talks_go(cast):
    new = start_talk(cast.school_class, problems=["8 + 7"])
    theirs = start_talk(
        SchoolClass.objects.exclude(pk=cast.school_class.pk).get(), problems=["8 + 7"]
    )
    old = timezone.now() - timedelta(days=200)
    Talk.objects.filter(pk__in=[cast.talk.pk, theirs.pk]).update(made_at=old)
    assert cast.talk.title in cast.owner.get("/settings/old-talks?days=180").text
    cast.owner.post("/settings/old-talks", {"days": 180})
    assert set(Talk.objects.values_list("pk", flat=True)) == {new.pk, theirs.pk}


def test_a_number_of_days_that_is_not_offered_takes_the_longest(cast):
    Talk.objects.update(made_at=timezone.now() - timedelta(days=100))
    cast.owner.post("/settings/old-talks", {"days": 1})
    assert Talk.objects.filter(pk=cast.talk.pk).exists()
