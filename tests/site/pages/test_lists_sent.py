"""Names for a class as they are sent: looked at, told apart, and the rest of a file forgotten."""

import csv
import io

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from hypothesis import given
from hypothesis import strategies as st

from tests.site.pages.test_welcome import newcomer  # noqa: F401
from tests.site.rosters import CLASSES, PRIVATE, school_file, table
from tests.site.test_decoding import NAMES, UNICODE
from waysaid.site.decoding import decoded
from waysaid.site.models import Child, SchoolClass
from waysaid.site.roster import names_alone, read_roster

TABLE = (
    "Student ID,Birthday,Last Name,First Name,Preferred Name,Email,Notes\n"
    '17,1999-09-09,Adler,Wren,,mail@example.org,"two\nlines, and more"\n'
    "18,1999-09-09,Paz,José,Pepe,mail@example.org,\n"
    "19,1999-09-09,Brook,Wren,,mail@example.org,\n"
)


def sent(client, content, name="list.csv", **more):
    file = SimpleUploadedFile(name, content)
    return client.post("/class", {"do": "add", "step": "look", "file": file, **more})


def names(school_class):
    return list(school_class.children.values_list("name", flat=True))


children = st.lists(
    st.tuples(st.sampled_from(NAMES), st.sampled_from(("Paz", "Núñez", "Adler", "Sen", "O’Hara"))),
    min_size=2,
    max_size=20,
    unique_by=lambda child: child[0],
)
HEADINGS = {
    "given": ("First Name", "NOMBRE", "given name", "givenName"),
    "family": ("Last name", "Apellidos", "SURNAME"),
    "born": ("Birthday",),
    "mail": ("Email",),
    "note": ("Notes",),
}


@given(
    children,
    st.permutations(list(HEADINGS)),
    st.sampled_from((*UNICODE, "cp1252", "mac-roman")),
    st.sampled_from(",;\t"),
    st.data(),
)
def test_a_table_in_any_order_and_any_signs_gives_the_names_that_are_in_it(
    listed, order, signs, mark, data
):
    end = data.draw(st.sampled_from(("\n", "\r\n")))
    heads = [data.draw(st.sampled_from(HEADINGS[each])) for each in order]
    written = io.StringIO(newline="")
    table = csv.writer(written, delimiter=mark, lineterminator=end)
    table.writerow(heads)
    for given_name, family in listed:
        row = {"given": given_name, "family": family, "born": "2018-02-03", "mail": "a@b.example"}
        table.writerow([{**row, "note": f"a{end}b"}[each] for each in order])
    kept = names_alone(decoded(written.getvalue().encode(signs)))
    assert read_roster(kept).names == tuple(name for name, _ in listed)
    assert not any(each in kept for each in ("2018", "@"))


def test_of_a_table_only_what_may_be_names_is_kept():
    kept = names_alone(TABLE)
    assert kept.splitlines()[0] == "Last Name,First Name,Preferred Name"
    assert not any(each in kept for each in ("1999", "@", "17", "lines"))
    assert read_roster(kept).names == ("Wren A.", "Pepe", "Wren B.")


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("Ana\nBen\n", "Ana\nBen\n"),
        ("Ana;1\nBen;2", "Ana\nBen\n"),
        ("1;2\n3;4", "1;2\n3;4"),
        ("Ana\ta@b\nBen\tc@d", "Ana\nBen\n"),
        ('Name,Id\n"Ana ""A""",1', 'Name\n"Ana ""A"""\n'),
        ('Ana,17\n"Ben,18', 'Ana,17\n"Ben,18'),
        ("", ""),
    ],
)
def test_columns_with_digits_and_addresses_are_left_out(text, kept):
    assert names_alone(text) == kept


def test_names_for_the_class_are_looked_at_and_those_on_the_list_left_out(cast):
    before = names(cast.school_class)
    page = sent(cast.owner, TABLE.encode())
    assert page.status_code == 200
    assert names(cast.school_class) == before
    assert not any(each in page.text for each in ("1999-09-09", "mail@example.org", "lines, and"))
    page = sent(cast.owner, b"Bram\nZora\n")
    assert "left out: Bram" in " ".join(page.text.split())
    assert 'value="Zora"' in page.text
    cast.owner.post("/class", {"do": "add", "step": "save", "child": ["Zora", " "]})
    assert names(cast.school_class) == [*before, "Zora"]


def test_of_a_schools_file_the_class_is_chosen_and_only_names_are_taken(cast):
    page = sent(cast.owner, school_file(), "school.zip")
    assert "2B (B-2)" in page.text
    assert "3A" in page.text
    assert "Pepe" not in page.text
    held = page.context["held"]
    page = cast.owner.post("/class", {"do": "add", "step": "look", "held": held, "section": "0"})
    assert [name for name, _ in page.context["names"]] == ["Pepe", "Wren A.", "Wren B."]
    assert page.context["known"] == ["Aroha"]
    assert not any(each in page.text for each in (*PRIVATE, "Adler", "Tane"))


def test_another_teacher_cannot_choose_from_it_and_a_strange_choice_is_refused(cast):
    held = sent(cast.owner, school_file(), "school.zip").context["held"]
    given = {"do": "add", "step": "look", "held": held}
    assert cast.colleague.post("/class", {**given, "section": "0"}).context["names"] == []
    for section in ("2", "-1", "x", "٣", ""):
        assert cast.owner.post("/class", {**given, "section": section}).status_code == 400


def test_the_first_run_takes_a_schools_file_too(newcomer):  # noqa: F811
    asked = {"name": "Ours", "language": "es", "step": "look"}
    file = SimpleUploadedFile("school.zip", school_file())
    page = newcomer.post("/welcome", {**asked, "file": file})
    again = dict(page.context["again"])
    assert again == asked
    page = newcomer.post("/welcome", {**again, "held": page.context["held"], "section": "1"})
    assert 'value="Ravi"' in page.text
    assert not SchoolClass.objects.exists()


def test_a_file_with_one_class_needs_no_choice(newcomer):  # noqa: F811
    one = school_file(classes=table(CLASSES[1:2]))
    file = SimpleUploadedFile("school.zip", one)
    page = newcomer.post("/welcome", {"name": "3A", "language": "en", "step": "look", "file": file})
    assert 'value="Ravi"' in page.text


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"PK\x03\x04", "This zip cannot be read"),
        (school_file(users=None), "“users.csv” in it cannot be used"),
        (b"\x89PNG\0\0", "one name a line can"),
        (b"a," * 70_000 + b"b\n" + b'"' + b"x" * 140_000 + b'"', "one name a line can"),
    ],
)
def test_what_is_no_list_is_told_in_a_sentence_and_keeps_nothing(cast, content, said):
    before = Child.objects.count()
    page = sent(cast.owner, content)
    assert page.status_code == 400
    assert said in page.text
    assert Child.objects.count() == before


def test_a_class_with_too_many_children_is_told(cast, newcomer):  # noqa: F811
    rows = [
        {"sourcedId": f"u{n}", "givenName": f"N{'a' * n}", "familyName": "F"} for n in range(70)
    ]
    enrolled = [
        {"classSourcedId": "k2", "userSourcedId": f"u{n}", "role": "student"} for n in range(70)
    ]
    content = school_file(users=table(rows), enrollments=table(enrolled))
    assert "There are 70 names" in sent(cast.owner, content).text
    file = SimpleUploadedFile("school.zip", content)
    page = newcomer.post("/welcome", {"name": "x", "language": "en", "step": "look", "file": file})
    assert "There are 70 names" in page.text
