"""The talk file: nothing is lost on the way out and back, and nothing strange gets in."""

import json
from datetime import date

import jsonschema
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.talk.strategies import talks
from waysaid.number import Language, Rest
from waysaid.paper import (
    LARGEST_TALK_FILE,
    BoardInFile,
    ChildInFile,
    SignalInFile,
    TalkFile,
    TalkFileError,
    outside,
    read_talk_file,
    talk_file_bytes,
    talk_schema,
    with_children,
)
from waysaid.paper.talk_file_said import SAID, Fault
from waysaid.talk import PlannedProblem, Record, fold
from waysaid.talk import event as happened

SOME = settings(max_examples=count(test=60, sweep=3000))
line = st.text(st.characters(exclude_categories=["Cc", "Cs"]), max_size=20)
problems = st.lists(
    st.builds(
        PlannedProblem,
        st.text("abc123", min_size=1, max_size=5),
        st.sampled_from(("40 + 25", "image dice: 4 3", "3/4 + 1/2", "about 398 x 21")),
        line,
    ),
    max_size=5,
    unique_by=lambda each: each.id,
).map(tuple)
lines = st.lists(line, max_size=3).map(tuple)
boards = st.builds(
    BoardInFile,
    st.lists(st.builds(SignalInFile, line, st.none() | line), max_size=6).map(tuple),
    lines,
    lines,
    st.sampled_from(Rest),
    st.integers(1, 60),
)


@st.composite
def files(draw, records=None):
    """A talk file: a talk of some children, a few of them with a name."""
    kept = draw(talks()) if records is None else records
    names = draw(st.dictionaries(st.sampled_from(("c1", "c2", "c3")), line))
    children, events = outside(kept, names)
    return TalkFile(
        draw(line),
        draw(st.sampled_from(("en", "es"))),
        draw(st.sampled_from(("en", "es"))),
        draw(st.none() | st.integers(0, 6)),
        draw(st.none() | st.dates(date(2000, 1, 1), date(2099, 12, 31))),
        draw(boards),
        draw(problems),
        draw(lines),
        children,
        events,
    )


@SOME
@given(files())
def test_a_talk_comes_back_from_its_file_as_it_was(talk):
    assert read_talk_file(talk_file_bytes(talk)) == talk


@SOME
@given(files())
def test_a_file_read_and_written_again_has_the_same_bytes(talk):
    written = talk_file_bytes(talk)
    assert talk_file_bytes(read_talk_file(written)) == written


@SOME
@given(talks())
def test_a_talk_folds_to_the_same_state_from_its_file(records):
    _children, events = outside(records, {})
    back = read_talk_file(talk_file_bytes(TalkFile("Today", children=_children, events=events)))
    ids = {f"c{place}": child for place, child in enumerate(_in_order(records), start=1)}
    assert fold(with_children(back.events, ids)) == fold(records)


def _in_order(records):
    named = (getattr(record.body, "child", None) for record in records)
    return dict.fromkeys(child for child in named if child)


@pytest.fixture(scope="module")
def schema():
    made = talk_schema()
    jsonschema.Draft202012Validator.check_schema(made)
    return jsonschema.Draft202012Validator(made)


@settings(max_examples=count(test=20, sweep=1000))
@given(talk=files())
def test_every_file_fits_the_schema(schema, talk):
    schema.validate(json.loads(talk_file_bytes(talk)))


def test_a_plan_is_a_file_without_events(schema):
    plan = TalkFile("Plan", problems=(PlannedProblem("p", "40 + 25", "to begin"),))
    written = talk_file_bytes(plan)
    schema.validate(json.loads(written))
    assert read_talk_file(written) == plan
    assert b'"events": []' in written


def test_a_file_without_names_has_none():
    records = [
        Record(1, "desk", 0, happened.TalkOpened("T", "en", "en")),
        Record(2, "desk", 1, happened.Passed("p", "17")),
        Record(3, "desk", 2, happened.Noticed("n", "12", "it grows")),
    ]
    assert outside(records, {"17": "Noor"})[0] == (ChildInFile("c1", "Noor"), ChildInFile("c2"))
    children, events = outside(records, {})
    written = talk_file_bytes(TalkFile("T", children=children, events=events))
    assert b"Noor" not in written
    assert b"17" not in written


def test_who_stays_nameless_is_named_by_no_event_and_her_passing_is_left_out():
    records = [
        Record(1, "desk", 0, happened.TalkOpened("T", "en", "en")),
        Record(2, "desk", 1, happened.Passed("p", "17")),
        Record(3, "desk", 2, happened.Noticed("n", "17", "it grows")),
        Record(4, "desk", 3, happened.Noticed("m", "18", "by two")),
    ]
    kept = with_children(records, {"17": None, "18": "5"})
    assert [each.order for each in kept] == [1, 2, 3]
    assert [getattr(each.body, "child", "-") for each in kept] == ["-", None, "5"]


WHOLE = json.loads(
    talk_file_bytes(
        TalkFile(
            "T",
            problems=(PlannedProblem("p", "40 + 25"),),
            children=(ChildInFile("c1", "Noor"),),
            events=(
                Record(1, "desk", 0, happened.TalkOpened("T", "en", "en")),
                Record(2, "desk", 1, happened.Passed("p", "c1"), 5),
            ),
        )
    )
)


def changed(**parts):
    return json.dumps({**WHOLE, **parts}).encode()


def with_event(**parts):
    return changed(events=[WHOLE["events"][0], {**WHOLE["events"][1], **parts}])


def opening(**parts):
    return changed(events=[{**WHOLE["events"][0], **parts}, WHOLE["events"][1]])


BOARD = WHOLE["board"]
REFUSED = [
    (b" " * (LARGEST_TALK_FILE + 1), Fault.TOO_LARGE),
    (b"\xff\xfe{", Fault.NO_TEXT),
    (b"{", Fault.NO_JSON),
    (b"[" * 100_000, Fault.NO_JSON),
    (b"9" * 5_000, Fault.NO_JSON),
    (b"[]", Fault.NO_OBJECT),
    (b"{}", Fault.NO_FORMAT),
    (changed(format="other"), Fault.NO_FORMAT),
    (changed(version=2), Fault.OTHER_VERSION),
    (changed(version=True), Fault.OTHER_VERSION),
    (changed(version="\ud800"), Fault.OTHER_VERSION),
    (json.dumps({key: WHOLE[key] for key in WHOLE if key != "day"}).encode(), Fault.MISSING),
    (changed(score=3), Fault.STRANGE),
    (b'{"format": "waysaid-talk", "format": "waysaid-talk"}', Fault.TWICE),
    (changed(problems=WHOLE["problems"] * 2), Fault.TWICE),
    (changed(children=WHOLE["children"] * 2), Fault.TWICE),
    (changed(events=WHOLE["events"] * 2), Fault.TWICE),
    (changed(board=[]), Fault.NO_PART),
    (changed(problems=[3]), Fault.NO_PART),
    (changed(title=3), Fault.NO_LINE),
    (changed(title="x" * 301), Fault.NO_LINE),
    (changed(title="a\nb"), Fault.NO_LINE),
    (changed(title="\ud800"), Fault.NO_LINE),
    (changed(problems=[{"id": "", "text": "1 + 1", "why": ""}]), Fault.NO_LINE),
    (changed(grade=2.0), Fault.NO_WHOLE),
    (b'{"version": NaN}', Fault.NO_WHOLE),
    (changed(grade=7), Fault.NO_NUMBER),
    (changed(grade=True), Fault.NO_NUMBER),
    (with_event(at=-1), Fault.NO_NUMBER),
    (with_event(sequence=2**31), Fault.NO_NUMBER),
    (changed(language="fr"), Fault.NO_CHOICE),
    (changed(board={**BOARD, "rest": []}), Fault.NO_CHOICE),
    (changed(children={}), Fault.NO_LIST),
    (changed(questions=["?"] * 21), Fault.NO_LIST),
    (changed(day="2026-02-30"), Fault.NO_DATE),
    (changed(day="20260914"), Fault.NO_DATE),
    (changed(problems=[{"id": "p", "text": "40 ~ 2", "why": ""}]), Fault.NO_PROBLEM),
    (with_event(kind="scored"), Fault.NO_EVENT),
    (with_event(right=True), Fault.NO_EVENT),
    (with_event(kind="\ud800"), Fault.NO_EVENT),
    (changed(events=WHOLE["events"][1:]), Fault.NO_OPENING),
    (opening(language="fr"), Fault.NO_CHOICE),
    (opening(board_language=""), Fault.NO_CHOICE),
    (opening(image_seconds=0), Fault.NO_NUMBER),
    (changed(events=[WHOLE["events"][0], {**WHOLE["events"][0], "sequence": 1}]), Fault.TWICE),
    (changed(children=[]), Fault.NO_CHILD),
]


@pytest.mark.parametrize(("content", "fault"), REFUSED, ids=lambda each: getattr(each, "name", ""))
def test_what_does_not_fit_is_refused_with_one_sentence(content, fault):
    with pytest.raises(TalkFileError) as refused:
        read_talk_file(content)
    assert refused.value.fault is fault
    for language in Language:
        sentence = refused.value.sentence(language)
        assert sentence.count("\n") == 0
        assert len(sentence) < 700
        assert sentence.encode()
        assert "{where}" not in sentence
        assert "{shown}" not in sentence


def test_every_fault_is_tried_and_said_in_both_languages():
    assert {fault for _, fault in REFUSED} == set(Fault)
    assert all(set(SAID[language]) == set(Fault) for language in Language)


def test_the_schema_refuses_what_reading_refuses_of_the_form(schema):
    beyond = [opening(language="fr"), opening(board_language=""), opening(image_seconds=0)]
    seen = {Fault.MISSING, Fault.STRANGE, Fault.NO_NUMBER, Fault.NO_CHOICE, Fault.NO_LIST}
    for content, fault in REFUSED:
        if fault in seen and content not in beyond:
            assert not schema.is_valid(json.loads(content)), content
