"""Every slip gives the wrong answer that it is said to give, on random problems of every kind."""

from fractions import Fraction

import pytest

from tests.counts import count
from tests.slips.asked import KINDS, asked
from tests.slips.judge import answers
from waysaid.number import (
    Answer,
    Problem,
    Remainder,
    Said,
    answer_of,
    is_true,
    parse,
    remainder_of,
    value_of,
)
from waysaid.slips import Likely, SlipName, foresee, slips

EACH = count(test=150, sweep=5_000)


def _plain(said: Said) -> object:
    return (said.groups, said.left) if isinstance(said, Remainder) else said


def _problems(kind: str) -> list[tuple[str, Problem]]:
    return [(given, parse(given)) for given in asked(1, EACH, kind)]


@pytest.mark.parametrize("kind", KINDS)
def test_a_slip_gives_the_answer_it_is_said_to_give(kind: str) -> None:
    for given, problem in _problems(kind):
        for slip in foresee(problem):
            assert _plain(slip.wrong) in answers(slip.slug.value, given), (given, slip)


def test_the_judge_turns_down_an_answer_that_a_slip_does_not_give() -> None:
    for kind in KINDS:
        for given, problem in _problems(kind):
            for slip in foresee(problem):
                if isinstance(slip.wrong, int | Fraction):
                    other = slip.wrong + Fraction(1, 97)
                    assert other not in answers(slip.slug.value, given), (given, slip)


@pytest.mark.parametrize("kind", KINDS)
def test_the_work_ends_in_the_answer(kind: str) -> None:
    for given, problem in _problems(kind):
        for slip in foresee(problem):
            assert 0 <= slip.at < len(slip.steps), given
            if isinstance(slip.wrong, int | Fraction):
                assert value_of(slip.steps[-1].right) == slip.wrong, (given, slip)


CHOSEN = {
    slug
    for slug in SlipName
    if slug.value.startswith(("forget", "adjust", "part", "moved", "wrong-op", "misal", "stops"))
} | {
    SlipName.LOWERS_BLANK, SlipName.DIGITS_ALONE, SlipName.WRITE_ANSWER, SlipName.ADD_ALL,
    SlipName.LEFT_TO_RIGHT, SlipName.BRACKET_ONCE, SlipName.DIVISOR_SPLIT, SlipName.ONE_TO_ONE,
    SlipName.TOPS_ONLY, SlipName.BOTTOMS_ONLY, SlipName.ONLY_DIVIDED, SlipName.ONLY_MULTIPLIED,
    SlipName.BOTTOM_TAKEN, SlipName.REST_INSTEAD, SlipName.EMPTY_COUNTED, SlipName.ROUNDED_DOWN,
    SlipName.REST_TOO_LARGE, SlipName.ONE_SIDE_ONLY, SlipName.SHIFTED_ALIKE, SlipName.ANSWER_FIRST,
}  # fmt: skip
"""Slips of choosing, where each single step is right: the choice was not."""


@pytest.mark.parametrize("kind", KINDS)
def test_slips_of_choosing_have_true_steps(kind: str) -> None:
    for given, problem in _problems(kind):
        for slip in foresee(problem):
            true = all(map(is_true, slip.steps))
            assert true or slip.slug not in CHOSEN, (given, slip)


@pytest.mark.parametrize("kind", KINDS)
def test_it_slipped_where_a_step_is_false_or_at_the_end(kind: str) -> None:
    for given, problem in _problems(kind):
        for slip in foresee(problem):
            false = [at for at, step in enumerate(slip.steps) if not is_true(step)]
            last = [len(slip.steps) - 1]
            assert not false or slip.at in false or false == last, (given, slip)


@pytest.mark.parametrize("kind", KINDS)
def test_the_right_answer_has_no_slip(kind: str) -> None:
    for given, problem in _problems(kind):
        for right in _rights(problem):
            assert slips(problem, right) == (), given
            assert all(slip.wrong != right for slip in foresee(problem)), given


def _rights(problem: Problem) -> list[Answer | Remainder]:
    left = remainder_of(problem)
    return [answer_of(problem)] if left is None else [answer_of(problem), left]


@pytest.mark.parametrize("kind", KINDS)
def test_slips_are_the_foreseen_ones_with_that_answer(kind: str) -> None:
    for given, problem in _problems(kind):
        coming = foresee(problem)
        for wrong in dict.fromkeys(slip.wrong for slip in coming):
            found = slips(problem, wrong)
            alone = tuple(slip for slip in found if slip.fact is None)
            assert alone == tuple(slip for slip in coming if slip.wrong == wrong), given
            assert found[: len(alone)] == alone, given


@pytest.mark.parametrize("kind", KINDS)
def test_the_likeliest_come_first_and_none_twice(kind: str) -> None:
    order = list(Likely)
    for given, problem in _problems(kind):
        found = foresee(problem)
        ranks = [order.index(slip.likely) for slip in found]
        assert ranks == sorted(ranks), given
        assert len({(slip.slug, slip.wrong) for slip in found}) == len(found), given
        assert foresee(parse(given)) == found, given


@pytest.mark.parametrize("kind", KINDS)
def test_most_problems_have_a_slip_to_expect(kind: str) -> None:
    found = [bool(foresee(problem)) for _, problem in _problems(kind)]
    assert sum(found) * 2 > len(found)
