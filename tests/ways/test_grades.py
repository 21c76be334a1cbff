"""In which grades problems belong: the ladders of the Common Core, as read or from memory."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.number.problems import blank_equations, claims, compares, estimates, expressions, images
from waysaid.number import NoValue, answer_of, parse
from waysaid.ways.grades import LAST, grades_of

PLACED = [
    ("2 + 3", 0, "K.OA.5"),
    ("8 + 5", 1, "1.OA.6"),
    ("13 - 7", 1, "1.OA.6"),
    ("8 + 4 = _ + 5", 1, "1.OA.6"),
    ("2 + _ = 10", 0, "K.OA.4"),
    ("7 = _ + 3", 0, "K.OA.3"),
    ("9 - _ = 4", 1, "1.OA.6"),
    ("8 + _ = 1000", 3, "3.NBT.2"),
    ("_ - 5 = 998", 4, "4.NBT.4"),
    ("6 x _ = 54", 3, "3.OA.7"),
    ("_ / 8 = 70", 4, "4.NBT.6"),
    ("3 x _ = 1236", 4, "4.NBT.5"),
    ("_ + 3/6 = 2", 4, "4.NF.3"),
    ("2 - _ = 3/4", 4, "4.NF.3"),
    ("1/4 x _ = 3/4", 4, "4.NF.4"),
    ("2 x _ = 3/4", 4, "4.NF.4"),
    ("1/2 + _ = 3/4", 5, "5.NF.1"),
    ("10 - _ = 2.7", 5, "5.NBT.7"),
    ("3 + _ = 8.25", 5, "5.NBT.7"),
    ("2 - _ = 0.125", 6, "6.NS.3"),
    ("37 + 25", 2, "2.NBT.5"),
    ("62 - 25", 2, "2.NBT.5"),
    ("346 + 253", 3, "3.NBT.2"),
    ("12462 - 2300", 4, "4.NBT.4"),
    ("7 x 8", 3, "3.OA.7"),
    ("56 / 8", 3, "3.OA.7"),
    ("9 x 80", 3, "3.NBT.3"),
    ("14 x 16", 4, "4.NBT.5"),
    ("1234 x 6", 4, "4.NBT.5"),
    ("672 / 5", 4, "4.NBT.6"),
    ("1234 x 56", 5, "5.NBT.5"),
    ("1800 / 12", 5, "5.NBT.6"),
    ("3/4 + 3/4", 4, "4.NF.3"),
    ("2/6 + 5/6", 4, "4.NF.3"),
    ("5/6 - 2/6", 4, "4.NF.3"),
    ("6/4 + 1/4", 4, "4.NF.3"),
    ("1 2/4 + 3/4", 4, "4.NF.3"),
    ("4/4 - 3/4", 4, "4.NF.3"),
    ("3 - 2/6", 4, "4.NF.3"),
    ("2/5 + 1/2", 5, "5.NF.1"),
    ("1/2 + 2/4", 5, "5.NF.1"),
    ("4/6 - 1/3", 5, "5.NF.1"),
    ("2/3 of 57", 4, "4.NF.4"),
    ("3.8 + 2.6", 5, "5.NBT.7"),
    ("0.125 x 8", 6, "6.NS.3"),
    ("15% of 80", 6, "6.RP.3"),
    ("2/6 ? 5/6", 3, "3.NF.3"),
    ("2/3 ? 2/8", 3, "3.NF.3"),
    ("5/6 ? 1", 3, "3.NF.3"),
    ("3/4 ? 5/8", 4, "4.NF.2"),
    ("1/2 ? 2/4", 3, "3.NF.3"),
    ("0.65 ? 0.7", 4, "4.NF.7"),
    ("29 + 14 = 30 + 13 ?", 2, "2.NBT.5"),
    ("about 398 x 21", 4, "4.OA.3"),
    ("3 - 8", 6, "6.NS.5"),
    ("image frame 10: 7", 0, "K.CC.5"),
    ("image dice: 5 5 5 5", 0, "K.CC.5"),
    ("image dice: 5 5 5 2 2", 2, "2.OA.4"),
]


@pytest.mark.parametrize(("line", "grade", "standard"), PLACED)
def test_a_problem_belongs_where_its_standard_asks_for_it(line, grade, standard):
    found = grades_of(parse(line))
    assert (found.first, found.standard) == (grade, standard)


@given(st.integers(1, 2000), st.integers(1, 2000), st.sampled_from("+-x"))
def test_a_missing_number_belongs_where_the_problem_does_that_says_it(one, other, sign):
    assume(one >= other if sign == "-" else one + other > 10)
    problem = parse(f"{one} {sign} {other}")
    total = answer_of(problem)
    for blank in (f"_ {sign} {other} = {total}", f"{one} {sign} _ = {total}"):
        assert grades_of(parse(blank)) == grades_of(problem)


@given(st.integers(2, 20), st.integers(1, 40), st.integers(1, 40), st.sampled_from("+-"))
def test_parts_are_of_one_kind_as_they_are_written(bottom, top, less, sign):
    """4.NF.B.3 adds fractions "with like denominators", 5.NF.A.1 those with unlike ones."""
    one, other = top + less, min(top, less)
    alike = grades_of(parse(f"{one}/{bottom} {sign} {other}/{bottom}"))
    unlike = grades_of(parse(f"{one}/{bottom} {sign} {other}/{bottom + 1}"))
    assert (alike.first, alike.standard) == (4, "4.NF.3")
    assert (unlike.first, unlike.standard) == (5, "5.NF.1")


@given(st.integers(2, 20), st.integers(2, 20), st.integers(1, 19), st.integers(1, 19))
def test_fractions_are_compared_in_grade_3_where_a_top_or_a_bottom_is_the_same(b, d, a, c):
    """3.NF.A.3.d: "with the same numerator or the same denominator"; 4.NF.A.2: both different.

    Equal ones are grade 3 too (3.NF.A.3.b: "recognize and generate simple equivalent fractions").
    """
    found = grades_of(parse(f"{a}/{b} ? {c}/{d}"))
    expected = (3, "3.NF.3") if a == c or b == d or a * d == b * c else (4, "4.NF.2")
    assert (found.first, found.standard) == expected


@given(st.one_of(expressions(), blank_equations, claims, compares, estimates, images))
def test_every_problem_has_its_grades_and_a_source(problem):
    try:
        answer_of(problem)
    except NoValue:
        return
    found = grades_of(problem)
    assert 0 <= found.first <= found.last <= LAST
    assert found.source.startswith("ccss")
