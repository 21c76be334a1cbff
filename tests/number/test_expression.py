"""Values and answers, checked against other ways to find them."""

from fractions import Fraction

import pytest
import sympy
from hypothesis import assume, example, given
from hypothesis import strategies as st

from tests.number.problems import (
    blank_equations,
    brute_force,
    equations,
    expressions,
    plain,
    wholes,
)
from waysaid.number import (
    BLANK,
    Equation,
    NoValue,
    Operation,
    Sign,
    apply,
    blanks,
    chain,
    exact,
    fill,
    is_true,
    parse,
    parse_equation,
    parse_expression,
    signed_terms,
    solve,
    text,
    value_of,
)


@given(expressions(wholes))
@example(Operation(Sign.OVER, 0, Operation(Sign.OVER, 1, 0)))
def test_a_value_is_what_sympy_finds(expression):
    """Where nothing is divided by zero: sympy goes on with an infinity, and calls 0 / (1 / 0) 0."""
    try:
        value = Fraction(value_of(expression))
    except NoValue:
        with pytest.raises(ZeroDivisionError):
            plain(expression)
    else:
        found = sympy.sympify(text(expression).replace("x", "*").replace("of", "*"), rational=True)
        assert (found.p, found.q) == (value.numerator, value.denominator)


@given(expressions())
def test_a_value_is_never_a_whole_fraction_or_a_float(expression):
    try:
        value = value_of(expression)
    except NoValue:
        return
    assert isinstance(value, int) or (isinstance(value, Fraction) and value.denominator > 1)


@given(equations)
def test_an_equation_is_true_where_nothing_is_left_between_its_sides(equation):
    try:
        gap = value_of(Operation(Sign.MINUS, equation.left, equation.right))
    except NoValue:
        assert is_true(equation) is None
    else:
        assert is_true(equation) is (gap == 0)


small = st.integers(0, 6)
small_equations = st.builds(
    Equation, expressions(st.one_of(st.just(BLANK), small), 4), expressions(small, 2)
)
CANDIDATES = sorted({Fraction(a, b) for a in range(-60, 61) for b in range(1, 7)})


@given(small_equations)
def test_the_answer_is_the_one_number_that_brute_force_finds(equation):
    assume(blanks(equation) == 1)
    right = brute_force(equation, CANDIDATES)
    try:
        answer = solve(equation)
    except NoValue:
        assert right == [] or len(right) >= len(CANDIDATES) - 1
    else:
        assert answer not in CANDIDATES or right == [answer]
        assert is_true(fill(equation, answer))


@given(blank_equations)
def test_an_answer_makes_the_equation_true(equation):
    try:
        answer = solve(equation)
    except NoValue:
        return
    filled = fill(equation, answer)
    assert blanks(filled) == 0
    assert is_true(filled)


@pytest.mark.parametrize("line", ["0 x _ = 0", "0 x _ = 5", "_ / 0 = 0", "0 / _ = 5", "6 / _ = 0"])
def test_an_equation_without_one_answer_has_none(line):
    with pytest.raises(NoValue):
        solve(parse_equation(line))


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("37 + 25", 62),
        ("7 + _ = 12", 5),
        ("_ - 25 = 37", 62),
        ("62 - _ = 37", 25),
        ("12 = _ + 7", 5),
        ("7 - _ = 12", -5),
        ("3 x _ = 2", Fraction(2, 3)),
        ("12 / _ = 4", 3),
    ],
)
def test_a_problem_has_its_answer(line, answer):
    assert solve(parse(line)) == answer


signs = st.sampled_from([Sign.PLUS, Sign.MINUS])


@given(wholes, st.lists(st.tuples(signs, st.one_of(wholes, st.just(BLANK))), max_size=5))
def test_a_chain_gives_its_terms_back(first, rest):
    assert signed_terms(chain(first, *rest)) == ((Sign.PLUS, first), *rest)


@pytest.mark.parametrize("line", ["3 x 4", "3 + 4 x 5", "10 - (3 + 2)", "4 / 2 - 1"])
def test_terms_are_only_those_of_a_plain_sum(line):
    assert signed_terms(parse_expression(line)) is None


def test_nothing_is_divided_by_zero():
    with pytest.raises(NoValue):
        apply(Sign.OVER, 1, 0)


def test_a_whole_fraction_becomes_whole():
    assert isinstance(exact(Fraction(4, 2)), int)
