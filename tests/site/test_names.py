"""One child's name: made plain, and told apart from the others."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.names import LONGEST_NAME, clean, told_apart


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("  Noor  ", "Noor"),
        ("1. Noor", "Noor"),
        ("12) Mei", "Mei"),
        ("- Odd", "Odd"),
        ("• Ana  María", "Ana María"),
        ("Bram\tB.", "Bram B."),
        ("\u200b", ""),
        ("Noor" * 40, ("Noor" * 40)[:LONGEST_NAME]),
    ],
)
def test_a_name_is_made_plain(typed, name):
    assert clean(typed) == name


@given(st.text(max_size=200))
def test_any_text_gives_a_name_that_fits_a_list(typed):
    name = clean(typed)
    assert len(name) <= LONGEST_NAME
    assert name.isprintable()
    assert name == name.strip()


def test_a_name_that_is_there_already_is_told_apart():
    assert told_apart(["Noor", "Mei", "noor"]) == ("Noor", "Mei", "noor (2)")
    assert told_apart(["Noor"], ["noor", "Noor (2)"]) == ("Noor (3)",)


@given(st.lists(st.text(min_size=1, max_size=70), max_size=30))
def test_names_told_apart_keep_their_order_and_differ(names):
    apart = told_apart(names)
    assert len(apart) == len(names)
    assert len({name.casefold() for name in apart}) == len(apart)
    for given_name, name in zip(names, apart, strict=True):
        assert name.startswith(given_name[:50])


def test_names_that_look_alike_are_told_apart():
    assert told_apart([clean("Zo\u00eb"), clean("Zoe\u0308")]) == ("Zo\u00eb", "Zo\u00eb (2)")
