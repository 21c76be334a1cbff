"""Folding a talk: never fails, whatever is retried, repeated or taken back."""

from dataclasses import replace
from typing import get_args

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.talk.strategies import talks
from waysaid.number import parse_equation
from waysaid.talk import State, fold, fold_on
from waysaid.talk import event as happened
from waysaid.talk.event import Body, EventId, Phase, PlannedProblem, Record, Relation, SaidStep
from waysaid.talk.fold import _APPLY, standing
from waysaid.ways import Family, Kind

OPENED = happened.TalkOpened(
    "Thursday", "en", "en", (PlannedProblem("p1", "40 + 26"), PlannedProblem("p2", "39 + 27"))
)


def talk(*bodies: Body) -> list[Record]:
    """Number the bodies as one desk would send them, after the opening."""
    return [Record(n, "desk", n, body, n) for n, body in enumerate((OPENED, *bodies))]


def shared(way: str = "w1", **more: object) -> happened.WayShared:
    """A way of 39 + 27 as a child told it."""
    step = SaidStep(Kind.JUMP, parse_equation("39 + 1 = 40"))
    said = {"child": "c1", "steps": (step,), "family": Family.BRIDGE, "answer": "66", **more}
    return happened.WayShared(way, "p2", **said)  # type: ignore[arg-type]


@settings(max_examples=count(test=400, sweep=20000), deadline=None)
@given(talks())
def test_folding_any_prefix_never_fails(records: list[Record]) -> None:
    for end in range(len(records) + 1):
        assert fold(records[:end]).order == (records[end - 1].order if end else 0)


@settings(max_examples=count(test=400, sweep=20000), deadline=None)
@given(talks(), st.randoms(use_true_random=False))
def test_any_repeated_or_shuffled_delivery_folds_to_the_same_state(
    records: list[Record], random: st.DataObject
) -> None:
    again = records + [r for r in records if random.random() < 0.5]  # type: ignore[attr-defined]
    random.shuffle(again)  # type: ignore[attr-defined]
    assert fold(again) == fold(records)


@settings(max_examples=count(test=400, sweep=20000), deadline=None)
@given(talks(), st.data())
def test_going_on_from_a_state_is_folding_all_anew(
    records: list[Record], data: st.DataObject
) -> None:
    cut = data.draw(st.integers(0, len(records)))
    later = data.draw(st.lists(st.sampled_from(records), max_size=3))
    for new in (records[cut:], [*records[cut:], *later]):
        assert fold_on(fold(records[:cut]), records[:cut], new) == fold([*records[:cut], *new])
    state = fold(())
    for at, record in enumerate(records):
        state = fold_on(state, records[:at], [record])
    assert state == fold(records)


@settings(max_examples=count(test=400, sweep=20000), deadline=None)
@given(talks())
def test_a_retry_taken_down_at_a_later_place_changes_nothing(records: list[Record]) -> None:
    last = records[-1].order
    late = [Record(last + n, r.client, r.sequence, r.body, 0) for n, r in enumerate(records, 1)]
    assert [r.order for r in standing(records + late)] == [r.order for r in standing(records)]


@settings(max_examples=count(test=400, sweep=20000), deadline=None)
@given(talks())
def test_undoing_the_last_event_gives_the_state_before_it(records: list[Record]) -> None:
    before, last = fold(records[:-1]), records[-1]
    undone = Record(last.order + 1, "third", 0, happened.Undo(EventId(last.client, last.sequence)))
    after = fold([*records, undone])
    if isinstance(last.body, happened.Undo):
        return
    assert _without_order(after) == _without_order(before)


@settings(max_examples=count(test=400, sweep=20000), deadline=None)
@given(talks())
def test_undoing_an_undo_brings_the_event_back(records: list[Record]) -> None:
    last = records[-1]
    undo = Record(last.order + 1, "third", 0, happened.Undo(EventId(last.client, last.sequence)))
    redo = Record(last.order + 2, "third", 1, happened.Undo(EventId("third", 0)))
    assert _without_order(fold([*records, undo, redo])) == _without_order(fold(records))


def test_every_kind_of_event_but_undo_has_its_rule() -> None:
    assert set(_APPLY) == set(get_args(Body)) - {happened.Undo}


def test_showing_a_problem_begins_thinking_and_coming_back_to_it_shows_its_ways() -> None:
    state = fold(talk(happened.ProblemShown("p1")))
    assert (state.now, state.phase, state.since) == ("p1", Phase.THINK, 1)
    again = [happened.ProblemShown(each) for each in ("p1", "p2", "p1")]
    assert fold(talk(*again)).phase is Phase.WAYS


def test_a_problem_can_join_in_the_middle() -> None:
    state = fold(talk(happened.ProblemAdded("p3", "39 + 26", "p1")))
    assert [item.id for item in state.problems] == ["p1", "p3", "p2"]


def test_a_way_brings_its_answer_and_an_edit_takes_the_old_one_off() -> None:
    shown = happened.ProblemShown("p2")
    state = fold(talk(shown, shared()))
    assert state.given("p2") == ("66",)
    edited = happened.WayEdited("w1", answer="56")
    assert fold(talk(shown, shared(), edited)).given("p2") == ("56",)


def test_a_correction_keeps_what_was_proposed_first_and_undo_takes_it_back() -> None:
    shown = happened.ProblemShown("p2")
    bridge, jump = (happened.Proposed(family) for family in (Family.BRIDGE, Family.JUMP))
    chosen = shared(family=Family.JUMP, proposed=bridge)
    anew = happened.WayEdited("w1", family=Family.SPLIT, proposed=jump)
    assert [way.corrected for way in fold(talk(shown, shared())).ways] == [False]
    assert fold(talk(shown, chosen)).ways[0].corrected
    way = fold(talk(shown, chosen, anew)).ways[0]
    assert (way.proposed, way.family, way.corrected) == (bridge, Family.SPLIT, True)
    back = happened.WayEdited("w1", family=Family.BRIDGE, proposed=jump)
    assert not fold(talk(shown, chosen, back)).ways[0].corrected
    records = talk(shown, shared(), anew)
    undo = happened.Undo(EventId(records[-1].client, records[-1].sequence))
    last = records[-1].order + 1
    assert not fold([*records, Record(last, "b", 0, undo)]).ways[0].corrected


def test_what_the_class_settled_stands_alone_and_only_if_it_was_heard() -> None:
    heard = [happened.AnswerHeard(t, "p1", t) for t in ("66", "56")]
    assert fold(talk(*heard)).given("p1") == ("66", "56")
    assert fold(talk(*heard, happened.AnswerSettled("p1", "56"))).given("p1") == ("56",)
    assert fold(talk(*heard, happened.AnswerSettled("p1", "99"))).given("p1") == ("66", "56")


def test_agreeing_is_kept_once_and_counts_as_speaking_while_a_pass_does_not() -> None:
    agreed = happened.WayAgreed("w1", "c2")
    passed = happened.Passed("p2", "c3")
    state = fold(talk(happened.ProblemShown("p2"), shared(), agreed, agreed, passed))
    assert state.ways[0].agreed == ("c2",)
    assert state.spoke() == ("c1", "c2")


def test_a_changed_way_keeps_the_first_one() -> None:
    changed = shared("w2", relation=Relation.CHANGES, to="w1", answer="65")
    state = fold(talk(happened.ProblemShown("p2"), shared(), changed))
    assert [way.id for way in state.ways] == ["w1", "w2"]
    assert state.given("p2") == ("66", "65")


def test_an_event_about_something_unknown_changes_nothing_else() -> None:
    before = fold(talk())
    for body in (happened.ProblemShown("p9"), happened.WayAgreed("w9", "c1"), stray_way()):
        stray = fold(talk(body))
        assert (stray.problems, stray.ways, stray.now) == (before.problems, (), None)


def stray_way() -> happened.WayShared:
    """A way of a problem that is not in the talk."""
    return happened.WayShared("w1", "p9", "c1")


def _without_order(state: State) -> State:
    return replace(state, order=0)
