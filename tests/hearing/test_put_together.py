"""Results put together unnamed, parts worked one by one, a number said in another's stead."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.hearing.heard import heard, w
from waysaid.ways import Family


@given(st.integers(2, 9), st.integers(2, 9), st.integers(3, 9))
def test_results_put_together_without_naming_them_are_a_step_and_no_answer(tens, ones, times):
    made = (10 * tens * times, ones * times)
    line = f"{10 * tens} times {times} is {made[0]} and {ones} times {times} is {made[1]}"
    steps, answer, _ = heard(f"{10 * tens + ones} x {times}", f"{line} and then add those")
    whole = f"{made[0]} + {made[1]} = {sum(made)}"
    assert w(whole, "left", "right", "result") in steps
    assert answer is None


def test_a_plain_add_puts_its_own_numbers_together():
    line = "two times ten is 20. two times five is 10. twenty add ten and I got 30"
    steps, _, _ = heard("1/2 of 60", line)
    assert steps[-1] == "20 + 10 = 30"


def test_what_they_come_to_stays_as_it_was_said():
    line = "thirty times five is 150 and four times five is twenty, then add them together, 160"
    steps, answer, family = heard("34 x 5", line)
    assert w("150 + 20 = 160", "left", "right") in steps
    assert (answer, family) == ("160", Family.BREAK_UP)


@pytest.mark.parametrize(
    ("problem", "line", "steps"),
    [
        (
            "96 / 4",
            "ninety six split into eighty and sixteen, that's twenty and four",
            {"80 / 4 = 20", "16 / 4 = 4"},
        ),
        (
            "13 x 4",
            "thirteen is ten and three, so forty and twelve",
            {"10 x 4 = 40", "3 x 4 = 12"},
        ),
        (
            "432 / 6",
            "four twenty divided by six is seventy and the twelve that's left makes two more",
            {"12 / 6 = 2"},
        ),
    ],
)
def test_parts_of_a_number_are_worked_one_by_one(problem, line, steps):
    found, answer, _ = heard(problem, line)
    assert steps <= {step.split(" without")[0] for step in found}
    assert answer is None


@pytest.mark.parametrize("word", ["I mean", "sorry", "no"])
def test_a_number_is_taken_back_behind_the_one_said_in_its_stead(word):
    line = f"ten twelves is 120 and three twelves is thirty, thirty six {word}, so one fifty six"
    steps, answer, _ = heard("13 x 12", line)
    assert "3 x 12 = 36" in [step.split(" without")[0] for step in steps]
    assert answer == "156"


@given(st.sampled_from([(15, 2, 3), (14, 2, 5), (25, 2, 4), (12, 3, 5)]), st.integers(6, 9))
def test_a_factor_taken_back_is_no_step(factors, wrong):
    start, one, other = factors
    ends = start * one
    line = f"{start} times {one} {ends}, times {wrong}, no, times {other}, {ends * other}"
    steps, answer, _ = heard(f"{start} x {one * other}", line)
    assert [step.split(" without")[0] for step in steps] == [
        f"{start} x {one} = {ends}",
        f"{ends} x {other} = {ends * other}",
    ]
    assert answer == str(ends * other)
