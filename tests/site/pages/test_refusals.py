"""What cannot be done is told in one plain sentence, in both languages."""

import pytest
from django.test import Client, RequestFactory
from django.utils import translation

from waysaid.site.views.failures import server_error


@pytest.mark.parametrize(
    ("language", "sentence"),
    [("en", "There is nothing at this address."), ("es", "No hay nada en esta dirección.")],
)
def test_an_address_with_nothing_behind_it_is_told(cast, language, sentence):
    cast.owner.post("/settings", {"language": language})
    page = cast.owner.get("/no/such/page")
    assert page.status_code == 404
    assert f"<h1>{sentence}</h1>" in page.text


def test_a_form_without_its_mark_is_told_and_changes_nothing(cast):
    client = Client(enforce_csrf_checks=True)
    client.cookies = cast.owner.cookies
    page = client.post("/class", {"do": "add", "names": "Zora"})
    assert page.status_code == 403
    assert "This page is out of date; load it again." in page.text
    assert not cast.school_class.children.filter(name="Zora").exists()


def test_what_nobody_foresaw_is_told_without_its_insides(cast):
    request = RequestFactory().get("/plans/")
    request.user = cast.school_class.owner
    with translation.override("en"):
        try:
            raise ZeroDivisionError("a secret inside")
        except ZeroDivisionError:
            page = server_error(request)
    assert page.status_code == 500
    assert b"What was saved before is still saved." in page.content
    assert b"secret" not in page.content


def test_a_device_with_a_wrong_code_is_asked_again(cast):
    page = cast.outsider.post("/join", {"code": "123456"})
    assert page.status_code == 403
    assert 'role="alert"' in page.text
    assert 'name="code"' in page.text


def test_a_form_with_far_too_much_in_it_is_told(cast):
    page = cast.owner.post("/class", {f"name-{at}": "x" for at in range(600)})
    assert page.status_code == 400
    assert "<h1>This is more than Waysaid takes at once.</h1>" in page.text
