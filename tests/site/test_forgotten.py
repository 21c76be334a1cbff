"""A child who is erased is in no byte of what is kept: database, log, backups, copies, exports."""

import io
import json
import sqlite3
from contextlib import redirect_stdout
from datetime import date
from pathlib import Path

import pytest
from django.conf import settings
from django.core.management import call_command
from django.db import connection

from tests.site.conftest import ON_POSTGRES
from tests.site.made import NAMES, problem_id, sent, way
from waysaid.site.backups import (
    BadFolderError,
    Choice,
    backups,
    choose,
    copies_folder,
    counted,
    make_backup,
    shelf,
)
from waysaid.site.erasing import forget_child, mentions_of
from waysaid.site.evidence import past_of_class
from waysaid.site.exporting import child_record, class_record
from waysaid.site.models import Child, EventRow
from waysaid.site.record import at_hand

NAME = "Xanthippe Q"
OLD_NAME = "Wilhelmina"
ID = 987_654_321
sqlite_only = pytest.mark.skipif(ON_POSTGRES, reason="about the files of one machine")


@pytest.fixture
def kept(cast, tmp_path):
    """The cast with a child whose name and id nothing else has, said and written in many places."""
    school_class = cast.school_class
    child = Child.objects.create(pk=ID, school_class=school_class, name=OLD_NAME, order=9)
    child.name = NAME
    child.save()
    Child.objects.create(pk=ID + 1000, school_class=school_class, name="Later", order=10)
    problem = problem_id(cast.talk)
    school_class.own_names = {"bridge": f"{NAME}’s way"}
    school_class.norms = [f"We listen to {NAME}"]
    school_class.save()
    school_class.plans.create(
        title=f"what {NAME} said", problems=[{"id": "p", "text": "8 + 7", "why": f"{NAME} asked"}],
        questions=[f"Ask {NAME.upper()} again?"],
    )  # fmt: skip
    events = (
        way(problem, child.key, 0, words=f"{NAME}'s way"),
        way(problem, None, 1, words=f"like {NAME}, and xanthippes are not meant"),
        {"sequence": 2, "kind": "way-agreed", "way": "way-1", "child": child.key},
        {"sequence": 3, "kind": "passed", "problem": problem, "child": child.key},
        {"sequence": 4, "kind": "noticed", "id": "n", "child": None, "words": f"as {NAME} has it"},
    )
    answered = cast.owner.post(
        f"/talks/{cast.talk.pk}/events", json.dumps(sent(*events)), content_type="application/json"
    )
    assert answered.status_code == 200
    assert any(each.child == str(ID) for each in past_of_class(school_class).shown)
    yield cast
    for path in shelf().glob("*"):
        path.unlink()


def found_in(content: bytes) -> list[str]:
    """Say what of the child is in some bytes: the name in any case, the id as text or as bytes."""
    marks = {
        "name": NAME.lower().encode(),
        "id": str(ID).encode(),
        "old name": OLD_NAME.lower().encode(),
    }
    lower = content.lower()
    told = [what for what, mark in marks.items() if mark in lower]
    return told + (["id in bytes"] if ID.to_bytes(4, "big") in content else [])


def everything() -> dict[str, bytes]:
    """Return every file of the data folder; on PostgreSQL the rows as a dump has them too."""
    files = [path for path in Path(settings.DATA).rglob("*") if path.is_file()]
    told = {str(path): path.read_bytes() for path in files}
    if ON_POSTGRES:
        out = io.StringIO()
        with redirect_stdout(out):
            call_command("dumpdata", "waysaid_site", "auth", "sessions")
        told["dump"] = out.getvalue().encode()
    return told


def traces() -> dict[str, list[str]]:
    return {where: found for where, each in everything().items() if (found := found_in(each))}


@pytest.mark.parametrize("said_too", [False, True])
def test_no_byte_tells_of_a_child_who_is_erased(kept, said_too, tmp_path):
    if not ON_POSTGRES:
        choose(Choice(folder=str(tmp_path)))
        for day in (1, 2):
            make_backup(date(2026, 11, day))
        make_backup(date(2026, 11, 2), before=True)
        assert len(backups()) == len(backups(copies_folder(str(tmp_path)))) == 3
    assert traces()
    child = Child.objects.get(pk=ID)
    assert len(mentions_of(child)) == 8
    assert forget_child(child, said_too=said_too, in_words=True) == []
    assert traces() == {}
    elsewhere = {path.name: found_in(path.read_bytes()) for path in tmp_path.rglob("*.sqlite3")}
    assert len(elsewhere) in (0, 3)
    assert {where: found for where, found in elsewhere.items() if found} == {}
    kept.school_class.refresh_from_db()
    assert found_in(json.dumps(class_record(kept.school_class)).encode()) == []
    state = at_hand(kept.talk.pk).state
    assert len(state.ways) == (1 if said_too else 2)
    assert any("like a child, and xanthippes" in each.words for each in state.ways)
    assert state.noticings[0].words == "as a child has it"
    for path in (f"/talks/{kept.talk.pk}/back", f"/talks/{kept.talk.pk}/desk", "/class", "/plans/"):
        assert kept.owner.get(path).status_code == 200
    if not ON_POSTGRES:
        assert all(counted(each.path)["children"] == 5 + 1 + 5 for each in backups())


def test_a_name_that_was_written_stays_where_the_teacher_says_so(kept):
    forget_child(Child.objects.get(pk=ID), said_too=False, in_words=False)
    assert NAME in json.dumps(list(EventRow.objects.values_list("body", flat=True)))
    assert not EventRow.objects.filter(body__child=str(ID)).exists()


def test_other_words_and_the_parts_that_nobody_wrote_stay_as_they_are(cast):
    child = Child.objects.create(school_class=cast.school_class, name="Bridge", order=9)
    problem = problem_id(cast.talk)
    told = way(problem, child.key, 0, words="bridges and Bridget")
    cast.owner.post(
        f"/talks/{cast.talk.pk}/events", json.dumps(sent(told)), content_type="application/json"
    )
    assert mentions_of(child) == []
    forget_child(child, said_too=False, in_words=True)
    shared = EventRow.objects.get(kind="way-shared").body
    assert (shared["family"], shared["words"]) == ("bridge", "bridges and Bridget")


@sqlite_only
def test_a_backup_that_cannot_be_changed_is_named(kept):
    made = make_backup(date(2026, 11, 1))
    made.path.write_bytes(b"no database")
    left = forget_child(Child.objects.get(pk=ID), said_too=False, in_words=True)
    assert left == [str(made.path)]


@sqlite_only
def test_a_folder_that_was_taken_away_is_named(kept, tmp_path):
    stick = tmp_path / "stick"
    stick.mkdir()
    choose(Choice(folder=str(stick)))
    make_backup(date(2026, 11, 1))
    stick.rename(tmp_path / "gone")
    assert forget_child(Child.objects.get(pk=ID), said_too=True) == [str(stick)]
    with pytest.raises(BadFolderError):
        choose(Choice(folder="relative"))
    with pytest.raises(BadFolderError):
        choose(Choice(folder=str(settings.DATA)))


@sqlite_only
def test_a_backup_of_an_earlier_version_is_changed_too(kept):
    made = make_backup(date(2026, 11, 1))
    with sqlite3.connect(made.path) as old:
        for table in ("invitation", "member"):
            old.execute(f"DROP TABLE waysaid_site_{table}")
        old.execute("DELETE FROM django_migrations WHERE name = '0010_members'")
    old.close()
    assert forget_child(Child.objects.get(pk=ID), said_too=False, in_words=True) == []
    assert found_in(made.path.read_bytes()) == []
    assert connection.vendor == "sqlite"


def test_a_childs_record_has_all_of_hers_and_nobody_elses_name(kept):
    child = Child.objects.get(pk=ID)
    problem = problem_id(kept.talk)
    told = way(problem, child.key, 5, words="Bram showed me, and Aroha's was the same")
    corrected = {"sequence": 6, "kind": "way-edited", "way": "way-5", "words": "with Elif"}
    kept.owner.post(
        f"/talks/{kept.talk.pk}/events",
        json.dumps(sent(told, corrected)),
        content_type="application/json",
    )
    pages = [
        kept.owner.get(f"/class/child/{ID}/record").text,
        json.dumps(kept.owner.get(f"/class/child/{ID}/record.json").json()),
    ]
    for page in pages:
        assert NAME in page
        assert "another child showed me, and another child" in page
        assert "with another child" in page
        assert "39 + 27" in page
        assert [name for name in NAMES if name in page] == []
    kinds = [each["kind"] for each in child_record(child)["talks"][0]["events"]]
    assert kinds == ["way-shared", "way-agreed", "passed", "way-shared", "way-edited"]
    assert len(child_record(child)["written"]) == 8


def test_the_page_before_erasing_shows_where_the_name_was_written(kept):
    page = kept.owner.get(f"/class/child/{ID}/forget").text
    assert f"as {NAME} has it" in page
    assert 'name="in_words" value="yes" checked' in page
    went = kept.owner.post(f"/class/child/{ID}/forget", {"what": "name", "in_words": "yes"})
    assert went.status_code == 302
    assert traces() == {}


@sqlite_only
def test_a_backup_of_other_data_keeps_its_child_with_the_same_id(kept):
    made = make_backup(date(2026, 11, 1))
    with sqlite3.connect(made.path) as other:
        other.execute("UPDATE waysaid_site_schoolclass SET made_at = '2020-01-01 09:00:00'")
    other.close()
    assert forget_child(Child.objects.get(pk=ID), said_too=True, in_words=True) == []
    assert found_in(made.path.read_bytes())


@sqlite_only
def test_copies_in_a_folder_chosen_before_are_changed_too(kept, tmp_path):
    for name in ("first", "second"):
        (tmp_path / name).mkdir()
        choose(Choice(folder=str(tmp_path / name)))
        make_backup(date(2026, 11, 1))
    choose(Choice())
    copies = list(tmp_path.rglob("*.sqlite3"))
    assert len(copies) == 2
    assert forget_child(Child.objects.get(pk=ID), said_too=False, in_words=True) == []
    assert [found_in(path.read_bytes()) for path in copies] == [[], []]
