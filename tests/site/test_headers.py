"""Every answer keeps the page to itself."""

import pytest

from waysaid.site.middleware import CONTENT_SECURITY_POLICY, SAFE_HEADERS

PAGES = ("/", "/class", "/welcome", "/join", "/open/x", "/nothing", "/start")


@pytest.mark.parametrize("path", PAGES)
def test_every_page_has_the_headers(cast, path):
    answered = cast.owner.get(path)
    for name, value in SAFE_HEADERS.items():
        assert answered.headers[name] == value, name
    assert answered.headers["Cache-Control"] == "no-store"


def test_the_policy_lets_in_nothing_from_elsewhere_and_no_inline_script():
    assert "default-src 'none'" in CONTENT_SECURITY_POLICY
    assert "require-trusted-types-for 'script'" in CONTENT_SECURITY_POLICY
    for never in ("unsafe", "http:", "https:", "*", "data:", "blob:"):
        assert never not in CONTENT_SECURITY_POLICY


def test_pages_with_a_token_in_their_address_tell_nobody(cast):
    for path in (f"/board/{cast.talk.board_token}", f"/one/{cast.talk.one_token}"):
        assert cast.outsider.get(path).headers["Referrer-Policy"] == "no-referrer"


def test_a_live_stream_has_them_too(serve):
    from tests.site.server import begin

    server = serve()
    desk = begin(server.teacher())
    stream = server.person().watch(f"/live/board/{desk['board_token']}")
    for name, value in SAFE_HEADERS.items():
        assert stream.response.headers[name] == value


def test_scripts_and_styles_may_be_kept_because_their_address_changes(serve):
    import re

    server = serve()
    page = server.teacher().get("/welcome").text
    address = re.search(r'href="(/static/[0-9a-f]{10}/[^"]+\.css)"', page)[1]
    style = server.person().get(address)
    assert style.status == 200
    assert "immutable" in style.headers["Cache-Control"]
    assert style.headers["Content-Security-Policy"] == CONTENT_SECURITY_POLICY
    old = re.sub(r"/static/[0-9a-f]{10}/", "/static/0000000000/", address)
    assert server.person().get(old).status == 404
