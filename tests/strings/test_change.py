"""What if we did that to all of them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.strings.products_made import strings as product_strings
from tests.strings.strings_made import strings
from waysaid.number import BLANK, Language, Problem, parse, solve, text
from waysaid.strings import (
    Change,
    ChangeError,
    Does,
    Refusal,
    leaves_of,
    what_if,
    with_leaves,
)


def changed(amount: int, places: set[tuple[int, int]], *given_texts: str) -> list[str]:
    string = [parse(one) for one in given_texts]
    return [text(one) for one in what_if(string, Change(amount, frozenset(places)))]


def test_ten_is_added_to_the_first_number_of_each():
    places = {(0, 0), (1, 0), (2, 0)}
    assert changed(10, places, "8 + 2", "8 + 5", "7 + 6") == ["18 + 2", "18 + 5", "17 + 6"]


def test_both_numbers_of_a_difference_can_change_alike():
    assert changed(5, {(0, 0), (0, 1)}, "62 - 25", "41 - 38") == ["67 - 30", "41 - 38"]


def test_a_number_of_an_equation_can_change_and_its_blank_stays():
    assert changed(-2, {(0, 2)}, "7 + _ = 12") == ["7 + _ = 10"]


@pytest.mark.parametrize(
    ("amount", "place", "problem", "why"),
    [
        (1, (1, 0), "7 + 5", Refusal.NO_PLACE),
        (1, (-1, 0), "7 + 5", Refusal.NO_PLACE),
        (1, (0, 2), "7 + 5", Refusal.NO_PLACE),
        (1, (0, -1), "7 + 5", Refusal.NO_PLACE),
        (1, (0, 1), "7 + _ = 12", Refusal.BLANK),
        (-6, (0, 1), "7 + 5", Refusal.BELOW_ZERO),
        (3, (0, 1), "7 - 5", Refusal.ANSWER_OUTSIDE),
        (1, (0, 0), "600000 + 400000", Refusal.ANSWER_OUTSIDE),
        (6, (0, 0), "7 + _ = 12", Refusal.ANSWER_OUTSIDE),
        (-2, (0, 1), "8 / 2", Refusal.ANSWER_OUTSIDE),
    ],
)
def test_a_change_that_cannot_be_made_is_refused_in_one_sentence(amount, place, problem, why):
    with pytest.raises(ChangeError) as refused:
        changed(amount, {place}, problem)
    assert refused.value.why is why
    for language in Language:
        sentence = refused.value.sentence(language)
        assert sentence.endswith(".")
        assert sentence.count(".") == 1
        assert "{" not in sentence


def test_a_refusal_says_where_as_people_count():
    with pytest.raises(ChangeError, match=r"In problem 2 \(7 − 3\) a number would go below 0"):
        changed(-5, {(0, 0), (1, 1)}, "9 + 9", "7 - 3")


@st.composite
def string_and_change(draw) -> tuple[list[Problem], Change]:
    string = draw(strings(largest=40))
    every = [
        (row, place)
        for row, problem in enumerate(string)
        for place, leaf in enumerate(leaves_of(problem))
        if leaf is not BLANK
    ]
    places = draw(st.frozensets(st.sampled_from(every)))
    return string, Change(draw(st.integers(-12, 12)), places)


@given(string_and_change())
def test_undoing_a_change_gives_the_string_back(made):
    string, change = made
    try:
        new = what_if(string, change)
    except ChangeError:
        return
    assert what_if(new, Change(-change.amount, change.places)) == tuple(string)


@given(string_and_change())
def test_only_the_chosen_numbers_change_and_order_and_signs_stay(made):
    string, change = made
    try:
        new = what_if(string, change)
    except ChangeError:
        return
    assert len(new) == len(string)
    for row, (old, now) in enumerate(zip(string, new, strict=True)):
        assert with_leaves(now, leaves_of(old)) == old
        for place, (was, leaf) in enumerate(zip(leaves_of(old), leaves_of(now), strict=True)):
            by = change.amount if (row, place) in change.places else 0
            assert leaf is BLANK if was is BLANK else leaf == was + by


@given(string_and_change())
def test_a_changed_string_stays_in_range_and_any_other_is_refused(made):
    string, change = made
    try:
        new = what_if(string, change)
    except ChangeError as error:
        refused = error.why
    else:
        refused = None
    assert refused in (None, Refusal.BELOW_ZERO, Refusal.ANSWER_OUTSIDE)
    if refused is not None:
        return
    for problem in new:
        assert 0 <= solve(problem) <= 1_000_000
        assert all(leaf is BLANK or leaf >= 0 for leaf in leaves_of(problem))


@given(strings())
def test_a_change_of_nothing_changes_nothing(string):
    assert what_if(string, Change(7, frozenset())) == tuple(string)


def done(does: Does, amount: int, places: set[tuple[int, int]], *given_texts: str) -> list[str]:
    string = [parse(one) for one in given_texts]
    return [text(one) for one in what_if(string, Change(amount, frozenset(places), does))]


@pytest.mark.parametrize(
    ("does", "amount", "places", "given_texts", "new"),
    [
        (Does.ADD, 1, {(0, 0), (1, 0)}, ("6 x 7", "9 x 4"), ["7 x 7", "10 x 4"]),
        (Does.TIMES, 2, {(0, 0), (1, 0)}, ("6 x 7", "9 x 4"), ["12 x 7", "18 x 4"]),
        (Does.TIMES, 10, {(0, 1)}, ("6 x 7",), ["6 x 70"]),
        (Does.TIMES, 2, {(0, 0), (0, 1)}, ("90 / 6",), ["180 / 12"]),
        (Does.OVER, 2, {(0, 0), (0, 1)}, ("180 / 12",), ["90 / 6"]),
        (Does.TIMES, 2, {(0, 0)}, ("15% of 80",), ["30% of 80"]),
        (Does.TIMES, 3, {(0, 0)}, ("0.4 + 0.2",), ["1.2 + 0.2"]),
        (Does.ADD, 1, {(0, 0)}, ("about 398 x 21",), ["about 399 x 21"]),
    ],
)
def test_a_factor_can_gain_a_group_double_or_be_scaled(does, amount, places, given_texts, new):
    assert done(does, amount, places, *given_texts) == new


@pytest.mark.parametrize(
    ("does", "amount", "problem", "why"),
    [
        (Does.OVER, 2, "7 x 4", Refusal.NOT_WHOLE),
        (Does.TIMES, 0, "7 x 4", Refusal.NOT_BY_THAT),
        (Does.OVER, 0, "7 x 4", Refusal.NOT_BY_THAT),
        (Does.TIMES, 10, "200000 x 1", Refusal.ANSWER_OUTSIDE),
    ],
)
def test_a_scaling_that_cannot_be_made_is_refused_in_one_sentence(does, amount, problem, why):
    with pytest.raises(ChangeError) as refused:
        done(does, amount, {(0, 0)}, problem)
    assert refused.value.why is why
    for language in Language:
        sentence = refused.value.sentence(language)
        assert sentence.endswith(".")
        assert sentence.count(".") == 1


@given(product_strings(), st.integers(1, 12))
def test_making_numbers_times_as_small_undoes_making_them_as_big(string, amount):
    places = frozenset(
        (row, place)
        for row, problem in enumerate(string)
        for place, leaf in enumerate(leaves_of(problem))
        if isinstance(leaf, int)
    )
    try:
        new = what_if(string, Change(amount, places, Does.TIMES))
    except ChangeError as error:
        refused = error.why
    else:
        refused = None
    assert refused in (None, Refusal.ANSWER_OUTSIDE)
    if refused is not None:
        return
    back = what_if(new, Change(amount, places, Does.OVER))
    assert [solve(one) for one in back] == [solve(one) for one in string]
    assert [leaves_of(one) for one in back] == [leaves_of(one) for one in string]


@pytest.mark.parametrize(
    ("does", "amount", "places", "given_texts", "new"),
    [
        (Does.SWAP, 1, {(0, 0), (0, 1)}, ("37 + 25",), ["25 + 37"]),
        (Does.SWAP, 1, {(0, 0), (0, 1), (1, 0), (1, 1)}, ("6 x 7", "9 x 4"), ["7 x 6", "4 x 9"]),
        (Does.SWAP, 1, {(0, 1), (0, 2)}, ("6 + 3 + 4",), ["6 + 4 + 3"]),
        (Does.SWAP, 1, {(0, 0), (0, 1)}, ("16% of 25",), ["25% of 16"]),
        (Does.SWAP, 1, {(0, 0), (0, 1)}, ("1/4 x 36",), ["36 x 1/4"]),
        (Does.SWAP, 1, {(0, 0), (0, 2)}, ("5 + _ = 12 ",), None),
        (Does.MOVE, 3, {(0, 0), (0, 1)}, ("40 + 22", "40 + 1"), ["37 + 25", "40 + 1"]),
        (Does.MOVE, -3, {(0, 0), (0, 1)}, ("37 + 25",), ["40 + 22"]),
        (Does.MOVE, 2, {(0, 0), (0, 1)}, ("62 - 25",), ["60 - 27"]),
        (Does.MOVE, 1, {(0, 0), (0, 1)}, ("3.5 + 2.5",), ["2.5 + 3.5"]),
        (Does.ADD, 1, {(0, 0)}, ("15% of 80",), ["16% of 80"]),
    ],
)
def test_two_numbers_can_swap_or_give_to_each_other(does, amount, places, given_texts, new):
    if new is None:
        with pytest.raises(ChangeError):
            done(does, amount, places, *given_texts)
    else:
        assert done(does, amount, places, *given_texts) == new


@pytest.mark.parametrize(
    ("does", "amount", "problem", "places", "why"),
    [
        (Does.SWAP, 1, "7 + 4", {(0, 0)}, Refusal.NOT_TWO),
        (Does.MOVE, 1, "7 + 4 + 2", {(0, 0), (0, 1), (0, 2)}, Refusal.NOT_TWO),
        (Does.SWAP, 1, "7 + _ = 12", {(0, 0), (0, 1)}, Refusal.BLANK),
        (Does.MOVE, 8, "7 + 4", {(0, 0), (0, 1)}, Refusal.BELOW_ZERO),
        (Does.SWAP, 1, "7 - 4", {(0, 0), (0, 1)}, Refusal.ANSWER_OUTSIDE),
        (Does.SWAP, 1, "7 + 5", {(0, 0), (0, 5)}, Refusal.NO_PLACE),
    ],
)
def test_a_swap_or_a_move_that_cannot_be_made_is_refused(does, amount, problem, places, why):
    with pytest.raises(ChangeError) as refused:
        done(does, amount, places, problem)
    assert refused.value.why is why
    for language in Language:
        sentence = refused.value.sentence(language)
        assert sentence.endswith(".")
        assert sentence.count(".") == 1


def two_of_each(string: list[Problem]) -> frozenset[tuple[int, int]]:
    """The first two given numbers of each problem that has two."""
    found = []
    for row, problem in enumerate(string):
        places = [at for at, leaf in enumerate(leaves_of(problem)) if leaf is not BLANK]
        found += [(row, place) for place in places[:2] if len(places) > 1]
    return frozenset(found)


def tried(string: list[Problem], change: Change):
    """The new string, or why it was refused."""
    try:
        return what_if(string, change), None
    except ChangeError as error:
        return None, error.why


@given(st.one_of(strings(), product_strings()))
def test_a_swap_twice_gives_the_string_back(string):
    swap = Change(1, two_of_each(string), Does.SWAP)
    new, refused = tried(string, swap)
    assert refused in (None, Refusal.ANSWER_OUTSIDE)
    assert new is None or what_if(new, swap) == tuple(string)


@given(strings(), st.integers(-9, 9))
def test_what_is_moved_leaves_the_numbers_together_the_same_and_can_be_moved_back(string, amount):
    places = two_of_each(string)
    new, refused = tried(string, Change(amount, places, Does.MOVE))
    assert refused in (None, Refusal.BELOW_ZERO, Refusal.ANSWER_OUTSIDE)
    if new is None:
        return
    assert what_if(new, Change(-amount, places, Does.MOVE)) == tuple(string)
    for old, now in zip(string, new, strict=True):
        numbers = [[leaf for leaf in leaves_of(one) if leaf is not BLANK] for one in (old, now)]
        assert sum(numbers[0]) == sum(numbers[1])
