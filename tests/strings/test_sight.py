"""A problem as links see it."""

import pytest
from hypothesis import given

from tests.strings.strings_made import problems
from waysaid.number import Sign, is_true, parse, parse_equation
from waysaid.strings.sight import sights


@given(problems())
def test_the_signed_numbers_sum_to_the_answer(problem):
    (seen,) = sights([problem])
    signed = [term.size if term.sign is Sign.PLUS else -term.size for term in seen.terms]
    assert sum(signed) == seen.answer


@given(problems())
def test_the_filled_problem_is_a_true_equation(problem):
    (seen,) = sights([problem])
    assert is_true(parse_equation(seen.filled))


@given(problems())
def test_the_two_parts_of_a_fact_make_its_whole(problem):
    (seen,) = sights([problem])
    if seen.fact is not None:
        assert sum(seen.fact.parts) == seen.fact.whole


@pytest.mark.parametrize(
    ("given_text", "form", "filled"),
    [
        ("37 + 25", "1 + 1", "37 + 25 = 62"),
        ("7 + _ = 12", "1 + _ = 1", "7 + 5 = 12"),
        ("12 = 7 + _", "1 = 1 + _", "7 + 5 = 12"),
        ("29 + 14 = 30 + _", "1 + 1 = 1 + _", "29 + 14 = 30 + 13"),
    ],
)
def test_a_problem_has_a_form_and_is_filled_with_its_answer(given_text, form, filled):
    (seen,) = sights([parse(given_text)])
    assert (seen.form, seen.filled) == (form, filled)


def test_a_product_has_no_signed_numbers_but_an_answer():
    (seen,) = sights([parse("3 x 4 + 2")])
    assert seen.terms == ()
    assert seen.answer == 14
    assert seen.fact is None
