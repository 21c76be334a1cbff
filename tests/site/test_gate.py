"""Host and Origin are checked exactly, at each door, before anything else is asked."""

import http.client

import pytest

from waysaid.site.gate import Door, guarded, leads_to, own_door, refusal

pytestmark = pytest.mark.slow

OWN = own_door(8000)
SCHOOL = Door(frozenset({"http://10.0.0.5:8000"}), talk=7)


def scope(method="GET", path="/", **headers):
    pairs = [(name.replace("_", "-").encode(), value.encode()) for name, value in headers.items()]
    return {"type": "http", "method": method, "path": path, "headers": pairs}


def status(door, asked):
    refused = refusal(door, asked)
    return None if refused is None else refused[0]


@pytest.mark.parametrize("host", ["127.0.0.1:8000", "localhost:8000", "LOCALHOST:8000"])
def test_its_own_hosts_are_let_in(host):
    assert status(OWN, scope(host=host)) is None


@pytest.mark.parametrize(
    "host",
    ["", "127.0.0.1", "127.0.0.1:8001", "localhost:80", "evil.example", "127.0.0.1:8000.evil",
     "evil.example:8000", "[::1]:8000", "10.0.0.5:8000", "127.0.0.1:8000, evil.example"],
)  # fmt: skip
def test_any_other_host_is_refused(host):
    assert status(OWN, scope(host=host)) == 421


def test_a_request_without_a_host_or_with_two_is_refused():
    assert status(OWN, scope()) == 421
    doubled = scope(host="127.0.0.1:8000")
    doubled["headers"].append((b"Host", b"localhost:8000"))
    assert status(OWN, doubled) == 421


@pytest.mark.parametrize("method", ["POST", "PUT", "PATCH", "DELETE", "CONNECT", "BREW"])
@pytest.mark.parametrize(
    "origin", [None, "null", "", "http://evil.example", "http://127.0.0.1:8001",
               "https://127.0.0.1:8000", "http://localhost:8000", "http://127.0.0.1:8000/"]
)  # fmt: skip
def test_what_changes_something_must_come_from_the_very_same_origin(method, origin):
    given = {} if origin is None else {"origin": origin}
    assert status(OWN, scope(method, "/talks/1/events", host="127.0.0.1:8000", **given)) == 403


def test_its_own_origin_is_let_in():
    own = scope("POST", host="localhost:8000", origin="http://localhost:8000")
    assert status(OWN, own) is None


def test_a_stream_is_not_for_pages_of_other_origins():
    host = "127.0.0.1:8000"
    assert status(OWN, scope(path="/live/desk/1", host=host)) is None
    other = scope(path="/live/desk/1", host=host, origin="http://evil.example")
    assert status(OWN, other) == 403
    cross = scope(path="/live/desk/1", host=host, sec_fetch_site="cross-site")
    assert status(OWN, cross) == 403


@pytest.mark.parametrize(
    "path", ["/join", "/board/t", "/one/t", "/live/board/t", "/static/1/js/a.js", "/talks/7/desk",
             "/talks/7/events", "/talks/7/desk.json", "/talks/7/read", "/talks/7/links"]
)  # fmt: skip
def test_the_schools_door_leads_to_what_a_device_needs(path):
    assert leads_to(SCHOOL, path)


@pytest.mark.parametrize(
    "path", ["/", "/welcome", "/open/t", "/class", "/plans/", "/settings", "/start",
             "/talks/8/desk", "/talks/7/network", "/talks/7/pairing", "/talks/7/back", "/running",
             "/joining", "/talks/7/desk/", "/talks/77/desk", "/talks/7/desk\n"]
)  # fmt: skip
def test_the_schools_door_leads_nowhere_else(path):
    assert not leads_to(SCHOOL, path)
    assert status(SCHOOL, scope(path=path, host="10.0.0.5:8000")) == 404


def test_the_loopback_host_is_strange_at_the_schools_door():
    assert status(SCHOOL, scope(path="/join", host="127.0.0.1:8000")) == 421


def test_nobody_can_say_through_which_door_they_came():
    import asyncio

    seen = []

    async def app(scope, receive, send):
        seen.append(dict(scope["headers"]))

    async def ask(door, asked):
        await guarded(app, door)(asked, None, None)

    host = {"host": "127.0.0.1:8000", "x_waysaid_door": "7"}
    asyncio.run(ask(OWN, scope(**host)))
    asyncio.run(ask(SCHOOL, scope(path="/join", host="10.0.0.5:8000", x_waysaid_door="8")))
    assert b"x-waysaid-door" not in seen[0]
    assert seen[1][b"x-waysaid-door"] == b"7"


def test_the_running_server_refuses_a_strange_host_and_a_strange_origin(serve):
    server = serve()
    person = server.teacher()
    assert person.get("/", host="evil.example").status == 421
    assert person.get("/static/x.js", host="evil.example").status == 421
    assert person.post("/talks/1/events", {}, origin="http://evil.example").status == 403
    assert person.post("/talks/1/events", {}, origin=None).status == 403
    assert person.ask("GET", "/live/desk/1", origin="http://evil.example").status == 403
    assert person.ask("GET", "/live/desk/1", host="evil.example").status == 421


def test_the_running_server_refuses_a_post_without_the_pages_mark(serve):
    server = serve()
    person = server.teacher()
    person.get("/welcome")
    person.token = ""
    refused = person.post("/talks/1/events", {})
    assert refused.status == 403
    assert "error" in refused.json()


def test_a_stranger_on_the_machine_is_not_let_in(serve):
    server = serve()
    connection = http.client.HTTPConnection("127.0.0.1", server.port)
    connection.request("GET", "/")
    assert connection.getresponse().status == 403
    connection.close()
