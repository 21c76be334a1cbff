"""A full disk and a read-only folder: a plain sentence, and never a false saved."""

import json
import os
import sqlite3
import stat
import subprocess
import sys
from pathlib import Path

import pytest
from django.db import DatabaseError, connection

from tests.plain_user import give, plain_argv
from tests.site.made import answer, problem_id, sent, way
from waysaid.site.models import EventRow
from waysaid.site.record import at_hand
from waysaid.site.views.failures import disk_refusal

sqlite_only = pytest.mark.skipif(
    os.environ.get("WAYSAID_TEST_DATABASE") == "postgres", reason="about SQLite's own file"
)


def post(cast, given):
    path = f"/talks/{cast.talk.pk}/events"
    return cast.owner.post(path, given, content_type="application/json")


@sqlite_only
def test_a_full_disk_says_so_and_what_was_saved_stays_saved(cast):
    problem = problem_id(cast.talk)
    saved = post(cast, sent(answer(problem, "66", 0))).json()["order"]
    with connection.cursor() as cursor:
        # What earlier tests deleted would be room in the file.
        cursor.execute("VACUUM")
        cursor.execute("PRAGMA page_count")
        pages = cursor.fetchone()[0]
        cursor.execute(f"PRAGMA max_page_count = {pages}")
    long = [way(problem, None, number, words="x" * 1900) for number in range(1, 60)]
    refused = post(cast, sent(*long))
    assert refused.status_code == 507
    assert "disk is full" in refused.json()["error"]
    assert "saved" not in refused.json()
    assert at_hand(cast.talk.pk).order == saved == EventRow.objects.filter(talk=cast.talk).count()
    with connection.cursor() as cursor:
        cursor.execute("PRAGMA max_page_count = 1073741823")
    again = post(cast, sent(*long))
    assert again.status_code == 200
    assert again.json()["order"] == saved + len(long)


@pytest.mark.parametrize(
    ("said", "status"),
    [
        ("database or disk is full", 507),
        ("could not extend file: No space left on device", 507),
        ("attempt to write a readonly database", 503),
        ("cannot execute INSERT in a read-only transaction", 503),
        ("unable to open database file", 503),
        ("database is locked", 503),
        ("server closed the connection unexpectedly", 503),
    ],
)
def test_each_refusal_of_a_database_is_one_sentence_that_says_not_saved(said, status):
    refusal = disk_refusal(DatabaseError(said))
    assert refusal.status == status
    assert refusal.sentence.startswith("Not saved")


WRITER = """
import json, sys
import django
django.setup(set_prefix=False)
from django.contrib.auth.models import User
from django.core.management import call_command
from django.test import Client
from tests.site.made import answer, make_class, problem_id, sent
from waysaid.site.models import Talk
from waysaid.site.talks import start_talk

what = sys.argv[1]
if what == "make":
    call_command("migrate", interactive=False, verbosity=0)
    owner = User.objects.create(username="owner")
    start_talk(make_class(owner), problems=["39 + 27"])
client = Client(raise_request_exception=False)
if what == "make":
    client.force_login(User.objects.get())
    print(client.cookies.output(header="", sep=";"))
else:
    client.cookies.load(sys.argv[2])
    event = sent({"sequence": 0, "kind": "turn-and-talk", "on": True})
    said = client.post("/talks/1/events", event, content_type="application/json")
    page = client.get("/")
    print(json.dumps({"status": said.status_code, "said": said.json(), "page": page.status_code}))
"""


def as_plain(folder: Path, *argv: str) -> str:
    environment = {
        **os.environ,
        "WAYSAID_DATA": str(folder / "data"),
        "HOME": str(folder),
        "PYTHONPATH": str(Path(__file__).parents[2]),
        "PYTHONDONTWRITEBYTECODE": "1",
    }
    done = subprocess.run(
        plain_argv([sys.executable, "-c", WRITER, *argv]),
        env=environment,
        cwd="/",
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout.strip().splitlines()[-1]


def close_to_writing(folder: Path, *, closed: bool) -> None:
    bits = stat.S_IRUSR | stat.S_IXUSR | (0 if closed else stat.S_IWUSR)
    for path in folder.iterdir():
        path.chmod(stat.S_IRUSR | (0 if closed else stat.S_IWUSR))
    folder.chmod(bits)


@sqlite_only
def test_a_read_only_folder_says_so_and_nothing_is_called_saved(plain_folder):
    data = plain_folder / "data"
    data.mkdir()
    give(data, plain_argv(["true"]))
    cookies = as_plain(plain_folder, "make")
    close_to_writing(data, closed=True)
    try:
        said = json.loads(as_plain(plain_folder, "post", cookies))
    finally:
        close_to_writing(data, closed=False)
    assert said["status"] == 503
    assert "cannot be written to" in said["said"]["error"]
    assert "saved" not in said["said"]
    with sqlite3.connect(data / "waysaid.sqlite3") as kept:
        rows = kept.execute("SELECT count(*) FROM waysaid_site_eventrow").fetchone()[0]
    kept.close()
    assert rows == 2
    again = json.loads(as_plain(plain_folder, "post", cookies))
    assert again["status"] == 200
    assert again["said"]["order"] == 3
