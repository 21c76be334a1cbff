"""Any string at all is heard without a fault, and with bounded work: counted, never timed."""

import sys
from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.hearing.problems import problems
from tests.hearing.soup import LONGEST, strings
from waysaid.hearing import Reading, read
from waysaid.hearing.spoken import search
from waysaid.number import Language, parse

PARTS = 5
GONE_ON_FROM = 1_000
"""The most states that a line may be heard on from: 24 for each of 40 words, and the last 24;
a longer line keeps fewer for each of its 90 words at most."""
MADE = 10_000
"""The most states that may be made of them: over twice the most of 1,250 strings."""
CALLS = 2_000_000
"""The most calls of functions, of all the work of a line: over four times the most of 40 of the
longest."""


def is_whole(reading: Reading, line: str) -> bool:
    """Tell whether a reading keeps the words, and points into them alone."""
    ends = [told.span for told in reading.told] + list(reading.dropped)
    inside = all(0 <= start <= end <= len(line) for start, end in ends)
    return inside and reading.words == line and 0 <= reading.sure <= 100


@pytest.fixture
def work(monkeypatch):
    """Count the states that the search goes on from, and those it makes."""
    counter: Counter[str] = Counter()
    best, keep = search._best, search._keep

    def counting_best(beam, width):
        found = best(beam, width)
        counter["gone on from"] += len(found)
        return found

    def counting_keep(beam, *made):
        counter["made"] += 1
        keep(beam, *made)

    monkeypatch.setattr(search, "_best", counting_best)
    monkeypatch.setattr(search, "_keep", counting_keep)
    return counter


@pytest.mark.parametrize("part", range(PARTS))
def test_any_string_is_heard_with_bounded_work(part, work):
    listened = 0
    for problem, line, language in strings(part, count(test=5_000, sweep=100_000) // PARTS):
        work.clear()
        assert is_whole(read(parse(problem), line, language), line), line
        listened += work["made"] > 0
        assert work["gone on from"] <= GONE_ON_FROM, line
        assert work["made"] <= MADE, line
    assert listened > 0


def test_all_the_work_of_the_longest_strings_is_bounded():
    listed = [one for one in strings(98, count(test=800, sweep=20_000)) if len(one[1]) == LONGEST]
    assert listed
    for problem, line, language in listed:
        calls = 0

        def seen(_frame, event, _argument):
            nonlocal calls
            calls += event in ("call", "c_call")

        asked = parse(problem)
        before = sys.getprofile()
        sys.setprofile(seen)
        try:
            read(asked, line, language)
        finally:
            sys.setprofile(before)
        assert 0 < calls <= CALLS, line


@given(problems, st.text(max_size=LONGEST), st.sampled_from(Language))
@settings(max_examples=count(test=200, sweep=5_000), deadline=None)
def test_any_text_is_heard(problem, line, language):
    assert is_whole(read(problem, line, language), line)


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize(
    "line", ["", " ", "\n", "\ud800", "\x00", "é́́" * 600, "🧮" * 500, "٣ + ٤", "२५"]
)
def test_strings_that_have_no_words_are_kept(line, language):
    reading = read(parse("37 + 25"), line, language)
    assert is_whole(reading, line)
    assert reading.told == ()
    assert reading.answer is None
