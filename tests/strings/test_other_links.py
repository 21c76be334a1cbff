"""Links of pictures, comparisons and claims, which have no numbers or no number for an answer."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.strings.judge import true
from waysaid.number import Language, parse
from waysaid.strings import Link, LinkKind, Saying, leaves_of, link_says, links


def found(*given_texts: str) -> list[Link]:
    return list(links([parse(one) for one in given_texts], every=True))


def kinds(*given_texts: str) -> set[LinkKind]:
    return {link.kind for link in found(*given_texts)}


@pytest.mark.parametrize(
    ("first", "second", "kind"),
    [
        ("image frame 10: 7", "image frame 10: 8", LinkKind.ONE_CHANGES),
        ("image frame 20: 10 4", "image frame 20: 9 5", LinkKind.BOTH_CHANGE),
        ("image dice: 4 2", "image dice: 2 4", LinkKind.TURNED_AROUND),
        ("image dice: 3 2", "image dice: 6 4", LinkKind.DOUBLE_HALF),
        ("image array: 2 x 3", "image array: 3 x 3", LinkKind.ONE_CHANGES),
        ("image array: 2 x 3", "image array: 4 x 3", LinkKind.DOUBLE_HALF),
        ("image array: 2 x 6", "image array: 4 x 3", LinkKind.BOTH_CHANGE),
        ("image array: 3 x 4", "image array: 4 x 3", LinkKind.TURNED_AROUND),
        ("image dice: 3 2", "5 + 4", LinkKind.FEEDS_NEXT),
        ("image dice: 3 2", "4 + 1", LinkKind.SAME_TOTAL),
        ("0.65 ? 0.7", "0.7 ? 0.65", LinkKind.TURNED_AROUND),
        ("29 + 14 = 30 + 13 ?", "30 + 13 = 29 + 14 ?", LinkKind.TURNED_AROUND),
        ("3/4 ? 5/8", "3/4 + 1/8", LinkKind.SAME_NUMBER),
    ],
)
def test_each_kind_is_found(first, second, kind):
    assert kind in kinds(first, second)


@pytest.mark.parametrize(
    ("first", "second", "kind"),
    [
        ("image frame 10: 7", "image frame 20: 8", LinkKind.ONE_CHANGES),
        ("image dice: 3 4", "image array: 3 x 5", LinkKind.ONE_CHANGES),
        ("image frame 10: 7", "image pairs 10: 8", LinkKind.ONE_CHANGES),
        ("0.65 ? 0.7", "0.65 ? 0.7", LinkKind.TURNED_AROUND),
        ("29 + 14 = 30 + 13 ?", "30 + 13 = 14 + 29 ?", LinkKind.TURNED_AROUND),
    ],
)
def test_what_only_looks_like_a_link_is_not_found(first, second, kind):
    assert kind not in kinds(first, second)


def test_two_equal_sides_are_not_said_to_have_a_larger_one():
    turned = [one for one in found("3/4 ? 6/8", "6/8 ? 3/4") if one.kind is LinkKind.TURNED_AROUND]
    assert [one.saying for one in turned] == [Saying.CLAIM_TURNED]


def test_a_picture_has_no_numbers_to_mark_so_its_answer_is_marked():
    (link, *_) = found("image dice: 3 2", "image dice: 3 3")
    assert link.marks == ((0, "answer"), (1, "answer"))
    assert (
        link_says(link, Language.EN)
        == "2 went up 1 to 3 and the rest stayed, so the answer went up 1 too."
    )


def pictures():
    die = st.integers(1, 6)
    return st.one_of(
        st.integers(1, 10).map(lambda one: f"image frame 10: {one}"),
        st.tuples(st.integers(1, 10), st.integers(1, 10)).map(
            lambda both: f"image frame 20: {both[0]} {both[1]}"
        ),
        st.lists(die, min_size=1, max_size=3).map(
            lambda all_: f"image dice: {' '.join(map(str, all_))}"
        ),
        st.tuples(die, die).map(lambda both: f"image array: {both[0]} x {both[1]}"),
        st.tuples(die, die).map(lambda both: f"0.{both[0]} ? 0.{both[1]}"),
        st.tuples(die, die).map(lambda both: f"{both[0]} + {both[1]}"),
    )


@given(st.lists(pictures(), min_size=2, max_size=4))
def test_every_link_of_pictures_shows_true_equations_and_marks_what_is_there(given_texts):
    string = [parse(one) for one in given_texts]
    for link in links(string, every=True):
        assert link.shows
        assert all(true(shown) for shown in link.shows), link
        for row, place in link.marks:
            assert row in link.between
            assert place == "answer" or 0 <= place < len(leaves_of(string[row]))
