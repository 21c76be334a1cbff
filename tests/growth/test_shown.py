"""Evidence is what happened in a talk, and nothing else."""

from collections import Counter
from datetime import date

from hypothesis import given

from tests.talk import strategies
from waysaid.growth import USED, Held, How, shown_in
from waysaid.number import parse_equation
from waysaid.talk import Record, Relation, SaidStep, fold
from waysaid.talk import event as happened
from waysaid.ways import Family, Kind

DAY = date(2026, 9, 7)


def held(*bodies, focus=None):
    records = [Record(order, "desk", order, body) for order, body in enumerate(bodies, 1)]
    return Held("t1", DAY, fold(records), focus)


OPENED = happened.TalkOpened("Today", "en", "es", (happened.PlannedProblem("p1", "37 + 25"),))


def way(name, child, answer="62", family=Family.BRIDGE, relation=Relation.OWN):
    steps = (SaidStep(Kind.JOIN, parse_equation("37 + 3 = 40")),)
    return happened.WayShared(name, "p1", child, relation, None, steps, "", family, answer)


def test_a_way_is_evidence_of_who_told_it_and_of_who_agreed():
    first, second = shown_in(held(OPENED, way("w1", "7"), happened.WayAgreed("w1", "9")))
    assert (first.child, first.how, first.family, first.right) == (
        "7",
        How.SAID,
        Family.BRIDGE,
        True,
    )
    assert (second.child, second.how, second.family, second.way) == (
        "9",
        How.AGREED,
        Family.BRIDGE,
        "w1",
    )


def test_agreeing_says_nothing_of_right_or_wrong():
    pieces = shown_in(held(OPENED, way("w1", "7", "52"), happened.WayAgreed("w1", "9")))
    assert [piece.right for piece in pieces] == [False, None]


def test_a_changed_way_is_told_apart_from_an_own_one():
    changed = way("w2", "9", relation=Relation.CHANGES)
    assert [piece.how for piece in shown_in(held(OPENED, way("w1", "7"), changed))] == [
        How.SAID,
        How.CHANGED,
    ]


def test_the_answer_that_ends_a_way_is_counted_once():
    heard = happened.AnswerHeard("a1", "p1", "62", "3")
    pieces = shown_in(held(OPENED, heard, way("w1", "7")))
    assert [piece.how for piece in pieces] == [How.SAID, How.ANSWERED]


def test_a_way_of_the_family_in_focus_is_marked_as_planned_for():
    told = (OPENED, way("w1", "7"), way("w2", "8", family=Family.SPLIT))
    assert [p.planned for p in shown_in(held(*told, focus=Family.BRIDGE))] == [True, False]


def test_a_way_taken_back_is_no_evidence():
    undone = happened.Undo(happened.EventId("desk", 2))
    assert shown_in(held(OPENED, way("w1", "7"), undone)) == ()


@given(strategies.talks())
def test_everybody_who_spoke_or_passed_is_in_the_evidence_and_nobody_else(records):
    state = fold(records)
    pieces = shown_in(Held("t", DAY, state))
    spoke = {piece.child for piece in pieces if piece.how is not How.PASSED} - {None}
    assert spoke == set(state.spoke())
    passed = {piece.child for piece in pieces if piece.how is How.PASSED}
    assert passed == {child for _, child in state.passed}


@given(strategies.talks())
def test_each_way_has_one_piece_for_who_told_it_and_one_for_each_who_agreed(records):
    state = fold(records)
    counted = Counter(p.way for p in shown_in(Held("t", DAY, state)) if p.how in USED)
    assert counted == Counter({way.id: 1 + len(way.agreed) for way in state.ways})


@given(strategies.talks())
def test_pieces_are_numbered_in_order(records):
    pieces = shown_in(Held("t", DAY, fold(records)))
    assert [piece.order for piece in pieces] == list(range(len(pieces)))
