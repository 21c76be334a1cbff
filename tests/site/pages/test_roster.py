"""A class list as teachers have it, read without a surprise."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.decoding import BadListError, decoded
from waysaid.site.names import MOST_NAMES, BadNamesError, clean
from waysaid.site.roster import (
    EVERY_PART,
    FAMILY,
    GIVEN,
    PREFERRED,
    read_roster,
    same_twice,
)

WORDS = st.text(st.characters(categories=("L",)), min_size=1, max_size=12).filter(
    lambda word: word.casefold() not in GIVEN | FAMILY | PREFERRED
)
"""Words that are no heading of a list."""


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("Ana\nBen\nCho", ("Ana", "Ben", "Cho")),
        ("\ufeffAna\r\n\r\n Ben \n", ("Ana", "Ben")),
        ("1. Ana\n2) Ben\n- Cho\n• Dov", ("Ana", "Ben", "Cho", "Dov")),
        ("Ana, Ben, Cho", ("Ana", "Ben", "Cho")),
        ("Ana Sofía\nBen", ("Ana Sofía", "Ben")),
        ("* * Ana\n- 2. Ben", ("Ana", "Ben")),
        ("Name\nAna\nBen", ("Ana", "Ben")),
        ("First name,Last name\nAna,García\nBen,Okoro", ("Ana", "Ben")),
        ("Apellidos;Nombre\nGarcía;Ana\nOkoro;Ben", ("Ana", "Ben")),
        ("García, Ana\nOkoro, Ben", ("Ana", "Ben")),
        ("17\tAna\t2B\n18\tBen\t2B", ("Ana", "Ben")),
        ('"García, Ana";2B\n"Okoro, Ben";2B', ("García, Ana", "Okoro, Ben")),
        ("Ana, Ben, Cho\nDov, Eli", ("Ana", "Ben", "Cho", "Dov", "Eli")),
        ("", ()),
        ("\n , ;\n", ()),
    ],
)
def test_a_list_is_read_as_it_was_meant(text, names):
    assert read_roster(text).names == names


def test_two_of_one_name_get_the_first_letter_of_their_family_names():
    roster = read_roster("Haddad, Noor\nBauer, Noor\nOkoro, Ben")
    assert roster.names == ("Noor H.", "Noor B.", "Ben")
    assert roster.changed == {0, 1}


def test_as_many_letters_are_taken_as_tell_them_apart():
    roster = read_roster("Last,First\nBauer,Noor\nBecker,Noor")
    assert roster.names == ("Noor Ba.", "Noor Be.")


def test_without_family_names_they_get_numbers():
    assert read_roster("Noor\nnoor\nBen").names == ("Noor", "noor 2", "Ben")


def test_the_part_that_is_the_name_can_be_chosen():
    text = "Ana,García\nBen,Okoro"
    assert read_roster(text).parts == ("Ana", "García")
    assert read_roster(text, 0).names == ("Ana", "Ben")
    assert read_roster(text, 1).names == ("García", "Okoro")
    assert read_roster(text, EVERY_PART).names == ("Ana", "García", "Ben", "Okoro")


def test_a_part_that_is_not_there_counts_as_no_choice():
    assert read_roster("García, Ana\nOkoro, Ben", 9).names == ("Ana", "Ben")


def test_more_names_than_a_class_has_are_refused_with_their_number():
    with pytest.raises(BadNamesError, match=str(MOST_NAMES + 1)):
        read_roster("\n".join(f"N{'a' * at}" for at in range(MOST_NAMES + 1)))


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "latin-1", "cp1252"])
def test_files_of_old_and_new_programs_are_read(encoding):
    assert decoded("José\nZoë".encode(encoding)) == "José\nZoë"


@pytest.mark.parametrize("content", [b"\x89PNG\r\n\x1a\n\0\0", b"a" * 200_001, b"\xff\xfe\xff"])
def test_what_is_no_list_is_refused(content):
    with pytest.raises(BadListError):
        decoded(content)


@given(st.lists(st.tuples(WORDS, WORDS), max_size=30))
def test_no_two_names_are_ever_the_same_and_none_is_lost(pairs):
    roster = read_roster("\n".join(f"{family}; {name}" for name, family in pairs), 1)
    assert same_twice(roster.names) == ""
    if len(pairs) > 1:
        assert len(roster.names) == len(pairs)


@given(st.text(max_size=300))
def test_any_text_gives_clean_names_that_differ(text):
    try:
        names = read_roster(text).names
    except BadNamesError:
        return
    assert same_twice(names) == ""
    assert all(name == clean(name) for name in names)
