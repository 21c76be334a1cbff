"""The board: listed fields only, the same look for every way, sizes as promised."""

import json
import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.talk.strategies import talks
from waysaid.drawing import Picture
from waysaid.number import Language, parse_equation
from waysaid.strings import Does
from waysaid.talk import (
    Body,
    Mark,
    Phase,
    PlannedProblem,
    Record,
    Relation,
    SaidStep,
    Signal,
    State,
    Wall,
    board_view,
    body_from_json,
    fold,
    what_if_outcome,
    what_if_refused,
)
from waysaid.talk import event as happened
from waysaid.talk.sheet import SCREEN, Sheet
from waysaid.ways import Family, Kind

NAMES = {"c1": "Wren", "c2": "Tomas", "c3": "Noor"}
WALL = Wall((Signal("I have a way", "way"),), ("We listen.",), ("I noticed",), None, NAMES)
WIDE = 1778

ALLOWED = {
    "": "order phase title language paused turn_and_talk signals norms starters background layout "
    "problem image earlier answers tiles strokes connect",
    "signals": "word icon picture",
    "layout": "side tile height",
    "problem": "id text spoken",
    "image": "scene left",
    "earlier": "id text spoken answers now",
    "answers": "text names",
    "tiles": "id name also relation to_name folded picture words lines scene",
    "strokes": "id way strokes",
    "connect": "rows noticings scene what_if",
    "rows": "id text spoken answers",
    "noticings": "id name words marks join",
    "what_if": "id name rows",
    "scene": "width height title desc shapes",
    "shapes": "t x y x1 y1 x2 y2 d r stroke size anchor text width height radius filled",
}


def view(*bodies: Body, wide: int = WIDE) -> dict[str, Any]:
    """The board after these events of a talk about two problems."""
    opened = happened.TalkOpened(
        "Thursday",
        "es",
        "en",
        (PlannedProblem("p1", "39 + 26", "CANARY why"), PlannedProblem("p2", "39 + 27")),
    )
    records = [Record(n, "desk", n, body, n) for n, body in enumerate((opened, *bodies))]
    return board_view(fold(records), WALL, wide)


def way(way_id: str, *equations: str, **more: Any) -> happened.WayShared:
    """A way of 39 + 27 with these equations."""
    steps = tuple(SaidStep(Kind.JUMP, parse_equation(each)) for each in equations)
    said = {"child": "c1", "steps": steps, "answer": "66", **more}
    return happened.WayShared(way_id, "p2", **said)


def keys_used(value: Any, under: str = "") -> Iterator[tuple[str, str]]:
    """Yield every (name of the object, key) in a payload."""
    if isinstance(value, dict):
        for key, inside in value.items():
            yield under, key
            yield from keys_used(inside, key)
    elif isinstance(value, list):
        for inside in value:
            yield from keys_used(inside, under)


def labels(scene: dict[str, Any]) -> list[dict[str, Any]]:
    """The texts of a scene."""
    return [shape for shape in scene["shapes"] if shape["t"] == "label"]


@settings(max_examples=count(test=400, sweep=10000), deadline=None)
@given(talks(), st.integers(400, 3000))
def test_only_listed_fields_reach_a_board(records: list[Record], wide: int) -> None:
    payload = board_view(fold(records), WALL, wide)
    assert json.loads(json.dumps(payload)) == payload
    for under, key in keys_used(payload):
        assert key in ALLOWED[under].split(), (under, key)


def test_what_is_private_stays_behind() -> None:
    said = {"family": Family.BRIDGE, "words": "CANARY words", "foreseen": True}
    told = way("w1", "39 + 1 = 40", proposed=happened.Proposed(Family.JUMP), **said)
    linked = happened.LinkDrawn("n1", "CANARY link", (Mark("p1", 0),), "c2", "one more")
    passed = happened.Passed("p2", "c3")
    shown = [happened.ProblemShown("p1"), happened.ProblemShown("p2")]
    phases = [happened.PhaseSet(phase) for phase in Phase]
    for phase in phases:
        text = json.dumps(view(*shown, told, linked, passed, phase))
        assert "CANARY" not in text
        assert "bridge" not in text
        assert "jump" not in text
        assert "foreseen" not in text
        assert "proposed" not in text
        assert "Noor" not in text


@settings(max_examples=count(test=300, sweep=5000), deadline=None)
@given(talks())
def test_no_number_stands_on_a_board_before_a_child_said_it(records: list[Record]) -> None:
    """The answers of the string are nowhere until one is heard: only numbers given are shown."""
    silent = [r for r in records if not isinstance(r.body, _SAYING)]
    state = fold(silent)
    payload = board_view(state, WALL, WIDE)
    shown = " ".join(_texts(payload))
    asked = " ".join(item.text for item in state.problems)
    assert set(re.findall(r"\d+", shown)) <= set(re.findall(r"\d+", asked))


_SAYING = (
    happened.AnswerHeard,
    happened.WayShared,
    happened.WayEdited,
    happened.WhatIf,
    happened.WhatIfAnswer,
    happened.Noticed,
    happened.LinkDrawn,
)


def _texts(value: Any, key: str = "") -> Iterator[str]:
    """Yield the words of a payload that a class reads, ids and lengths left out."""
    if isinstance(value, str) and key in ("text", "desc", "title", "words", "spoken", ""):
        yield value
    elif isinstance(value, dict):
        for name, inside in value.items():
            yield from _texts(inside, name)
    elif isinstance(value, list):
        for inside in value:
            yield from _texts(inside, key)


@pytest.mark.parametrize("picture", list(Picture))
@pytest.mark.parametrize("wide", [1333, 1778, 2333])
def test_right_and_wrong_numbers_look_the_same(picture: Picture, wide: int) -> None:
    shown = happened.ProblemShown("p2")
    right = way("w1", "39 + 20 = 59", "59 + 7 = 66", picture=picture)
    wrong = way("w1", "39 + 20 = 59", "59 + 7 = 68", picture=picture, answer="68")
    of_right, of_wrong = (view(shown, told, wide=wide) for told in (right, wrong))
    assert _numerals_out(of_right) == _numerals_out(of_wrong)


def _numerals_out(payload: dict[str, Any]) -> str:
    """The payload with the end that differs, in figures and in words, made the same."""
    text = json.dumps(payload)
    return re.sub(r"\b6[68]\b", "NN", text).replace("sixty-eight", "sixty-six")


def test_every_way_is_laid_out_alike_and_in_the_order_heard() -> None:
    heard = [
        way("w1", "39 + 1 = 40", "40 + 26 = 66"),
        way("w2", "30 + 20 = 50", "9 + 7 = 16", "50 + 6 = 56", child="c2", answer="56"),
        way("w3", "40 + 27 = 67", "67 - 1 = 66", child="c3"),
    ]
    payload = view(happened.ProblemShown("p2"), *heard)
    assert [tile["name"] for tile in payload["tiles"]] == ["Wren", "Tomas", "Noor"]
    assert {frozenset(tile) for tile in payload["tiles"]} == {frozenset(payload["tiles"][0])}
    assert [answer["text"] for answer in payload["answers"]] == ["66", "56"]


def test_parts_that_nobody_said_are_left_blank() -> None:
    step = SaidStep(Kind.JUMP, parse_equation("40 + 26 = _"))
    told = happened.WayShared("w1", "p2", "c1", steps=(step,), picture=Picture.EQUATIONS)
    payload = view(happened.ProblemShown("p2"), told)
    assert payload["tiles"][0]["lines"] == ["40 + 26"]
    assert payload["answers"] == []


def test_a_changed_way_folds_and_the_new_one_names_it() -> None:
    changed = way("w2", "39 + 27 = 66", relation=Relation.CHANGES, to="w1")
    payload = view(happened.ProblemShown("p2"), way("w1", "39 + 27 = 56"), changed)
    assert [tile["folded"] for tile in payload["tiles"]] == [True, False]
    assert payload["tiles"][1]["to_name"] == "Wren"


def test_hiding_names_leaves_tags_without_names_everywhere() -> None:
    noticed = happened.Noticed("n1", "c2", "they match", (Mark("p1", "row"),))
    hidden = happened.NamesHidden(True)
    told = way("w1", "39 + 1 = 40")
    phase = happened.PhaseSet(Phase.CONNECT)
    payload = view(happened.ProblemShown("p2"), told, noticed, hidden, phase)
    assert not any(name in json.dumps(payload) for name in NAMES.values())
    assert payload["connect"]["noticings"][0]["words"] == "they match"


def test_connecting_shows_what_was_given_until_the_class_settles() -> None:
    heard = [happened.AnswerHeard(text, "p1", text) for text in ("65", "55")]
    base: list[Body] = [happened.ProblemShown("p1"), *heard, happened.PhaseSet(Phase.CONNECT)]
    assert view(*base)["connect"]["rows"][0]["answers"] == ["65", "55"]
    settled = view(*base, happened.AnswerSettled("p1", "55"))
    assert settled["connect"]["rows"][0]["answers"] == ["55"]


def test_what_is_drawn_by_hand_shows_where_it_was_drawn_and_nowhere_else() -> None:
    line = ((1, 2, 30, 40),)
    drawn = [
        happened.StrokesDrawn("s1", "p1", None, line, happened.Ground.PROBLEM),
        happened.StrokesDrawn("s2", "p1", "w1", line),
        happened.StrokesDrawn("s3", None, None, line, happened.Ground.STRING),
        happened.StrokesDrawn("s4", "p2", None, line),
    ]
    seen = {
        phase: [
            each["id"]
            for each in view(happened.ProblemShown("p1"), *drawn, happened.PhaseSet(phase))[
                "strokes"
            ]
        ]
        for phase in (Phase.THINK, Phase.ANSWERS, Phase.WAYS, Phase.CONNECT)
    }
    assert seen == {
        Phase.THINK: ["s1"],
        Phase.ANSWERS: ["s1"],
        Phase.WAYS: ["s2"],
        Phase.CONNECT: ["s3"],
    }


def test_a_what_if_shows_no_answer_until_a_child_says_it() -> None:
    places = (Mark("p1", 0), Mark("p2", 0))
    what_if = happened.WhatIf("q1", 2, places, "c3")
    base: list[Body] = [
        happened.ProblemShown("p1"),
        happened.ProblemShown("p2"),
        happened.PhaseSet(Phase.CONNECT),
        what_if,
    ]
    rows = view(*base)["connect"]["what_if"]["rows"]
    assert [(row["text"], row["answers"]) for row in rows] == [("41 + 26", []), ("41 + 27", [])]
    said = view(*base, happened.WhatIfAnswer("q1", "p2", "68"))["connect"]["what_if"]["rows"]
    assert [row["answers"] for row in said] == [[], ["68"]]


@pytest.mark.parametrize(
    ("does", "amount", "texts"),
    [
        (Does.TIMES, 2, ["80 + 25", "39 + 26"]),
        (Does.TIMES, 10, ["400 + 25", "39 + 26"]),
        (Does.OVER, 2, ["20 + 25", "39 + 26"]),
        (Does.ADD, 2, ["42 + 25", "39 + 26"]),
    ],
)
def test_a_what_if_doubles_halves_and_makes_ten_times(
    does: Does, amount: int, texts: list[str]
) -> None:
    state = supposing(happened.WhatIf("q1", amount, (Mark("p1", 0),), does=does))
    shown = board_view(state, WALL, WIDE)["connect"]["what_if"]
    assert [row["text"] for row in shown["rows"]] == texts
    assert what_if_refused(state, Language.EN) is None


@pytest.mark.parametrize(("does", "text"), [(Does.SWAP, "25 + 40"), (Does.MOVE, "37 + 28")])
def test_a_what_if_swaps_two_numbers_or_moves_some_across(does: Does, text: str) -> None:
    state = supposing(happened.WhatIf("q1", 3, (Mark("p1", 0), Mark("p1", 1)), does=does))
    shown = board_view(state, WALL, WIDE)["connect"]["what_if"]
    assert [row["text"] for row in shown["rows"]] == [text, "39 + 26"]


@pytest.mark.parametrize("does", Does)
def test_what_a_what_if_does_to_the_answers_is_for_the_desk_alone(does: Does) -> None:
    event = happened.WhatIf("q1", 2, (Mark("p1", 0), Mark("p1", 1)), does=does)
    state = supposing(event) if does is not Does.OVER else supposing(replaced(event))
    told = what_if_outcome(state, Language.EN)
    assert told is not None
    assert told["id"] == "q1"
    assert told["says"].startswith("The answer ")
    board = json.dumps(board_view(state, WALL, WIDE), default=str)
    assert told["says"] not in board
    assert not {"130", "69", "67"} & set(re.findall(r"\d+", board))


def replaced(event: happened.WhatIf) -> happened.WhatIf:
    """The same on a number that can be cut in half."""
    return replace(event, places=(Mark("p1", 0),))


def test_a_what_if_that_changes_nothing_or_cannot_be_made_has_no_outcome() -> None:
    assert what_if_outcome(supposing(), Language.EN) is None
    assert what_if_outcome(supposing(happened.WhatIf("q1", 2, ())), Language.EN) is None
    refused = happened.WhatIf("q1", 2, (Mark("p2", 0),), does=Does.OVER)
    assert what_if_outcome(supposing(refused), Language.ES) is None


def test_a_what_if_that_cannot_be_made_stays_off_the_board_and_says_why() -> None:
    state = supposing(happened.WhatIf("q1", 2, (Mark("p2", 0),), does=Does.OVER))
    assert board_view(state, WALL, WIDE)["connect"]["what_if"] is None
    refused = what_if_refused(state, Language.EN)
    assert refused is not None
    assert refused["id"] == "q1"
    assert "39 + 26" in refused["says"]
    assert what_if_refused(supposing(), Language.ES) is None


def test_a_what_if_of_before_adds() -> None:
    kept = {"kind": "what-if", "id": "q1", "amount": 2, "places": [], "child": None}
    assert body_from_json(kept) == happened.WhatIf("q1", 2, ())


def supposing(*bodies: Body) -> State:
    """A talk that connects 40 + 25 and 39 + 26, with these events."""
    planned = (PlannedProblem("p1", "40 + 25"), PlannedProblem("p2", "39 + 26"))
    shown = (happened.ProblemShown("p1"), happened.ProblemShown("p2"))
    opened = happened.TalkOpened("Thursday", "en", "en", planned)
    every = (opened, *shown, happened.PhaseSet(Phase.CONNECT), *bodies)
    return fold(Record(n, "desk", n, body, n) for n, body in enumerate(every))


@settings(max_examples=count(test=400, sweep=10000), deadline=None)
@given(talks(), st.sampled_from((1333, 1600, 1778, 2333)))
def test_nothing_drawn_is_smaller_than_six_percent_of_the_screen(
    records: list[Record], wide: int
) -> None:
    payload = board_view(fold(records), WALL, wide)
    scenes = [tile["scene"] for tile in payload["tiles"] if tile["scene"]]
    if payload["connect"]:
        scenes.append(payload["connect"]["scene"])
    for scene in scenes:
        assert all(label["size"] >= SCREEN * 6 // 100 for label in labels(scene))


@pytest.mark.parametrize("wide", range(1333, 2601, 97))
def test_the_sheet_and_its_tiles_fill_the_screen_and_no_more(wide: int) -> None:
    sheet = Sheet.of(wide)
    assert sheet.side + 2 * sheet.tile.width < wide
    assert sheet.tile.width >= 400
    assert 2 * sheet.tile.height + 300 <= SCREEN
