"""What went wrong is told on the page in one sentence, and kept without anybody's words."""

import logging

import pytest
from django.test import Client, override_settings

from waysaid.site.logs import LOG_FILE, QuietFile, WordlessFormatter, logging_settings
from waysaid.site.views import pages_start

WORDS = "Aroha said seven"


@pytest.fixture
def log(tmp_path):
    """Yield the file that the root logger writes to, as in a room."""
    handler = QuietFile(str(tmp_path))
    handler.setFormatter(WordlessFormatter())
    logging.getLogger().addHandler(handler)
    yield tmp_path / LOG_FILE
    logging.getLogger().removeHandler(handler)
    handler.close()


def breaking(*_given, **_named):
    try:
        raise KeyError(WORDS)
    except KeyError:
        raise ValueError(WORDS) from None


@override_settings(DEBUG=False)
def test_an_error_in_a_view_is_one_sentence_on_the_page_and_wordless_in_the_log(
    cast, log, monkeypatch, capfd
):
    monkeypatch.setattr(pages_start, "ready_problems", breaking)
    client = Client(raise_request_exception=False)
    client.cookies = cast.owner.cookies
    page = client.get(f"/start?said={WORDS}")
    kept = log.read_text(encoding="utf-8")
    assert page.status_code == 500
    assert "Something went wrong here. What was saved before is still saved." in page.text
    for text in (page.text, kept, *capfd.readouterr()):
        assert "Traceback" not in text
        assert WORDS not in text
        assert "Aroha" not in text
    assert "builtins.ValueError" in kept
    assert "waysaid.site.views.pages_start" in kept
    assert " 500\n" in kept


def test_the_token_of_a_board_is_not_logged(cast, log):
    assert cast.outsider.get("/board/not-a-token").status_code == 404
    kept = log.read_text(encoding="utf-8")
    assert " 404\n" in kept
    assert "not-a-token" not in kept


def test_the_log_stands_in_the_data_folder_and_not_on_the_terminal(tmp_path):
    settings = logging_settings(tmp_path, debug=False)
    assert settings["handlers"] == {
        "log": {
            "()": "waysaid.site.logs.QuietFile",
            "folder": str(tmp_path),
            "formatter": "wordless",
        }
    }


def test_a_folder_that_cannot_be_written_to_stops_nothing(tmp_path, capfd):
    handler = QuietFile(str(tmp_path / "not" / "there"))
    handler.handle(logging.LogRecord("x", logging.ERROR, "x.py", 1, WORDS, None, None))
    assert capfd.readouterr() == ("", "")


def test_errors_that_came_from_one_another_are_all_told_and_end():
    one, other = ValueError(WORDS), KeyError(WORDS)
    one.__cause__, other.__cause__ = other, one
    record = logging.LogRecord("x", logging.ERROR, "x.py", 1, WORDS, None, (ValueError, one, None))
    said = WordlessFormatter().format(record)
    assert said.count("builtins.") == 2
    assert WORDS not in said
