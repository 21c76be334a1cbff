"""What every kind of problem has for an answer."""

from fractions import Fraction

import pytest
from hypothesis import given

from tests.number.problems import claims, compares, images, plain
from waysaid.number import (
    NoValue,
    Order,
    Span,
    Verdict,
    answer_of,
    is_true,
    parse,
    solve,
)


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("37 + 25", 62),
        ("8 + 4 = _ + 5", 7),
        ("29 + 14 = 30 + 13 ?", Verdict.TRUE),
        ("8 + 4 = 12 + 5 ?", Verdict.FALSE),
        ("0.65 ? 0.7", Order.LESS),
        ("3/4 ? 5/8", Order.MORE),
        ("2/4 ? 0.5", Order.SAME),
        ("about 398 x 21", Span(8000, 8400)),
        ("2/3 of 57", 38),
        ("15% of 80", 12),
        ("1.4 x 0.6", Fraction(21, 25)),
        ("image frame 20: 13", 13),
        ("image dice: 3 2", 5),
        ("image array: 3 x 4", 12),
        ("image dots: 1,1 5,5 9,9", 3),
    ],
)
def test_a_problem_has_its_answer(line, answer):
    assert answer_of(parse(line)) == answer


@pytest.mark.parametrize("line", ["0.65 ? 0.7", "8 + 4 = 12 ?", "about 398 x 21"])
def test_only_a_number_solves_a_problem(line):
    with pytest.raises(NoValue):
        solve(parse(line))


@given(compares)
def test_a_comparison_is_what_plain_fractions_say(problem):
    try:
        left, right = plain(problem.left), plain(problem.right)
    except ZeroDivisionError:
        with pytest.raises(NoValue):
            answer_of(problem)
    else:
        signs = {Order.LESS: left < right, Order.SAME: left == right, Order.MORE: left > right}
        assert [sign for sign, holds in signs.items() if holds] == [answer_of(problem)]


@given(claims)
def test_a_claim_is_true_where_both_sides_are_alike(problem):
    if is_true(problem.equation) is None:
        with pytest.raises(NoValue):
            answer_of(problem)
    else:
        assert (answer_of(problem) is Verdict.TRUE) == is_true(problem.equation)


@given(images)
def test_a_picture_is_solved_by_counting_it(image):
    assert solve(image) == image.count > 0
