"""Noticings in children's words: each is matched to the link it states, or kept as said.

`noticings.jsonl` was written by hand: the rows `before` ahead of the code, `after` when it was
planned and not yet run, `last`, `fresh` and `newest` each after the mends before, `untrue` in the
end. A row with no link states nothing true of its problems; one that is `missed` says why.
"""

import json
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.strings.strings_made import strings
from waysaid.number import Language, parse
from waysaid.strings import LinkKind, link_says, links, noticing
from waysaid.strings.noticed_words import LONGEST, read_vocabulary

ROWS = [
    json.loads(line)
    for line in Path(__file__).with_name("noticings.jsonl").read_text(encoding="utf-8").splitlines()
]


def matched(words: str, problems: list[str], language: str = "en"):
    return noticing(words, [parse(one) for one in problems], Language(language)).link


def named(row: dict[str, object]):
    missed = [pytest.mark.xfail(strict=True, reason=row["missed"])] if "missed" in row else []
    return pytest.param(row, id=f"{row['language']}: {row['words']}", marks=missed)


def among(row: dict[str, object], link) -> bool:
    return {"kind": link.kind.value, "between": list(link.between)} in row["links"]


@pytest.mark.parametrize("row", [named(row) for row in ROWS if row["links"]])
def test_a_noticing_that_states_a_link_is_matched_to_it(row):
    link = matched(row["words"], row["problems"], row["language"])
    assert link is not None
    assert among(row, link)


@pytest.mark.parametrize("row", [named(row) for row in ROWS if not row["links"]])
def test_a_noticing_that_states_nothing_true_is_kept_as_said(row):
    assert matched(row["words"], row["problems"], row["language"]) is None


def test_enough_noticings_are_written_by_hand():
    english = [row for row in ROWS if row["language"] == "en"]
    assert len(english) >= 60
    assert len(ROWS) - len(english) >= 40
    assert len(ROWS) - sum(bool(row["links"]) for row in ROWS) >= 40


def changed_numbers():
    for row in (row for row in ROWS if row["links"]):
        for found in re.finditer(r"\d+", row["words"]):
            for by in (-1, 1, 7):
                other = str(int(found[0]) + by)
                words = row["words"][: found.start()] + other + row["words"][found.end() :]
                yield row, words


def test_a_number_said_otherwise_makes_every_true_noticing_untrue():
    tried = list(changed_numbers())
    assert len(tried) > 150
    for row, words in tried:
        assert matched(words, row["problems"], row["language"]) is None, words


TENS = ["64 + 10", "64 + 20", "64 + 30"]
THREE = ["40 + 25", "37 + 25", "37 + 28"]
TURNED = ["6 + 9", "9 + 6"]


@pytest.mark.parametrize(
    ("problems", "words"),
    [
        (TURNED, ""),
        (TURNED, "!!! ???"),
        (TURNED, "six six six nine nine"),
        (TURNED, "the first one and the second one are hard"),
        (TURNED, "it stays the same"),
        (TENS, "it goes up"),
        (TENS, "the numbers are big"),
        (TENS, "I think it is 64"),
        (TENS, "74 84 94"),
        (TENS, "you can count by tens"),
        (THREE, "we moved on to the next one"),
        (THREE, "I took 37 and I took 25"),
        (THREE, "the answer to the first one is 65"),
        (THREE, "the first two are alike"),
        (THREE, "the 37 went up three"),
        (["5 + 5", "6 + 4", "7 + 3"], "I got ten"),
        (["5 + 5", "6 + 4", "7 + 3"], "ten is a friendly number"),
        (["40 + 25", "80 + 50"], "they are not doubled"),
        (["37 + 25"], "it comes back"),
        (["6 + 4", "10 - 6"], "10 take away 6 is harder than 6 plus 4"),
    ],
)
def test_words_that_claim_too_little_or_something_else_are_kept_as_said(problems, words):
    assert matched(words, problems) is None


@given(strings(), st.text(max_size=60), st.sampled_from(Language))
def test_any_words_are_matched_to_a_link_of_the_string_or_to_none(string, words, language):
    found = noticing(words, string, language)
    assert found.words == words
    assert found.link is None or found.link in links(string, every=True)


@given(strings(), st.sampled_from(Language))
def test_what_a_link_says_is_never_taken_for_a_link_that_is_not_true_of_the_words(string, language):
    for link in links(string, every=True):
        other = noticing(link_says(link, language), string, language).link
        if other is not None and other.kind is not link.kind:
            assert {link.kind, other.kind} <= ALIKE or link.kind is LinkKind.PATTERN


ALIKE = {LinkKind.SAME_NUMBER, LinkKind.SAME_TOTAL}
"""A number that comes back may also be an answer that does."""


def test_a_noticing_says_its_link_or_that_it_is_kept():
    said = noticing("they all make 10", [parse("5 + 5"), parse("6 + 4")], Language.EN)
    assert said.says(Language.EN) == "The answer is the same: 10."
    kept = noticing("they all make 11", [parse("5 + 5"), parse("6 + 4")], Language.ES)
    assert kept.says(Language.EN) == "Kept as said; not one that algebra proves."
    assert kept.says(Language.ES) == "Se guarda como se dijo; el álgebra no la demuestra."


def test_only_the_first_characters_are_read():
    words = "um " * LONGEST + "they all make 10"
    assert matched(words, ["5 + 5", "6 + 4"]) is None


@pytest.mark.parametrize(
    ("toml", "error", "says"),
    [
        ("pronouns = []\n[signs]", KeyError, "senses"),
        ('pronouns = []\n[senses]\nsideways = ["up"]\n[signs]', ValueError, "sideways"),
        ('pronouns = []\n[senses]\nup = ["x"]\ndown = ["x"]\n[signs]', ValueError, "two places"),
    ],
)
def test_words_that_cannot_be_used_are_refused(toml, error, says):
    with pytest.raises(error, match=says):
        read_vocabulary(toml)
