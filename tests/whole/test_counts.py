"""The size of a run decides how many cases are tried, and nothing else does."""

import pytest

from tests.counts import Size, count, size


@pytest.mark.parametrize(
    ("word", "expected"), [("quick", 200), ("test", 2000), ("sweep", 50000), ("", 2000)]
)
def test_each_size_has_its_count(monkeypatch, word, expected):
    monkeypatch.setenv("WAYSAID_COUNTS", word)
    assert count(test=2000, sweep=50000) == expected


def test_a_quick_count_is_never_none(monkeypatch):
    monkeypatch.setenv("WAYSAID_COUNTS", "quick")
    assert count(test=3, sweep=9) == 1


def test_without_the_variable_the_size_is_test(monkeypatch):
    monkeypatch.delenv("WAYSAID_COUNTS", raising=False)
    assert size() is Size.TEST


def test_an_unknown_size_says_what_is_accepted(monkeypatch):
    monkeypatch.setenv("WAYSAID_COUNTS", "huge")
    with pytest.raises(ValueError, match="quick, test, sweep"):
        size()
