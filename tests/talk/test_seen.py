"""How a child saw a quick image: kept with the way, chosen anew, drawn as kept."""

from typing import Any

import pytest
from hypothesis import given, settings

from tests.counts import count
from tests.number.problems import images
from waysaid.drawing import Picture, Telling, seen_in
from waysaid.number import layout_of, parse_equation
from waysaid.talk import (
    BadEventError,
    Body,
    PlannedProblem,
    Record,
    SaidStep,
    State,
    Wall,
    board_view,
    body_from_json,
    body_json,
    fold,
)
from waysaid.talk import event as happened
from waysaid.ways import Kind, can_be_seen, groups_fitting, ways
from waysaid.ways.images.found import MOST_OFFERED

ARRAY = "image array: 4 x 4"
ROWS = ((0, 1, 2, 3), (4, 5, 6, 7), (8, 9, 10, 11), (12, 13, 14, 15))
COLUMNS = ((0, 4, 8, 12), (1, 5, 9, 13), (2, 6, 10, 14), (3, 7, 11, 15))


def talk(*bodies: Body) -> State:
    """A talk about a picture in rows and columns, with these events."""
    opened = happened.TalkOpened("Dots", "en", "en", (PlannedProblem("p1", ARRAY),))
    every = (opened, happened.ProblemShown("p1"), *bodies)
    return fold(Record(n, "desk", n, body, n) for n, body in enumerate(every))


def told(*equations: str, **more: Any) -> happened.WayShared:
    """A way of the picture with these equations, drawn as groups of dots."""
    steps = tuple(SaidStep(Kind.RECALL, parse_equation(each)) for each in equations)
    return happened.WayShared("w1", "p1", steps=steps, picture=Picture.DOTS, **more)


def outlines(*bodies: Body) -> list[str]:
    """The outlines that a board draws for the way."""
    scene = board_view(talk(*bodies), Wall(), 1778)["tiles"][0]["scene"]
    return [shape["d"] for shape in scene["shapes"] if shape["t"] == "path"]


def test_the_board_draws_the_groups_that_the_record_keeps() -> None:
    by_rows = outlines(told("4 x 4 = 16", seen=ROWS))
    by_columns = outlines(told("4 x 4 = 16", seen=COLUMNS))
    assert len(by_rows) == len(by_columns) == 4
    assert by_rows != by_columns


def test_a_way_with_no_groups_kept_is_drawn_as_before() -> None:
    assert outlines(told("4 x 4 = 16")) == outlines(told("4 x 4 = 16", seen=ROWS))


def test_wrong_arithmetic_keeps_the_groups_as_well() -> None:
    right, wrong = (outlines(told(f"4 x 4 = {made}", seen=COLUMNS)) for made in (16, 14))
    assert right == wrong


def test_the_groups_can_be_chosen_anew_and_that_can_be_taken_back() -> None:
    way, seen = told("4 x 4 = 16", seen=ROWS), happened.WaySeenAs("w1", COLUMNS)
    assert outlines(way, seen) == outlines(told("4 x 4 = 16", seen=COLUMNS))
    undo = happened.Undo(happened.EventId("desk", 3))
    assert outlines(way, seen, undo) == outlines(way)
    assert talk(way, happened.WaySeenAs("nobody's", COLUMNS)).ways == talk(way).ways


def test_a_way_written_anew_has_the_groups_it_was_written_with() -> None:
    way = told("4 x 4 = 16", seen=ROWS)
    edited = happened.WayEdited("w1", way.steps, picture=Picture.DOTS, seen=COLUMNS)
    assert talk(way, edited).ways[0].seen == COLUMNS
    assert talk(way, happened.WayEdited("w1", way.steps)).ways[0].seen == ()


@pytest.mark.parametrize("seen", [((0, 16),), ((-1, 0),), ((0, 0),), ((),), ((0, 1), (1, 0))])
def test_groups_that_are_no_part_of_the_picture_are_passed_over(seen: happened.Seen) -> None:
    assert outlines(told("4 x 4 = 16", seen=seen)) == outlines(told("4 x 4 = 16"))


def test_groups_are_written_down_and_an_event_of_before_needs_none() -> None:
    way = told("4 x 4 = 16", seen=COLUMNS)
    written = body_json(way)
    assert written["seen"] == [list(group) for group in COLUMNS]
    assert body_from_json(written) == way
    del written["seen"]
    assert body_from_json(written) == told("4 x 4 = 16")
    with pytest.raises(BadEventError, match="way-seen-as, seen: takes a whole number"):
        body_from_json({"kind": "way-seen-as", "way": "w1", "seen": [["a"]]})


@given(images)
@settings(max_examples=count(test=150, sweep=5_000), deadline=None)
def test_every_way_to_see_a_picture_comes_back_from_the_record_as_it_was(image: Any) -> None:
    for way in ways(image):
        assert can_be_seen(image, way.seen)
        fitting = groups_fitting(image, way.steps)
        known = [frozenset(map(frozenset, each)) for each in fitting]
        assert frozenset(map(frozenset, way.seen)) in known or len(known) == MOST_OFFERED
        for seen in fitting:
            assert can_be_seen(image, seen)
            assert seen_in(Telling(image, way.steps, seen=seen)) == seen
            assert max(map(max, seen)) < len(layout_of(image).places)
