"""The first run asks for a class, its names, two languages, and keeps what was looked at."""

import pytest
from django.contrib.auth.models import User
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from waysaid.site.models import SchoolClass


@pytest.fixture
def newcomer(db):
    client = Client(raise_request_exception=False)
    client.force_login(User.objects.create(username="newcomer"))
    return client


def asked(**changed):
    given = {"name": "2B", "names": "Noor\nBen\nNoor", "language": "en", "step": "look"}
    return {**given, **changed}


def test_without_a_class_the_start_leads_to_the_first_run(newcomer):
    assert newcomer.get("/").headers["Location"] == "/welcome"


def test_the_list_is_looked_at_before_anything_is_kept(newcomer):
    page = newcomer.post("/welcome", asked())
    assert page.status_code == 200
    assert 'value="Noor 2"' in page.text
    assert not SchoolClass.objects.exists()


def test_what_she_changed_is_what_is_kept(newcomer):
    saved = newcomer.post("/welcome", asked(step="save", child=["Noor B.", "Ben", "", "Noor H."]))
    assert saved.headers["Location"] == "/"
    children = SchoolClass.objects.get().children
    assert list(children.values_list("name", flat=True)) == ["Noor B.", "Ben", "Noor H."]


def test_two_of_one_name_are_pointed_out_and_nothing_is_lost(newcomer):
    page = newcomer.post("/welcome", asked(step="save", child=["Noor", "Ben", "noor"]))
    assert page.status_code == 400
    assert "“noor”" in page.text
    assert 'value="Ben"' in page.text


def test_a_missing_name_keeps_everything_that_was_typed(newcomer):
    page = newcomer.post("/welcome", asked(name=" ", board_language="es"))
    assert page.status_code == 400
    assert 'role="alert"' in page.text
    assert "Noor\nBen\nNoor</textarea>" in page.text
    assert page.text.count('value="es" lang="es" selected') == 1


def test_going_back_from_the_list_keeps_it(newcomer):
    page = newcomer.post("/welcome", asked(step="back"))
    assert "Noor\nBen\nNoor</textarea>" in page.text


@pytest.mark.parametrize("encoding", ["utf-8", "latin-1"])
def test_a_file_is_read_and_shown(newcomer, encoding):
    content = "Nombre;Apellidos\nJosé;Paz\nZoë;Luz".encode(encoding)
    page = newcomer.post("/welcome", asked(names="", file=SimpleUploadedFile("c.csv", content)))
    assert 'value="José"' in page.text
    assert 'value="Zoë"' in page.text
    assert 'name="part" value="0" checked' in page.text


def test_a_picture_for_a_list_is_refused_in_one_sentence_and_nothing_is_lost(newcomer):
    bad = SimpleUploadedFile("c.csv", b"\x89PNG\0\0\0")
    page = newcomer.post("/welcome", asked(file=bad))
    assert page.status_code == 400
    assert "one name a line can" in page.text
    assert "Noor\nBen\nNoor</textarea>" in page.text


def test_too_many_names_are_counted_out(newcomer):
    names = "\n".join(f"Kid{'x' * at}" for at in range(61))
    page = newcomer.post("/welcome", asked(names=names))
    assert page.status_code == 400
    assert "There are 61 names here" in page.text


def test_a_name_cannot_become_markup(newcomer):
    page = newcomer.post("/welcome", asked(names="<b>Ana</b>"))
    assert "<b>Ana" not in page.text


def test_the_board_may_speak_another_language_than_the_desk(newcomer):
    newcomer.post("/welcome", asked(step="save", child=["Ana"], language="es", board_language="en"))
    made = SchoolClass.objects.get()
    assert (made.desk_language, made.board_language) == ("es", "en")
    assert made.norms[0].startswith("We ")
    assert '<html lang="es">' in newcomer.get("/").text
