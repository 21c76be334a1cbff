"""A school's OneRoster file: the students of a class by what they are called, and nothing else."""

import io
import zipfile

import pytest
from django.conf import settings

from tests.site.rosters import PRIVATE, school_file, table
from waysaid.site import one_roster
from waysaid.site.gate import LARGEST_BODY
from waysaid.site.one_roster import OneRosterError, is_zip, read_one_roster


def read(**changed):
    return {each.title: each.students for each in read_one_roster(school_file(**changed))}


def test_of_version_two_a_child_has_the_name_she_goes_by():
    found = read(version="1.2")
    assert list(found) == ["2B (B-2)", "3A"]
    assert [given for given, _ in found["2B (B-2)"]] == ["Aroha", "Pepe", "Wren", "Wren"]
    assert found["3A"] == (("Ravi", "Sen"),)


def test_of_version_one_only_whoever_is_a_student_is_taken():
    found = read(version="1.1")
    assert [given for given, _ in found["2B (B-2)"]] == ["Aroha", "José", "Wren", "Wren"]


def test_nothing_else_of_a_row_is_kept():
    kept = repr(read_one_roster(school_file()))
    assert not any(each in kept for each in (*PRIVATE, "u1", "k1", "x-u1", "Tall", "Switched"))


def test_columns_may_come_in_any_order_and_the_tables_in_a_folder():
    users = [dict(reversed(row.items())) for row in _rows()]
    assert read(users=table(users), folder="export/2026/") == read()


def _rows():
    from tests.site.rosters import people

    return people("1.2")


@pytest.mark.parametrize("name", ["classes", "enrollments", "users"])
@pytest.mark.parametrize(
    "content",
    [None, b"", b"a,b\r\n1,2\r\n", b"\xff\xfe\x00", b'"open', b"x" * 200_000],
    ids=["missing", "empty", "other columns", "other signs", "open quote", "huge field"],
)
def test_a_table_that_cannot_be_used_is_named(name, content):
    with pytest.raises(OneRosterError) as refused:
        read(**{name: content})
    assert refused.value.what in (f"{name}.csv", "classes.csv")


def test_a_file_without_a_single_class_of_students_is_refused():
    with pytest.raises(OneRosterError) as refused:
        read(enrollments=b"classSourcedId,userSourcedId,role\r\nk9,u1,student\r\n")
    assert refused.value.what == "classes.csv"


def test_a_bomb_is_refused_before_it_is_read(monkeypatch):
    bomb = b"sourcedId,givenName,familyName\r\n" + b"0,0,0\r\n" * 3_000_000
    content = school_file(users=bomb)
    assert len(content) < 100_000
    read_of = []
    monkeypatch.setattr(zipfile.ZipFile, "open", lambda *given: read_of.append(given))
    with zipfile.ZipFile(io.BytesIO(content)) as parts:
        assert one_roster._bomb(parts.getinfo("users.csv"))
        assert not one_roster._bomb(parts.getinfo("classes.csv"))
    assert read_of == []


def test_a_table_that_holds_more_than_it_says_is_stopped(monkeypatch):
    monkeypatch.setattr(one_roster, "LARGEST_TABLE", 300)
    monkeypatch.setattr(one_roster, "_bomb", lambda table: False)
    with pytest.raises(OneRosterError):
        read()


def test_two_tables_of_one_name_and_too_many_parts_are_refused():
    for parts in (
        (("a/users.csv", b""), ("b/users.csv", b"")),
        [(f"{n}", b"") for n in range(201)],
    ):
        written = io.BytesIO(school_file())
        with zipfile.ZipFile(written, "a") as made:
            for name, content in parts:
                made.writestr(name, content)
        with pytest.raises(OneRosterError):
            read_one_roster(written.getvalue())


def test_a_zip_that_is_cut_or_larger_than_a_school_needs_is_refused(monkeypatch):
    whole = school_file()
    for content in (
        whole[:-30],
        whole[: len(whole) // 2],
        b"PK\x03\x04",
        b"PK\x05\x06" + b"\0" * 18,
    ):
        assert is_zip(content)
        with pytest.raises(OneRosterError):
            read_one_roster(content)
    monkeypatch.setattr(one_roster, "LARGEST_ZIP", len(whole) - 1)
    with pytest.raises(OneRosterError):
        read_one_roster(whole)
    assert not is_zip(b"Ana\nBen")


def test_a_locked_table_is_refused():
    content = bytearray(school_file())
    at = content.index(b"PK\x01\x02")
    while at >= 0:
        content[at + 8] |= 1
        at = content.find(b"PK\x01\x02", at + 4)
    with pytest.raises(OneRosterError):
        read_one_roster(bytes(content))


def test_no_file_that_is_taken_is_written_to_the_disk_on_its_way():
    assert LARGEST_BODY <= settings.FILE_UPLOAD_MAX_MEMORY_SIZE
    assert one_roster.LARGEST_ZIP + 100_000 < LARGEST_BODY
    assert settings.FILE_UPLOAD_HANDLERS[0].endswith("MemoryFileUploadHandler")
