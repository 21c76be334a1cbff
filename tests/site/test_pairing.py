"""Six digits: once, five wrong tries, five minutes, and a limit on all guesses together."""

import re

import pytest

from waysaid.site.models import Role
from waysaid.site.pairing import (
    LIFE_SECONDS,
    MOST_WRONG,
    MOST_WRONG_IN_ALL,
    Code,
    Pairing,
    Refused,
)


class Clock:
    """A clock that stands until it is moved."""

    def __init__(self):
        self.now = 1000.0

    def __call__(self):
        return self.now


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def pairing(clock):
    return Pairing(clock)


def other_than(code):
    return f"{(int(code.digits) + 1) % 1_000_000:06d}"


def test_a_code_is_six_digits_and_is_taken_once(pairing):
    code = pairing.offer(1, Role.BOARD)
    assert re.fullmatch(r"[0-9]{6}", code.digits)
    assert pairing.redeem(code.digits, 1) == code
    assert pairing.redeem(code.digits, 1) is Refused.WRONG


def test_a_code_ends_after_five_minutes(pairing, clock):
    code = pairing.offer(1, Role.BOARD)
    clock.now += LIFE_SECONDS - 1
    assert pairing.codes_of(1) == (code,)
    clock.now += 1
    assert pairing.codes_of(1) == ()
    assert pairing.redeem(code.digits, 1) is Refused.WRONG


def test_the_fifth_wrong_try_ends_the_code(pairing):
    code = pairing.offer(1, Role.DESK)
    for _ in range(MOST_WRONG - 1):
        assert pairing.redeem(other_than(code), 1) is Refused.WRONG
    assert pairing.codes_of(1)
    assert pairing.redeem(other_than(code), 1) is Refused.WRONG
    assert pairing.redeem(code.digits, 1) is Refused.WRONG


def test_after_four_wrong_tries_the_right_one_is_taken(pairing):
    code = pairing.offer(1, Role.DESK)
    for _ in range(MOST_WRONG - 1):
        pairing.redeem(other_than(code), 1)
    assert isinstance(pairing.redeem(code.digits, 1), Code)


def test_a_code_opens_no_other_talk(pairing):
    code = pairing.offer(1, Role.DESK)
    assert pairing.redeem(code.digits, 2) is Refused.WRONG
    assert pairing.redeem(code.digits, 1) == code


def test_a_new_code_ends_the_one_before(pairing):
    first, second = pairing.offer(1, Role.DESK), pairing.offer(1, Role.DESK)
    assert pairing.redeem(first.digits, 1) is Refused.WRONG or first.digits == second.digits
    assert pairing.codes_of(1)[0].digits == second.digits


def test_guesses_are_limited_in_all_however_many_codes_are_asked_for(pairing, clock):
    for _ in range(MOST_WRONG_IN_ALL):
        code = pairing.offer(1, Role.DESK)
        assert pairing.redeem(other_than(code), 1) is Refused.WRONG
    code = pairing.offer(1, Role.DESK)
    assert pairing.redeem(code.digits, 1) is Refused.TOO_MANY
    clock.now += LIFE_SECONDS
    code = pairing.offer(1, Role.DESK)
    assert pairing.redeem(code.digits, 1) == code


@pytest.mark.parametrize("given", ["", "12345", "1234567", "abcdef", "１２３４５６", "😀"])
def test_what_is_no_code_is_a_wrong_one(pairing, given):
    pairing.offer(1, Role.DESK)
    assert pairing.redeem(given, 1) is Refused.WRONG


def test_switching_off_ends_a_talks_codes(pairing):
    kept, ended = pairing.offer(1, Role.DESK), pairing.offer(2, Role.DESK)
    pairing.end(2)
    assert pairing.redeem(ended.digits, 2) is Refused.WRONG or ended.digits == kept.digits
    assert pairing.codes_of(1) == (kept,) or pairing.codes_of(1)[0].wrong
