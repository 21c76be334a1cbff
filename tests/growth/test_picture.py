"""The class picture says who has used what since when: a fold of the evidence, and no more."""

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from tests.growth.rooms import CHILDREN, past
from waysaid.growth import (
    USED,
    How,
    Past,
    Room,
    Shown,
    Standing,
    TalkPast,
    class_picture,
    ways_of_child,
)
from waysaid.ways import Family

DAY = date(2026, 9, 7)


def talk(number, *problems, focus=None):
    return TalkPast(f"t{number}", DAY + timedelta(days=number), focus, problems)


def told(number, child, family=Family.BRIDGE, how=How.SAID, **more):
    return Shown(f"t{number}", DAY + timedelta(days=number), 0, child, how, family=family, **more)


def of(past_, family=Family.BRIDGE):
    return next(use for use in class_picture(past_).families if use.family is family)


def test_three_children_in_three_talks_bring_it_by_themselves():
    three = Past(tuple(map(talk, range(3))), (told(0, "1"), told(1, "2"), told(2, "3")))
    assert of(three).standing is Standing.BY_ITSELF
    two = replace(three, shown=(told(0, "1"), told(1, "2"), told(2, "2")))
    assert of(two).standing is Standing.COMING


def test_a_family_told_only_where_the_plan_was_about_it_is_coming():
    shown = tuple(told(at, str(at), planned=True) for at in range(3))
    assert of(Past(tuple(map(talk, range(3))), shown)).standing is Standing.COMING


def test_a_family_not_told_in_the_last_twenty_talks_is_not_heard_lately():
    talks = tuple(map(talk, range(24)))
    assert of(Past(talks, (told(0, "1"),))).standing is Standing.NOT_LATELY
    assert of(Past(talks, (told(5, "1"),))).standing is Standing.COMING


def test_a_family_that_problems_invite_and_nobody_brought_is_listed():
    assert of(Past((talk(0, "37 + 25"),))).standing is Standing.NOBODY


def test_children_stand_in_the_order_in_which_it_went_round():
    shown = (told(0, "9"), told(0, "2", how=How.AGREED), told(1, "5"), told(2, "9"))
    use = of(Past(tuple(map(talk, range(3))), shown))
    assert [(each.child, each.how, each.times) for each in use.children] == [
        ("9", How.SAID, 2),
        ("2", How.AGREED, 1),
        ("5", How.SAID, 1),
    ]


@given(st.integers(0, 10**6), st.integers(1, 12))
def test_each_child_s_use_is_found_again_by_counting(seed, talks):
    whole = past(Room(CHILDREN[:6]), seed, talks)
    for use in class_picture(whole).families:
        pieces = [p for p in whole.shown if p.family is use.family and p.how in USED]
        assert {each.child for each in use.children} == {p.child for p in pieces} - {None}
        for each in use.children:
            own = [piece for piece in pieces if piece.child == each.child]
            assert (each.first, each.last, each.times) == (own[0], own[-1], len(own))


@given(st.integers(0, 10**6))
def test_a_child_s_ways_are_all_hers_and_in_order(seed):
    whole = past(Room(CHILDREN[:6]), seed, 8)
    found = [piece for child in CHILDREN[:6] for piece in ways_of_child(whole, child)]
    assert sorted(found, key=lambda p: (p.talk, p.order)) == [
        piece for piece in whole.shown if piece.how in USED
    ]


def test_a_way_of_nobody_named_is_counted_as_told():
    use = of(Past((talk(0),), (told(0, None), told(0, "1"), told(0, "2", how=How.AGREED))))
    assert (use.told, [each.child for each in use.children]) == (2, ["1", "2"])
