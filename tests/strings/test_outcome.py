"""What a change does to the answers, and why: held against the answers worked out anew."""

from fractions import Fraction

import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st
from sympy.abc import a, b, k, n

from tests.strings.products_made import strings as product_strings
from tests.strings.strings_made import strings
from waysaid.number import BLANK, Language, exact, parse, remainder_of, solve
from waysaid.strings import (
    Answers,
    Change,
    ChangeError,
    Does,
    Why,
    leaves_of,
    outcome,
    what_if,
)

FIRST = {(0, 0), (1, 0)}
SECOND = {(0, 1), (1, 1)}
BOTH = FIRST | SECOND


def said(does: Does, amount: int, places: set[tuple[int, int]], *string: str, lang="en") -> str:
    change = Change(amount, frozenset(places), does)
    return outcome([parse(one) for one in string], change).says(Language(lang))


@pytest.mark.parametrize(
    ("does", "amount", "places", "string", "says"),
    [
        (
            Does.MOVE,
            3,
            BOTH,
            ("40 + 25", "37 + 25"),
            "All answers stay: what one number lost, the other gained.",
        ),
        (
            Does.ADD,
            3,
            FIRST,
            ("40 + 25", "37 + 25"),
            "Each answer is 3 more: one number is 3 more, and the rest stayed.",
        ),
        (
            Does.ADD,
            3,
            {(0, 0), (1, 1)},
            ("68 - 3", "65 - 3"),
            "The answers do not change alike, 65 → 68, 62 → 59.",
        ),
        (
            Does.MOVE,
            3,
            BOTH,
            ("62 - 25", "52 - 19"),
            "Each answer is 6 less: there is 3 less to take from, and 3 more is taken away.",
        ),
        (
            Does.ADD,
            5,
            BOTH,
            ("62 - 25", "52 - 19"),
            (
                "All answers stay: both numbers changed by 5 the same way, so they are just as "
                "far apart."
            ),
        ),
        (
            Does.SWAP,
            1,
            BOTH,
            ("6 x 4", "3 x 9"),
            "All answers stay: the order does not matter in multiplying.",
        ),
        (
            Does.TIMES,
            2,
            BOTH,
            ("40 + 25", "37 + 25"),
            "Each answer doubles: every number is 2 times as big.",
        ),
        (
            Does.TIMES,
            2,
            SECOND,
            ("96 / 6", "80 / 4"),
            "Each answer is cut in half: it is shared among 2 times as many.",
        ),
        (
            Does.ADD,
            1,
            FIRST,
            ("6 x 4", "3 x 9"),
            "The answers do not change alike, 24 → 28, 27 → 36: 1 more of the other number.",
        ),
        (
            Does.TIMES,
            2,
            {(0, 0), (0, 1)},
            ("16 / 3", "7 + 5"),
            "The answer changes, 5 r 1 → 5 r 2.",
        ),
        (Does.ADD, 1, {(0, 0)}, ("7 + _ = 12", "7 + 5"), "The answer is 1 less."),
        (Does.ADD, 1, {(0, 0)}, ("0.65 ? 0.7", "7 + 5"), "The answer changes, < → >."),
        (Does.ADD, 1, {(0, 0)}, ("5 x 0", "7 + 5"), "The answer stays."),
        (Does.ADD, 1, set(), ("16 / 3", "7 + 5"), ""),
    ],
)
def test_it_says_what_the_answers_do_and_why(does, amount, places, string, says):
    assert said(does, amount, places, *string) == says


def test_it_says_so_in_spanish():
    assert said(Does.MOVE, 3, BOTH, "40 + 25", "37 + 25", lang="es") == (
        "Todas las respuestas se quedan igual: lo que perdió un número lo ganó el otro."
    )


@st.composite
def changed_strings(draw):
    string = draw(st.one_of(strings(largest=40), product_strings()))
    place = draw(st.sampled_from([{0}, {1}, {0, 1}, {0, 2}, {1, 2}]))
    rows = draw(st.sampled_from([range(1), range(len(string))]))
    places = frozenset(
        (row, at)
        for row in rows
        for at, leaf in enumerate(leaves_of(string[row]))
        if leaf is not BLANK and at in place
    )
    does = draw(st.sampled_from(Does))
    return string, Change(draw(st.integers(-5, 5)), places, does)


def made(string, change):
    try:
        return what_if(string, change), outcome(string, change)
    except ChangeError:
        return None, None


@given(changed_strings())
def test_what_the_answers_are_said_to_do_is_what_they_do(made_string):
    string, change = made_string
    new, found = made(string, change)
    if found is None:
        return
    rows = sorted({row for row, _ in change.places})
    pairs = [(solve(string[row]), solve(new[row])) for row in rows]
    assert len(found.answers) == len(pairs)
    match found.do:
        case Answers.STAY:
            assert all(old == now for old, now in pairs)
        case Answers.MORE:
            assert {now - old for old, now in pairs} == {exact(found.by)}
        case Answers.LESS:
            assert {old - now for old, now in pairs} == {exact(found.by)}
        case Answers.TIMES:
            assert {Fraction(now, old) for old, now in pairs} == {exact(found.by)}
        case Answers.OVER:
            assert {Fraction(old, now) for old, now in pairs} == {exact(found.by)}
        case Answers.UNLIKE:
            gaps, left = {now - old for old, now in pairs}, [string[row] for row in rows]
            left += [new[row] for row in rows]
            assert len(gaps) > 1 or any(remainder_of(one) for one in left)


@given(changed_strings())
def test_the_unchanged_problems_are_not_spoken_of_and_both_languages_have_words(made_string):
    string, change = made_string
    _, found = made(string, change)
    if found is None:
        return
    sentences = [found.says(language) for language in Language]
    assert all(bool(one) == bool(change.places) for one in sentences)
    assert not any("{" in one or one.endswith("..") for one in sentences)


EXACTLY = {
    Why.GIVEN: ((a - n) + (b + n), a + b),
    Why.ALIKE: ((a + n) - (b + n), a - b),
    Why.ORDER_ADDED: (b + a, a + b),
    Why.ORDER_TAKEN: (k - b - a, k - a - b),
    Why.ORDER_TIMES: (b * a, a * b),
    Why.ONE_MORE: ((a + n) + b, (a + b) + n),
    Why.ONE_LESS: ((a - n) + b, (a + b) - n),
    Why.EACH_MORE: ((a + n) + (b + n), (a + b) + 2 * n),
    Why.EACH_LESS: ((a - n) + (b - n), (a + b) - 2 * n),
    Why.TAKEN_MORE: (a - (b + n), (a - b) - n),
    Why.TAKEN_LESS: (a - (b - n), (a - b) + n),
    Why.TO_THE_TAKEN: ((a - n) - (b + n), (a - b) - 2 * n),
    Why.FROM_THE_TAKEN: ((a + n) - (b - n), (a - b) + 2 * n),
    Why.EVERY_TIMES: (n * a - n * b, n * (a - b)),
    Why.EVERY_OVER: (a / n + b / n, (a + b) / n),
    Why.GROUPS_MORE: ((a + n) * b, a * b + n * b),
    Why.GROUPS_LESS: ((a - n) * b, a * b - n * b),
    Why.SHARED_MORE: ((a + n) / b, a / b + n / b),
    Why.SHARED_LESS: ((a - n) / b, a / b - n / b),
    Why.AMONG_MORE: (a / (b + n), a / b - a * n / (b * (b + n))),
    Why.AMONG_LESS: (a / (b - n), a / b + a * n / (b * (b - n))),
    Why.ONE_TIMES: ((n * a) * b, n * (a * b)),
    Why.ONE_OVER: ((a / n) * b, (a * b) / n),
    Why.AMONG_TIMES: (a / (n * b), (a / b) / n),
    Why.AMONG_OVER: (a / (b / n), (a / b) * n),
    Why.TWICE_TIMES: ((n * a) * (n * b), n**2 * (a * b)),
    Why.TWICE_OVER: ((a / n) * (b / n), (a * b) / n**2),
    Why.BOTH_TIMES: ((n * a) / (n * b), a / b),
    Why.BOTH_OVER: ((a / n) / (b / n), a / b),
}


def test_every_reason_is_proved_for_all_numbers():
    assert set(EXACTLY) == set(Why)
    for why, (left, right) in EXACTLY.items():
        assert sympy.simplify(left - right) == 0, why


@pytest.mark.parametrize(
    ("does", "amount", "places", "problem", "why"),
    [
        (Does.MOVE, -2, (0, 1), "40 + 25", Why.GIVEN),
        (Does.ADD, -2, (0, 1), "40 - 25", Why.ALIKE),
        (Does.SWAP, 1, (0, 1), "40 + 25", Why.ORDER_ADDED),
        (Does.SWAP, 1, (1, 2), "40 - 5 - 7", Why.ORDER_TAKEN),
        (Does.SWAP, 1, (0, 1), "16% of 25", Why.ORDER_TIMES),
        (Does.ADD, 1, (2,), "40 - 5 + 7", Why.ONE_MORE),
        (Does.ADD, -1, (0,), "40 - 5", Why.ONE_LESS),
        (Does.ADD, 1, (0, 1), "40 + 5", Why.EACH_MORE),
        (Does.ADD, -1, (0, 1), "40 + 5", Why.EACH_LESS),
        (Does.ADD, 1, (1,), "40 - 5", Why.TAKEN_MORE),
        (Does.ADD, -1, (1,), "40 - 5", Why.TAKEN_LESS),
        (Does.MOVE, 1, (0, 1), "40 - 5", Why.TO_THE_TAKEN),
        (Does.MOVE, -1, (0, 1), "40 - 5", Why.FROM_THE_TAKEN),
        (Does.TIMES, 3, (0, 1), "40 - 5", Why.EVERY_TIMES),
        (Does.OVER, 5, (0, 1), "40 - 5", Why.EVERY_OVER),
        (Does.ADD, 1, (1,), "6 x 4", Why.GROUPS_MORE),
        (Does.ADD, -1, (0,), "6 x 4", Why.GROUPS_LESS),
        (Does.ADD, 6, (0,), "60 / 6", Why.SHARED_MORE),
        (Does.ADD, -6, (0,), "60 / 6", Why.SHARED_LESS),
        (Does.ADD, 6, (1,), "60 / 6", Why.AMONG_MORE),
        (Does.ADD, -1, (1,), "60 / 6", Why.AMONG_LESS),
        (Does.TIMES, 2, (0,), "60 / 6", Why.ONE_TIMES),
        (Does.OVER, 2, (0,), "50% of 90", Why.ONE_OVER),
        (Does.TIMES, 2, (1,), "60 / 6", Why.AMONG_TIMES),
        (Does.OVER, 2, (1,), "60 / 6", Why.AMONG_OVER),
        (Does.TIMES, 2, (0, 1), "6 x 4", Why.TWICE_TIMES),
        (Does.OVER, 2, (0, 1), "6 x 4", Why.TWICE_OVER),
        (Does.TIMES, 2, (0, 1), "60 / 6", Why.BOTH_TIMES),
        (Does.OVER, 2, (0, 1), "60 / 6", Why.BOTH_OVER),
        (Does.ADD, 1, (0,), "15% of 80", None),
        (Does.TIMES, 2, (0,), "40 + 5", None),
        (Does.TIMES, 2, (0, 1), "7 - 7", None),
        (Does.ADD, 1, (0,), "7 + _ = 12", None),
        (Does.TIMES, 2, (0, 1), "16 / 3", None),
    ],
)
def test_each_reason_is_given_where_it_holds(does, amount, places, problem, why):
    change = Change(amount, frozenset((0, place) for place in places), does)
    assert outcome([parse(problem)], change).why is why


def test_one_reason_is_given_only_where_it_holds_in_all():
    change = Change(1, frozenset(BOTH - {(0, 1), (1, 1)}), Does.ADD)
    assert outcome([parse("40 + 25"), parse("40 - 25")], change).why is Why.ONE_MORE
    assert outcome([parse("40 + 25"), parse("40 x 25")], change).why is None
