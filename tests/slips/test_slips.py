"""A wrong answer, and what may have led to it."""

import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as some

from waysaid.number import (
    Equation,
    Language,
    NoValue,
    Problem,
    is_true,
    parse,
    solve,
    text,
    value_of,
)
from waysaid.slips import Likely, SlipName, foresee, slip_note, slips
from waysaid.slips.catalogue import RULES

N = SlipName

EXAMPLES = (
    ("52 - 38", 26, N.SMALLER_FROM_LARGER, ("50 - 30 = 20", "8 - 2 = 6", "20 + 6 = 26")),
    ("306 - 148", 162, N.SMALLER_FROM_LARGER,
     ("8 - 6 = 2", "100 - 40 = 60", "200 - 100 = 100", "100 + 60 + 2 = 162")),
    ("81 - 38", 53, N.NO_REGROUP, ("11 - 8 = 3", "80 - 30 = 50", "50 + 3 = 53")),
    ("305 - 9", 396, N.ZERO_TO_NINE, ("15 - 9 = 6", "300 + 90 + 6 = 396")),
    ("305 - 9", 206, N.SKIP_ZERO, ("15 - 9 = 6", "200 + 6 = 206")),
    ("704 - 556", 158, N.ZERO_STAYS_TEN,
     ("14 - 6 = 8", "100 - 50 = 50", "600 - 500 = 100", "100 + 50 + 8 = 158")),
    ("733 - 216", 427, N.BORROW_LEFTMOST,
     ("13 - 6 = 7", "30 - 10 = 20", "600 - 200 = 400", "400 + 20 + 7 = 427")),
    ("80 - 27", 67, N.ZERO_TAKE, ("80 - 20 = 60", "0 - 7 = 7", "60 + 7 = 67")),
    ("42 - 16", 30, N.WRITE_ZERO, ("40 - 10 = 30", "2 - 6 = 0", "42 - 16 = 30")),
    ("439 - 4", 5, N.STOPS_SHORT, ("9 - 4 = 5",)),
    ("548 - 2", 436, N.LOWERS_BLANK, ("8 - 2 = 6", "540 - 110 = 430", "430 + 6 = 436")),
    ("112 - 1", 1, N.LOWERS_BLANK, ("110 - 110 = 0", "2 - 1 = 1")),
    ("39 + 26", 55, N.DROP_CARRY, ("30 + 20 = 50", "9 + 6 = 5", "50 + 5 = 55")),
    ("347 + 285", 622, N.DROP_CARRY,
     ("300 + 200 = 500", "40 + 80 = 120", "7 + 5 = 2", "500 + 120 + 2 = 622")),
    ("7 + 26 + 8", 21, N.DROP_CARRY, ("7 + 6 + 8 = 1", "20 + 1 = 21")),
    ("74 + 56", 1210, N.WRITE_CARRY, ("7 + 5 = 12", "4 + 6 = 10", "74 + 56 = 1210")),
    ("425 + 36", 785, N.MISALIGNED, ("425 + 360 = 785",)),
    ("8 + 3", 10, N.COUNT_START, ("8 + 1 = 9", "9 + 1 = 10")),
    ("3 + 8", 10, N.COUNT_START, ("8 + 1 = 9", "9 + 1 = 10")),
    ("12 - 3", 10, N.COUNT_START, ("12 - 1 = 11", "11 - 1 = 10")),
    ("12 - 9", 4, N.COUNT_START, ("12 - 9 = 4",)),
    ("54 - 38", 92, N.WRONG_OPERATION, ("54 + 38 = 92",)),
    ("38 + 54", 16, N.WRONG_OPERATION, ("54 - 38 = 16",)),
    ("37 + 25", 61, N.NEAR_MISS, ("37 + 20 = 57", "57 + 5 = 61")),
    ("37 + 25", 72, N.NEAR_MISS, ("37 + 20 = 67", "67 + 5 = 72")),
    ("65 - 29", 34, N.ADJUST_WRONG_WAY, ("65 - 30 = 35", "35 - 1 = 34")),
    ("53 + 18", 75, N.ADJUST_WRONG_WAY, ("53 + 20 = 73", "73 + 2 = 75")),
    ("65 - 29", 35, N.FORGET_ADJUST, ("65 - 30 = 35",)),
    ("63 - 28", 31, N.MOVED_ACROSS, ("28 + 2 = 30", "63 - 2 = 61", "61 - 30 = 31")),
    ("37 + 25", 57, N.PART_MISSING, ("37 + 20 = 57",)),
    ("37 + 25", 50, N.PART_MISSING, ("30 + 20 = 50",)),
    ("7 + 26 + 3", 33, N.PART_MISSING, ("7 + 26 = 33",)),
    ("37 + 25", 44, N.DIGITS_ALONE, ("37 + 2 = 39", "39 + 5 = 44")),
    ("37 + 25", 17, N.DIGITS_ALONE, ("3 + 7 = 10", "10 + 2 = 12", "12 + 5 = 17")),
    ("7 + 6 = _ + 2", 13, N.WRITE_ANSWER, ("7 + 6 = 13",)),
    ("8 + 4 = _ + 5", 17, N.ADD_ALL, ("8 + 4 + 5 = 17",)),
    ("7 + _ = 12", 19, N.ADD_ALL, ("7 + 12 = 19",)),
    ("25 + _ = 62", 43, N.SMALLER_FROM_LARGER, ("60 - 20 = 40", "5 - 2 = 3", "40 + 3 = 43")),
    ("_ - 5 = 8", 3, N.WRONG_OPERATION, ("8 - 5 = 3",)),
    ("58 + 47 - 38", 143, N.WRONG_OPERATION, ("58 + 47 + 38 = 143",)),
)  # fmt: skip


@pytest.mark.parametrize(("problem", "wrong", "slug", "steps"), EXAMPLES)
def test_a_slip_shows_the_work_behind_the_wrong_answer(
    problem: str, wrong: int, slug: SlipName, steps: tuple[str, ...]
) -> None:
    found = {slip.slug: slip for slip in slips(parse(problem), wrong)}
    assert slug in found
    assert tuple(text(step) for step in found[slug].steps) == steps


def test_every_rule_names_a_source_and_every_slug_is_used() -> None:
    assert all(rule.source for rule in RULES)
    assert {rule.slug for rule in RULES} == set(SlipName)


def test_the_right_answer_is_no_slip() -> None:
    assert slips(parse("37 + 25"), 62) == ()


def test_an_answer_that_nothing_explains_has_no_slip() -> None:
    assert slips(parse("37 + 25"), 999) == ()
    assert slips(parse("37 + 25"), Fraction(1, 2)) == ()


@pytest.mark.parametrize("problem", ["14 x 6", "84 / 4", "1/2 + 1/4", "3 - 8", "_ x 2 = 8", "5"])
def test_problems_beyond_the_first_set_raise_nothing(problem: str) -> None:
    for slip in foresee(parse(problem)):
        assert slip.wrong != solve(parse(problem))


def test_two_slips_can_lead_to_one_answer() -> None:
    found = {slip.slug for slip in slips(parse("500 - 234"), 334)}
    assert {N.SMALLER_FROM_LARGER, N.ZERO_TAKE} <= found


def _problems() -> some.SearchStrategy[Problem]:
    number = some.integers(0, 1000)
    two = some.builds(
        lambda a, b, sign: parse(f"{max(a, b)} {sign} {min(a, b)}"),
        number,
        number,
        some.sampled_from("+-"),
    )
    three = some.builds(lambda a, b, c: parse(f"{a + b} + {c} - {b}"), number, number, number)
    missing = some.builds(
        lambda a, b, form: parse(form.format(a=a, b=b, c=a + b)),
        number,
        number,
        some.sampled_from(("{a} + _ = {c}", "_ - {a} = {b}", "{c} = {a} + _", "{c} - _ = {a}")),
    )
    return two | three | missing


@given(_problems())
def test_foresee_slips_are_wrong_whole_and_listed_once(problem: Problem) -> None:
    found = foresee(problem)
    right = solve(problem)
    assert all(type(slip.wrong) is int and slip.wrong >= 0 for slip in found)
    assert all(slip.wrong != right for slip in found)
    assert len({(slip.slug, slip.wrong) for slip in found}) == len(found)


@given(_problems())
def test_the_likeliest_slips_come_first(problem: Problem) -> None:
    order = list(Likely)
    ranks = [order.index(slip.likely) for slip in foresee(problem)]
    assert ranks == sorted(ranks)


@given(_problems())
def test_the_work_ends_in_the_wrong_answer(problem: Problem) -> None:
    for slip in foresee(problem):
        assert value_of(slip.steps[-1].right) == slip.wrong
        assert 0 <= slip.at < len(slip.steps)


@given(_problems())
def test_slips_are_the_foresee_ones_with_that_answer(problem: Problem) -> None:
    found = foresee(problem)
    for slip in found:
        assert slip in slips(problem, slip.wrong)
        assert all(other.wrong == slip.wrong for other in slips(problem, slip.wrong))


TRUE_WORK = {
    N.FORGET_ADJUST, N.ADJUST_WRONG_WAY, N.PART_MISSING, N.MOVED_ACROSS, N.WRONG_OPERATION,
    N.MISALIGNED, N.STOPS_SHORT, N.LOWERS_BLANK, N.DIGITS_ALONE, N.WRITE_ANSWER, N.ADD_ALL,
}  # fmt: skip
"""Slips of choosing, where each single step is right."""


@given(_problems())
def test_slips_of_choosing_have_true_steps(problem: Problem) -> None:
    for slip in foresee(problem):
        if slip.slug in TRUE_WORK:
            assert all(is_true(step) for step in slip.steps)


@given(some.integers(1, 999), some.integers(1, 999))
def test_smaller_from_larger_takes_each_smaller_digit_from_the_larger(a: int, b: int) -> None:
    """The rule worked another way: on strings, digit by digit."""
    whole, part = max(a, b), min(a, b)
    top, bottom = str(whole), str(part).rjust(len(str(whole)), "0")
    wrong = int("".join(str(abs(int(x) - int(y))) for x, y in zip(top, bottom, strict=True)))
    found = {slip.slug for slip in slips(parse(f"{whole} - {part}"), wrong)}
    assert (N.SMALLER_FROM_LARGER in found) == (wrong != whole - part)


@given(some.integers(1, 999), some.integers(1, 999))
def test_drop_carry_loses_whole_tens_or_hundreds(a: int, b: int) -> None:
    for slip in foresee(parse(f"{a} + {b}")):
        if slip.slug is N.DROP_CARRY:
            assert (a + b - int(slip.wrong)) in (10, 100, 110)


def test_a_note_is_tentative_and_says_what() -> None:
    slip = next(slip for slip in slips(parse("39 + 26"), 55) if slip.slug is N.DROP_CARRY)
    assert slip_note(slip, Language.EN) == "the ten from 9 + 6 may have been lost"
    assert slip_note(slip, Language.ES) == "quizá se perdió la decena de 9 + 6"


def test_a_note_tells_which_way_an_adjustment_went() -> None:
    def note(problem: str, wrong: int) -> str:
        found = {slip.slug: slip for slip in slips(parse(problem), wrong)}
        return slip_note(found[N.ADJUST_WRONG_WAY], Language.EN)

    assert note("65 - 29", 34) == "the 1 may have come off where it goes on"
    assert note("53 + 18", 75) == "the 2 may have gone on where it comes off"


def test_a_lost_hundred_is_called_a_hundred() -> None:
    slip = next(slip for slip in slips(parse("347 + 285"), 532) if slip.slug is N.DROP_CARRY)
    assert slip_note(slip, Language.EN) == "the hundred from 40 + 80 may have been lost"


@given(_problems(), some.sampled_from(list(Language)))
def test_every_note_is_short_and_never_a_verdict(problem: Problem, language: Language) -> None:
    for slip in foresee(problem):
        note = slip_note(slip, language)
        assert len(note) <= 100
        assert re.search(r"\bmay\b" if language is Language.EN else r"\bquizá\b", note)
        assert not re.search(r"wrong|error|mistake|fail|mal\b|fallo|equivoc", note)
        assert not set("{}_-") & set(note)


def test_a_slip_is_a_plain_value() -> None:
    slip = slips(parse("52 - 38"), 26)[0]
    assert slip == replace(slip)
    assert slip.likely is Likely.OFTEN
    assert slip.source == "brown-burton1978"


def test_an_equation_with_two_blanks_has_no_slips() -> None:
    problem = parse("7 + _ = 12")
    assert isinstance(problem, Equation)
    assert foresee(Equation(problem.left, problem.left)) == ()
    with pytest.raises(NoValue):
        solve(Equation(problem.left, problem.left))
