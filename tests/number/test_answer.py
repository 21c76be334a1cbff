"""Answers as text, and whether what was said is the answer."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import Operation, Rest, Sign, answer_text, fits, parse


@pytest.mark.parametrize(
    ("line", "printed"),
    [
        ("37 + 25", "62"),
        ("3/4 + 3/4", "1 1/2"),
        ("1.4 x 0.6", "0.84"),
        ("4.6 + 3.8 + 1.6", "10"),
        ("16 / 3", "5 r 1"),
        ("84 / 4", "21"),
        ("0.65 ? 0.7", "<"),
        ("29 + 14 = 30 + 13 ?", "true"),
        ("about 398 x 21", "8000..8400"),
        ("about 5 x 38", "200"),
        ("1/3 x 0.5", "1/6"),
        ("15% of 7", "1.05"),
    ],
)
def test_an_answer_is_printed_in_the_form_of_the_problem(line, printed):
    assert answer_text(parse(line)) == printed


@pytest.mark.parametrize(
    ("rest", "printed"),
    [(Rest.LEFT_OVER, "4 r 1"), (Rest.FRACTION, "4 1/4"), (Rest.DECIMAL, "4.25")],
)
def test_what_is_left_is_said_as_the_class_asks(rest, printed):
    assert answer_text(parse("17 / 4"), rest=rest) == printed


@pytest.mark.parametrize(
    ("line", "said", "right"),
    [
        ("37 + 25", "62", True),
        ("37 + 25", "52", False),
        ("37 + 25", "sixty-two-ish", None),
        ("16 / 3", "5 r 1", True),
        ("16 / 3", "5 rem 1", True),
        ("16 / 3", "5 1/3", True),
        ("16 / 3", "5 r 2", False),
        ("16 / 3", "5", False),
        ("3/4 + 3/4", "6/4", True),
        ("3/4 + 3/4", "1.5", True),
        ("0.65 ? 0.7", "<", True),
        ("0.65 ? 0.7", ">", False),
        ("0.65 ? 0.7", "0.7", True),
        ("0.65 ? 0.7", "0.65", False),
        ("3 x 4 = 4 x 3 ?", "true", True),
        ("3 x 4 = 4 x 3 ?", "falso", False),
        ("3 x 4 = 4 x 3 ?", "12", None),
        ("about 398 x 21", "8200", True),
        ("about 398 x 21", "800", False),
        ("15% of 80", "12", True),
    ],
)
def test_what_was_said_is_the_answer_or_not(line, said, right):
    assert fits(parse(line), said) is right


@given(st.integers(1, 9999), st.integers(1, 99))
def test_the_printed_answer_of_a_division_fits_however_it_is_said(whole, part):
    problem = Operation(Sign.OVER, whole, part)
    for rest in Rest:
        assert fits(problem, answer_text(problem, rest=rest)) is True
