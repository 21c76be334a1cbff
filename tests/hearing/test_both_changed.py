"""Both numbers made others, a count gone on from, reasons that are only part of what was asked."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.hearing.heard import heard, w
from waysaid.hearing import read
from waysaid.number import Language, parse
from waysaid.ways import Family


@given(st.integers(2, 8), st.integers(12, 48), st.integers(1, 3))
def test_the_half_of_giving_that_was_not_told_is_heard_where_the_sum_came_first(tens, other, few):
    one, made, left = 10 * tens - few, 10 * tens, other - few
    assume(other % 10 > few and one != other)
    line = f"{made} and {left} is {made + left}, I moved {few}"
    steps, answer, family = heard(f"{one} + {other}", line)
    assert {step.split(" without")[0] for step in steps} >= {
        f"{made} + {left} = {made + left}",
        f"{other} - {few} = {left}",
    }
    assert (answer, family) == (str(made + left), Family.GIVE_AND_TAKE)


@pytest.mark.parametrize(
    "line",
    [
        "the thirty eight I made it a forty and the other one I made forty three and I added those",
        "thirty eight I turned into forty, the other one I turned into forty three and added them",
        "el treinta y ocho lo hice cuarenta y el otro lo hice cuarenta y tres y los sumé",
    ],
)
def test_two_numbers_made_others_are_put_together_and_nobody_said_what_that_is(line):
    language = Language.ES if line.startswith("el") else Language.EN
    reading = read(parse("38 + 45"), line, language)
    assert [told.step.text for told in reading.told] == [
        "38 + 2 = 40",
        "45 - 2 = 43",
        "40 + 43 = 83",
    ]
    assert reading.answer_text is None
    assert reading.family is Family.GIVE_AND_TAKE


@given(st.integers(11, 48), st.integers(2, 4), st.integers(2, 9))
def test_the_last_of_a_count_is_counted_though_more_is_put_on(start, tens, ones):
    other, end = 10 * tens + ones, start + 10 * tens
    assume(start % 10 and other != start)
    counted = ", ".join(str(start + 10 * place) for place in range(tens + 1))
    steps, answer, _ = heard(f"{other} + {start}", f"{counted}, then {ones} more, {end + ones}")
    assert w(f"{end - 10} + 10 = {end}", "op", "right") in steps
    assert answer == str(end + ones)


def test_a_count_goes_on_to_what_is_taken_from():
    line = "24 thirty four forty four fifty four and then six, so that's thirty and six, thirty six"
    steps, answer, family = heard("60 - 24", line)
    assert [step.split(" without")[0] for step in steps] == [
        "24 + 10 = 34",
        "34 + 10 = 44",
        "44 + 10 = 54",
        "54 + 6 = 60",
        "30 + 6 = 36",
    ]
    assert (answer, family) == ("36", Family.ADD_UP)


@given(st.permutations([2, 3, 5, 9]))
def test_two_of_three_numbers_said_as_a_reason_do_not_come_to_the_answer(numbers):
    one, other, rest = numbers[:3]
    whole = one + other + rest
    assume(whole not in numbers)
    problem = f"{one} + {rest} + {other}"
    steps, answer, _ = heard(problem, f"it's {whole} because the {one} and the {other}")
    assert answer == str(whole)
    assert all(f"{one} + {other} = {whole}" not in step for step in steps)


def test_a_count_of_two_acts_keeps_both():
    reading = read(parse("63 + 19"), "más veinte y menos uno, ochenta y dos", Language.ES)
    assert [told.step.text for told in reading.told] == ["63 + 20 = 83", "83 - 1 = 82"]


@pytest.mark.parametrize(
    "line", ["nine got one off the four and it's ten and three", "so now it's ten and three"]
)
def test_the_second_of_two_numbers_that_make_the_answer_is_not_the_answer(line):
    assert heard("9 + 4", line)[1] is None


@pytest.mark.parametrize("line", ["80-40 40 6-3 3 43", "80-40=40 6-3=3 40+3=43"])
def test_like_places_in_signs_are_a_split_though_the_less_was_taken_from_the_more(line):
    assert heard("83 - 46", line)[2] is Family.SPLIT


@given(st.integers(4, 9), st.integers(1, 3))
def test_one_addend_doubled_and_what_the_other_has_more_is_near_a_double(one, more):
    assume(one + more < 10)  # past nine it may be a jump
    whole = 2 * one + more
    line = f"{one} and {one} is {2 * one} and {more} more is {whole}"
    steps, answer, family = heard(f"{one + more} + {one}", line)
    assert steps == [f"{one} + {one} = {2 * one}", w(f"{2 * one} + {more} = {whole}", "left")]
    assert (answer, family) == (str(whole), Family.NEAR_DOUBLE)


@given(st.integers(3, 9), st.sampled_from([20, 30]))
def test_groups_too_many_come_off_what_was_there_before_them(size, friendly):
    over, whole = 2 * size, friendly * size
    assume(over != friendly)
    line = f"{friendly} times {size} {whole}, that's two {size}s too many, minus {over}"
    steps, answer, _ = heard(f"{friendly - 2} x {size}", f"{line}, {whole - over}")
    assert f"{whole} - {over} = {whole - over}" in [step.split(" without")[0] for step in steps]
    assert answer == str(whole - over)


def test_the_other_number_named_alone_is_made_what_is_said_behind_it():
    line = "I made the thirty eight a forty and the other one forty three and added those"
    steps, answer, family = heard("38 + 45", line)
    assert [step.split(" without")[0] for step in steps] == [
        "38 + 2 = 40",
        "45 - 2 = 43",
        "40 + 43 = 83",
    ]
    assert (answer, family) == (None, Family.GIVE_AND_TAKE)


@pytest.mark.parametrize(
    ("problem", "line", "last", "answer"),
    [
        (
            "80 - 43",
            "treinta y siete, es que ochenta menos cuarenta es cuarenta y faltaban otros tres",
            "40 - 3 = 37",
            37,
        ),
        (
            "38 + 45",
            "cuarenta y cinco más treinta setenta y cinco y faltaban otros ocho",
            "75 + 8 = 83",
            None,
        ),
    ],
)
def test_what_was_still_missing_is_a_hop_the_way_of_the_problem(problem, line, last, answer):
    reading = read(parse(problem), line, Language.ES)
    assert reading.told[-1].step.text == last
    assert reading.answer == answer
