"""A class list as pasted: the names in order, and duplicates told apart."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.names import (
    LONGEST_NAME,
    MOST_NAMES,
    BadNamesError,
    clean,
    read_names,
    told_apart,
)


@pytest.mark.parametrize(
    ("pasted", "names"),
    [
        ("", ()),
        ("Noor\nMei\n\nOdd\n", ("Noor", "Mei", "Odd")),
        ("Noor, Mei, Odd", ("Noor", "Mei", "Odd")),
        ("Noor\tMei", ("Noor", "Mei")),
        ("1. Noor\n2) Mei\n- Odd", ("Noor", "Mei", "Odd")),
        ("Noor\nMei\nNoor\nnoor", ("Noor", "Mei", "Noor (2)", "noor (3)")),
        ("Name,Group\nNoor,red\nMei,blue", ("Noor", "Mei")),
        ("group;nombre\nred;Noor\nblue;Mei", ("Noor", "Mei")),
        ("Noor,red\nMei,blue", ("Noor", "Mei")),
        ("\ufeffNoor\r\nMei", ("Noor", "Mei")),
        ('"Noor";"Mei"', ("Noor", "Mei")),
    ],
)
def test_a_list_is_read_as_it_was_meant(pasted, names):
    assert read_names(pasted) == names


def test_a_list_longer_than_a_class_is_refused_with_its_length():
    with pytest.raises(BadNamesError, match=f"^{MOST_NAMES + 1}$"):
        read_names("\n".join(f"child {number}" for number in range(MOST_NAMES + 1)))


def test_a_name_that_is_there_already_is_told_apart():
    assert told_apart(["Noor"], ["noor", "Noor (2)"]) == ("Noor (3)",)


@given(st.text(max_size=200))
def test_any_text_gives_names_that_differ_and_fit(pasted):
    try:
        names = read_names(pasted)
    except BadNamesError:
        return
    assert len({name.casefold() for name in names}) == len(names)
    for name in names:
        assert 0 < len(name) <= LONGEST_NAME
        assert name.isprintable()
        assert name == name.strip()


@given(st.lists(st.text(min_size=1, max_size=70), max_size=30))
def test_names_keep_their_order_and_number(names):
    apart = told_apart(names)
    assert len(apart) == len(names)
    assert len({name.casefold() for name in apart}) == len(apart)
