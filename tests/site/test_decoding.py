"""The signs of old files: names come out as they were written."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.decoding import BadListError, decoded, likeness

OLD = ("cp1252", "latin-1", "mac-roman")
UNICODE = ("utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be")
NAMES = (
    *("José", "María", "Zoë", "Nuño", "Ángel", "Íñigo", "Úrsula", "Sofía", "Raúl", "Óscar"),
    *("François", "Chloë", "Jürgen", "Håkon", "Søren", "Agnès", "Noël", "Begoña", "Iñaki"),
    *("Álvaro", "Éva", "Martín", "Belén", "Andrés", "Lucía", "Ramón", "Inés", "Jesús"),
)
lists = st.lists(st.sampled_from(NAMES), min_size=1, max_size=30)


@pytest.mark.parametrize("encoding", OLD)
@pytest.mark.parametrize("name", NAMES)
def test_one_name_alone_is_enough_to_tell(name, encoding):
    assert decoded(f"{name}\n".encode(encoding)) == f"{name}\n"


@given(lists, st.sampled_from(OLD + UNICODE), st.sampled_from(("\n", "\r\n", "\r")))
def test_any_list_of_such_names_is_read_in_every_set_of_signs(names, encoding, end):
    text = end.join((*names, "O’Neil" if encoding not in ("latin-1",) else "Odd", ""))
    assert decoded(text.encode(encoding)) == text


@given(st.text(st.characters(max_codepoint=0x24F, exclude_categories=["Cc"]), max_size=60))
def test_what_is_unicode_is_never_taken_for_anything_else(text):
    whole = text + "\n"
    assert decoded(whole.encode()) == whole.removeprefix("\ufeff")
    assert decoded(whole.encode("utf-16")) == whole


@given(st.binary(max_size=200))
def test_any_bytes_give_a_text_or_are_refused(content):
    try:
        text = decoded(content)
    except BadListError:
        return
    assert "\0" not in text


def test_capitals_first_and_small_letters_within_are_likely():
    assert likeness("Ángel") > likeness("çngel")
    assert likeness("María") > likeness("Mar’a")
    assert likeness("O’Neil") > likeness("OíNeil")
