"""Reading what a teacher would type, and printing it back."""

from fractions import Fraction

import pytest
from hypothesis import assume, example, given
from hypothesis import strategies as st

from tests.number.problems import claims, compares, equations, estimates, expressions, images
from waysaid.number import (
    BLANK,
    DEEPEST,
    About,
    Claim,
    Compare,
    Equation,
    Form,
    Image,
    Language,
    NoValue,
    Operation,
    Print,
    Sign,
    Unreadable,
    Written,
    answer_of,
    blanks,
    leaves,
    parse,
    parse_equation,
    parse_expression,
    text,
    value_of,
)

READ = [
    ("37+25", "37 + 25"),
    ("37 plus 25", "37 + 25"),
    ("37 PLUS 25", "37 + 25"),
    ("37 and 25", "37 + 25"),
    ("37 más 25", "37 + 25"),
    ("37 mas 25", "37 + 25"),
    ("37 y 25", "37 + 25"),
    ("37plus25", "37 + 25"),
    ("62 – 25", "62 - 25"),
    ("62 — 25", "62 - 25"),
    ("62 − 25", "62 - 25"),
    ("62 take away 25", "62 - 25"),
    ("62 Take  Away 25", "62 - 25"),
    ("62 menos 25", "62 - 25"),
    ("37 + 25 =", "37 + 25"),
    ("37 + 25 = ?", "37 + 25"),
    ("37 + 25 = __", "37 + 25"),
    ("37 + 25 equals blank", "37 + 25"),
    ("7 + _ = 12", "7 + _ = 12"),
    ("7 + ___ = 12", "7 + _ = 12"),
    ("7+?=12", "7 + _ = 12"),
    ("7 + □ = 12", "7 + _ = 12"),
    ("7 plus blank equals 12", "7 + _ = 12"),
    ("7 más espacio en blanco es igual a 12", "7 + _ = 12"),
    ("12 = 7 + _", "12 = 7 + _"),
    ("_ = 37 + 25", "_ = 37 + 25"),
    ("14x6", "14 x 6"),
    ("14 × 6", "14 x 6"),
    ("14 * 6", "14 x 6"),
    ("14 times 6", "14 x 6"),
    ("84 / 4", "84 / 4"),
    ("84 ÷ 4", "84 / 4"),
    ("84 : 4", "84 / 4"),
    ("84 divided by 4", "84 / 4"),
    ("84 dividido entre 4", "84 / 4"),
    ("3/4 + 1/4", "3/4 + 1/4"),
    ("1 1/4 + 2/3", "1 1/4 + 2/3"),
    ("6/4 + 1", "6/4 + 1"),
    ("0.65 + 0.7", "0.65 + 0.7"),
    ("2.50 + 1", "2.50 + 1"),
    ("1,5 + 0,25", "1.5 + 0.25"),
    ("2.125 - 1.000", "2.125 - 1.000"),
    ("84/4", "84 / 4"),
    ("16/3", "16 / 3"),
    ("3/4", "3/4"),
    ("1 2/4 + 6/4", "1 2/4 + 6/4"),
    ("2/3 of 57", "2/3 of 57"),
    ("2/3 de 57", "2/3 of 57"),
    ("15 % of 80", "15% of 80"),
    ("15 percent of 80", "15% of 80"),
    ("12.5% of 80", "12.5% of 80"),
    ("150 por ciento de 40", "150% of 40"),
    ("8 + 4 = _ + 5", "8 + 4 = _ + 5"),
    ("29 + 14 = 30 + 13 ?", "29 + 14 = 30 + 13 ?"),
    ("3 x 4 = 4 x 3?", "3 x 4 = 4 x 3 ?"),
    ("0.65 ? 0.7", "0.65 ? 0.7"),
    ("3/4 ? 5/8", "3/4 ? 5/8"),
    ("2 + 3 ? (4 + 1)", "2 + 3 ? 4 + 1"),
    ("about 398 x 21", "about 398 x 21"),
    ("About 398 times 21", "about 398 x 21"),
    ("cerca de 398 por 21", "about 398 x 21"),
    ("image frame 10: 7", "image frame 10: 7"),
    ("imagen marco 20:13", "image frame 20: 13"),
    ("IMAGE DICE:3 2", "image dice: 3 2"),
    ("image array: 3 by 4", "image array: 3 x 4"),
    ("image dots: 1,2 30,40", "image dots: 1,2 30,40"),
    ("1,000 + 250", "1000 + 250"),
    ("1,000,000 - 1", "1000000 - 1"),
    ("1\u202f000 + 1\u00a0250 + 1\u2009000", "1000 + 1250 + 1000"),
    ("37\u2009+\u202f25", "37 + 25"),
    ("7 + 26 + 3", "7 + 26 + 3"),
    ("7 + (26 + 3)", "7 + (26 + 3)"),
    ("10 - (3 + 2)", "10 - (3 + 2)"),
    ("((10)) - ((3 - 2))", "10 - (3 - 2)"),
    ("2 + 3 x 4", "2 + 3 x 4"),
    ("(2 + 3) x 4", "(2 + 3) x 4"),
    ("8 / (4 / 2)", "8 / (4 / 2)"),
    ("3 - -5", "3 - (-5)"),
    ("-5 + 3", "-5 + 3"),
    ("--5 + 3", "5 + 3"),
    ("0 + 0", "0 + 0"),
    ("  62\t-\n25  ", "62 - 25"),
]


@pytest.mark.parametrize(("typed", "printed"), READ)
def test_what_is_typed_is_read_as_meant(typed, printed):
    assert text(parse(typed)) == printed


@given(expressions(), st.sampled_from(Print))
@example(Operation(Sign.MINUS, 3, -5), Print.TRUE)
@example(Operation(Sign.OVER, Fraction(1, 2), Fraction(5, 4)), Print.PLAIN)
@example(Operation(Sign.PLUS, 1, Operation(Sign.PLUS, 2, Operation(Sign.PLUS, 3, 4))), Print.TRUE)
def test_a_printed_expression_reads_back_as_itself(expression, style):
    assert parse_expression(text(expression, style)) == expression


@given(equations, st.sampled_from(Print))
def test_a_printed_equation_reads_back_as_itself(equation, style):
    assert parse_equation(text(equation, style)) == equation


@given(expressions(), st.sampled_from(Print))
def test_a_printed_problem_reads_back_as_itself(expression, style):
    try:
        value_of(expression)
    except NoValue:
        with pytest.raises(Unreadable):
            parse(text(expression, style))
    else:
        assume(not isinstance(expression, Written) or expression.form is not Form.PARTS)
        assert parse(text(expression, style)) == expression


@given(st.one_of(claims, compares, estimates, images), st.sampled_from(Print))
def test_every_kind_of_problem_reads_back_as_itself(problem, style):
    try:
        answer_of(problem)
    except NoValue:
        with pytest.raises(Unreadable):
            parse(text(problem, style))
    else:
        assert parse(text(problem, style)) == problem


@given(st.one_of(claims, compares, estimates), st.sampled_from(Language))
def test_words_for_people_read_back_in_their_language(problem, language):
    try:
        answer_of(problem)
    except NoValue:
        return
    assert parse(text(problem, Print.TRUE, language)) == problem


PIECES = "37 0 1,000 1/2 2.5 + - − x / = _ ? ( ) plus y por 1 1/0 , .".split()  # noqa: SIM905
pieces = st.lists(st.sampled_from([*PIECES, " ", "\u2009", "9" * 12]), max_size=30).map("".join)


@given(st.one_of(st.text(), pieces))
@example("(" * 200)
@example("=")
@example("= ?")
@example("?")
@example("about")
@example("about ?")
@example("-" * 200)
@example("(" * 5000)
@example("1" * 5000)
@example("1/" * 100)
@example("1+" * 99 + "1")
@example("٣ + ٤")
@example("²")
def test_any_text_is_read_or_is_unreadable(anything):
    for read in (parse, parse_equation, parse_expression):
        try:
            found = read(anything)
        except Unreadable as error:
            start, end = error.at
            assert 0 <= start <= end <= len(anything)
        else:
            assert isinstance(text(found), str)


@given(pieces)
@example("37?37")
@example("37=37?")
@example("about 37+3")
def test_what_is_read_as_a_problem_can_be_solved(anything):
    try:
        problem = parse(anything)
    except Unreadable:
        return
    answer_of(problem)
    if not isinstance(problem, About | Claim | Compare | Image):  # these have no blank to fill
        assert blanks(problem) == isinstance(problem, Equation)


def test_brackets_may_nest_only_so_deep():
    assert parse("(" * DEEPEST + "1" + ")" * DEEPEST) == 1
    with pytest.raises(Unreadable):
        parse("(" * (DEEPEST + 1) + "1" + ")" * (DEEPEST + 1))


def test_brackets_beside_one_another_do_not_nest():
    assert value_of(parse_expression(" + ".join(["(1)"] * 20))) == 20


@given(st.decimals(min_value=0, max_value=9999, places=4, allow_nan=False))
def test_a_decimal_is_read_exactly(number):
    assert value_of(parse_expression(f"{number:f}")) == Fraction(str(number))
    assert text(parse_expression(f"{number:f}")) == f"{number:f}"


@given(st.integers(0, 999_999_999))
def test_thousands_may_be_marked(number):
    marked = f"{number:,}"
    assert parse_expression(marked) == number
    assert parse_expression(marked.replace(",", "\u202f")) == number


def test_a_blank_is_a_leaf():
    read = parse_expression("7 + _")
    assert tuple(leaves(read)) == (7, BLANK)
