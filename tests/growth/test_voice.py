"""Voices are counted by turns and days; a pass is respected."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from tests.growth.rooms import CHILDREN, past
from waysaid.growth import HEARD_LATELY, How, Past, Room, Shown, TalkPast, to_invite, voices

DAY = date(2026, 9, 7)


def talks(many):
    return tuple(TalkPast(f"t{at}", DAY + timedelta(days=at)) for at in range(many))


def turn(at, child, how=How.SAID):
    return Shown(f"t{at}", DAY + timedelta(days=at), 0, child, how)


def test_turns_days_and_talks_since_are_told():
    (voice,) = voices(Past(talks(8), (turn(1, "1"), turn(2, "1", How.NOTICED))), ["1"])
    assert (voice.turns, voice.turns_lately, voice.last, voice.since) == (
        2,
        0,
        DAY + timedelta(days=2),
        5,
    )
    assert not voice.heard_lately


def test_a_pass_is_no_turn_and_leaves_a_child_alone_for_two_talks():
    long_ago = Past(talks(8), (turn(5, "1", How.PASSED),))
    just = Past(talks(8), (turn(6, "1", How.PASSED),))
    assert to_invite(voices(long_ago, ["1"])) == ("1",)
    assert to_invite(voices(just, ["1"])) == ()
    assert voices(just, ["1"])[0].turns == 0


def test_the_longest_unheard_comes_first_and_at_most_three_are_named():
    shown = (turn(3, "1"), turn(1, "2"), turn(2, "3"), turn(9, "5"))
    heard = voices(Past(talks(10), shown), ["1", "2", "3", "4", "5"])
    assert to_invite(heard) == ("4", "2", "3")


@given(st.integers(0, 10**6), st.integers(0, 15))
def test_nobody_is_invited_who_was_heard_lately_or_just_passed(seed, many):
    whole = past(Room(CHILDREN), seed, many)
    heard = voices(whole, CHILDREN)
    lately = {talk.id for talk in whole.talks[-HEARD_LATELY:]}
    spoke = {p.child for p in whole.shown if p.talk in lately and p.how is not How.PASSED}
    assert [voice.child for voice in heard] == list(CHILDREN)
    assert not spoke & set(to_invite(heard))
    assert {voice.child for voice in heard if voice.heard_lately} == spoke - {None}
