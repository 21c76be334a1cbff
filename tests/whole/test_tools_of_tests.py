"""The tests' own server, browser and plain user do what their users rely on."""

import http.server
import os
import sys
import threading

import pytest

import tests.sweep
from tests.browser import ELSEWHERE
from tests.plain_user import as_plain_user

PAGE = b"<!doctype html><html lang=en><title>t</title><main><h1>t</h1><img src=x.png></main>"


@pytest.fixture
def small_site():
    class Handler(http.server.BaseHTTPRequestHandler):
        def do_GET(self):
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.end_headers()
            self.wfile.write(PAGE)

        def log_message(self, *_):
            pass

    with http.server.ThreadingHTTPServer(("127.0.0.1", 0), Handler) as server:
        thread = threading.Thread(target=server.serve_forever)
        thread.start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
        thread.join()


@pytest.mark.postgres
def test_each_test_gets_an_empty_database(postgres_url, fresh_postgres_url):
    import psycopg

    with psycopg.connect(postgres_url) as one, psycopg.connect(fresh_postgres_url) as other:
        one.execute("CREATE TABLE kept (n int)")
        assert other.execute("SELECT to_regclass('kept')").fetchone() == (None,)
        assert other.execute("SHOW server_encoding").fetchone() == ("UTF8",)


def test_a_plain_user_cannot_write_where_it_may_only_read(plain_folder):
    write = "import sys, pathlib; pathlib.Path(sys.argv[1]).write_text('x')"
    argv = [sys.executable, "-c", write]
    environment = {"HOME": str(plain_folder), "PATH": os.environ["PATH"]}
    assert as_plain_user([*argv, str(plain_folder / "one")], env=environment).returncode == 0
    plain_folder.chmod(0o500)
    refused = as_plain_user([*argv, str(plain_folder / "two")], env=environment)
    assert refused.returncode != 0
    assert "PermissionError" in refused.stderr


@pytest.mark.browser
def test_the_browser_reaches_this_machine_and_no_other(browser_page, watch, small_site):
    browser_page.goto(small_site)
    assert watch.elsewhere == []
    fetched = browser_page.evaluate(
        "() => fetch('http://example.org/').then(() => 'reached', () => 'stopped')"
    )
    assert fetched == "stopped"
    assert watch.elsewhere == ["http://example.org/"]
    watch.elsewhere.clear()


@pytest.mark.browser
def test_the_accessibility_check_sees_a_picture_without_words(browser_page, axe, small_site):
    browser_page.goto(small_site)
    assert [fault.split(":")[0] for fault in axe(browser_page)] == ["image-alt"]
    assert axe(browser_page, without=("image-alt",)) == []


@pytest.mark.parametrize(
    ("address", "other"),
    [
        ("http://127.0.0.1:8000/x", False),
        ("http://localhost/", False),
        ("ws://[::1]:9/live", False),
        ("data:image/png;base64,", False),
        ("https://example.org/", True),
        ("http://localhost.example.org/", True),
        ("http://127.0.0.1.example.org/", True),
        ("wss://example.org/127.0.0.1/", True),
    ],
)
def test_other_machines_are_told_from_this_one(address, other):
    assert bool(ELSEWHERE.match(address)) is other


def test_a_property_says_in_the_report_how_often_it_was_tried():
    kept = []
    note = tests.sweep.sweep_note.__wrapped__(lambda name, value: kept.append((name, value)))
    note("cases are counted", 12, exceptions=1)
    assert kept == [("waysaid-sweep", "12|1|cases are counted")]
