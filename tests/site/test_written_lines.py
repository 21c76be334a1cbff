"""A line written down by hand: who said it, and what; or one sentence and nothing taken."""

from unicodedata import category

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import Language
from waysaid.site.around import OnList
from waysaid.site.ears import Ears
from waysaid.site.wording import Wording
from waysaid.site.written_lines import BadLineError, What, line_read, who_and_said
from waysaid.site.written_talk import section_read
from waysaid.talk import body_from_json

LISTED = tuple(
    OnList(str(nth), name, active=name != "Nadia")
    for nth, name in enumerate(
        ("Noor", "Nora", "Mei", "Ravi", "José", "Ana Maria", "Noor (2)", "Nadia", "Nan")
    )
)


def read(typed):
    line = line_read(typed, LISTED)
    like = f" like {line.like.name}" if line.like else ""
    return [each.name for each in line.who], f"{line.what.value}{like}", line.said


@pytest.mark.parametrize(
    ("typed", "who", "what", "said"),
    [
        ("Noor, 37+3=40+22", ["Noor"], "way", "37+3=40+22"),
        ("mei: 30+20, 7+5", ["Mei"], "way", "30+20, 7+5"),
        ("jose, +3 40", ["José"], "way", "+3 40"),
        ("R, I did thirty, then ten", ["Ravi"], "way", "I did thirty, then ten"),
        ("Mei & Ravi, 37+25", ["Mei", "Ravi"], "way", "37+25"),
        ("Mei and Ravi and Nora, 37+25", ["Mei", "Ravi", "Nora"], "way", "37+25"),
        ("Mei y Ravi + Nora / José, 37+25", ["Mei", "Ravi", "Nora", "José"], "way", "37+25"),
        ("Ana Maria, 37+25", ["Ana Maria"], "way", "37+25"),
        ("Noor (2), 62", ["Noor (2)"], "answer", "62"),
        ("30+20, 7+5, 50+12", [], "way", "30+20, 7+5, 50+12"),
        ("37+3=40+22", [], "way", "37+3=40+22"),
        (", I counted", [], "way", "I counted"),
        ("I did ten and ten, then two", [], "way", "I did ten and ten, then two"),
        ("Mei, 62", ["Mei"], "answer", "62"),
        ("Mei, =62", ["Mei"], "answer", "62"),
        ("Mei, 5 r 1", ["Mei"], "answer", "5 r 1"),
        ("62, 52", [], "answer", "62, 52"),
        ("= Ravi, Mei", ["Ravi", "Mei"], "agreed", ""),
        ("=Ravi", ["Ravi"], "agreed", ""),
        ("Ravi, same", ["Ravi"], "agreed", ""),
        ("Ravi, =", ["Ravi"], "agreed", ""),
        ("Ravi, igual que José", ["Ravi"], "agreed like José", ""),
        ("Ravi & Mei, same as Noor", ["Ravi", "Mei"], "agreed like Noor", ""),
        ("Ravi, same but with 20", ["Ravi"], "way", "same but with 20"),
        ("Ravi, same as it was but back", ["Ravi"], "way", "same as it was but back"),
        ("Ravi, pass", ["Ravi"], "passed", ""),
        ("Ravi, -", ["Ravi"], "passed", ""),
        ("Ravi & Mei, pasa", ["Ravi", "Mei"], "passed", ""),
        ("Na, 62", ["Nan"], "answer", "62"),
        ("Nadia, 62", ["Nadia"], "answer", "62"),
    ],
)
def test_a_line_says_who_and_what(typed, who, what, said):
    assert read(typed) == (who, what, said)


@pytest.mark.parametrize(
    ("typed", "named"),
    [
        ("Nour, 37+3", "Nour"),
        ("No, 37+3", "Noor or Nora"),
        ("Mei & Nour, 37+3", "Nour"),
        ("= Nour", "Nour"),
        ("Ravi, same as Nour", "Nour"),
        ("Noor", "Noor"),
        ("Noor,", "comma"),
        (", pass", "pass"),
        ("=", "Noor"),
        ("x" * 2001, "2000"),
    ],
)
def test_a_line_that_cannot_be_taken_down_is_one_sentence_that_says_what_would_fit(typed, named):
    with pytest.raises(BadLineError) as raised:
        line_read(typed, LISTED)
    assert named in str(raised.value)
    assert str(raised.value).endswith(".")


PIECES = st.sampled_from(
    ("Noor", "Mei", "R", "Xu", ",", ":", "=", " ", "37+3", "62", "same", "as", "pass", "-", "&")
)


@given(st.lists(PIECES, max_size=8).map("".join) | st.text(max_size=30))
def test_whatever_is_typed_is_taken_with_its_words_or_refused(typed):
    try:
        line = line_read(typed, LISTED)
    except BadLineError:
        return
    assert set(line.who) <= set(LISTED)
    kept = "".join(" " if category(one) == "Cc" else one for one in typed)
    assert line.said in " ".join(kept.split())
    assert (line.what in (What.WAY, What.ANSWER)) >= bool(line.said)


def test_what_was_noticed_is_split_the_same_way():
    assert who_and_said("Mei, it goes up, by one", LISTED)[1] == "it goes up, by one"
    assert who_and_said(", up, by one", LISTED) == ((), "up, by one")


ONE = st.sampled_from(
    (
        "Mei, 37+3=40+22", "Ravi & José, 30+20 7+5", "= Mei", "Nan, same", "Ravi, same as Mei",
        "62", "Mei, 52", "Nora, pass", ", I just saw it", "Nour, 37+3", "Noor", "", "  ",
    )
)  # fmt: skip


@given(st.lists(ONE, max_size=12))
def test_every_line_is_taken_or_marked_in_its_order_and_no_word_of_a_way_is_lost(lines):
    row, heard = {"id": "p", "text": "37 + 25"}, (Wording(Language.EN), Ears(Language.EN))
    section = section_read(row, "\n".join(lines), LISTED, heard)
    there = [nth for nth, line in enumerate(lines, 1) if line.strip()]
    assert [line.number for line in section.shown] == there
    taken = [lines[line.number - 1] for line in section.shown if not line.wrong]
    said = [each for each in taken if "37+3" in each or "30+20" in each or "saw" in each]
    told = [each["words"] for each in section.events if each["kind"] == "way-shared"]
    assert told == [each.partition(", ")[2] for each in said]
    assert len({each["id"] for each in section.events if "id" in each}) == sum(
        "id" in each for each in section.events
    )
    for nth, event in enumerate(section.events):
        assert body_from_json({**event, "sequence": nth})


def test_signs_that_no_database_keeps_are_left_out():
    assert line_read("Mei, I \x00saw\x07 it", LISTED).said == "I saw it"
