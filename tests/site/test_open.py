"""The one-time address: it opens the session once, and then no more."""

from urllib.parse import urlsplit

import pytest
from django.test import Client

from waysaid.site.models import Opening
from waysaid.site.opening import make_opening, use_opening


@pytest.fixture
def client(db):
    return Client()


def test_the_address_opens_a_session_and_dies(client):
    token = make_opening()
    assert client.get(f"/open/{token}").status_code == 302
    assert client.get("/welcome").status_code == 200
    assert Client().get(f"/open/{token}").status_code == 403


def test_whoever_was_let_in_may_open_the_used_address_again(client):
    token = make_opening()
    client.get(f"/open/{token}")
    again = client.get(f"/open/{token}")
    assert (again.status_code, again.headers["Location"]) == (302, "/")


def test_a_wrong_token_opens_nothing(client):
    make_opening()
    assert client.get("/open/x").status_code == 403
    assert client.get("/welcome").status_code == 403


def test_looking_without_opening_uses_nothing_up(client):
    token = make_opening()
    assert client.head(f"/open/{token}").status_code == 200
    assert client.get(f"/open/{token}").status_code == 302


def test_only_a_hash_is_kept(client):
    token = make_opening()
    assert token not in Opening.objects.get().token_hash
    assert use_opening(token)
    assert not Opening.objects.exists()


def test_the_session_cookie_is_for_this_browser_and_site_alone(client):
    client.get(f"/open/{make_opening()}")
    cookie = next(c for name, c in client.cookies.items() if name.startswith("waysaid_"))
    assert cookie["httponly"]
    assert cookie["samesite"] == "Strict"


def test_a_second_browser_cannot_use_the_printed_address(serve):
    server = serve()
    server.teacher()
    assert server.person().get(urlsplit(server.address).path).status == 403
