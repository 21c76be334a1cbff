"""In which grades problems belong: the ladders of the Common Core, as read or from memory."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.number.problems import blank_equations, claims, compares, estimates, expressions, images
from waysaid.number import NoValue, answer_of, parse
from waysaid.ways.grades import LAST, grades_of

PLACED = [
    ("2 + 3", 0, "K.OA.5"),
    ("8 + 5", 1, "1.OA.6"),
    ("13 - 7", 1, "1.OA.6"),
    ("8 + 4 = _ + 5", 1, "1.OA.6"),
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
    ("2/5 + 1/2", 5, "5.NF.1"),
    ("2/3 of 57", 4, "4.NF.4"),
    ("3.8 + 2.6", 5, "5.NBT.7"),
    ("0.125 x 8", 6, "6.NS.3"),
    ("15% of 80", 6, "6.RP.3"),
    ("3/4 ? 5/8", 4, "4.NF.2"),
    ("0.65 ? 0.7", 4, "4.NF.7"),
    ("29 + 14 = 30 + 13 ?", 2, "2.NBT.5"),
    ("about 398 x 21", 4, "4.OA.3"),
    ("3 - 8", 6, "6.NS.5"),
    ("image frame 10: 7", 0, "K.CC.5"),
]


@pytest.mark.parametrize(("line", "grade", "standard"), PLACED)
def test_a_problem_belongs_where_its_standard_asks_for_it(line, grade, standard):
    found = grades_of(parse(line))
    assert (found.first, found.standard) == (grade, standard)


@given(st.one_of(expressions(), blank_equations, claims, compares, estimates, images))
def test_every_problem_has_its_grades_and_a_source(problem):
    try:
        answer_of(problem)
    except NoValue:
        return
    found = grades_of(problem)
    assert 0 <= found.first <= found.last <= LAST
    assert found.source.startswith("ccss")
