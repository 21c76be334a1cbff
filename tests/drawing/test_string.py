"""The string for connecting: its rows, its marks, and that they stay legible together."""

from random import Random

import pytest

from tests.counts import count
from tests.drawing.look import area, crossed, labels, meets, outside, overlapping
from tests.drawing.told import problem
from waysaid.drawing import (
    Box,
    Dot,
    Frame,
    Label,
    Path,
    StringMark,
    StringRow,
    draw_string,
    scene_json,
    svg,
)
from waysaid.number import Language, parse

HALF = Frame(800, 800)
NARROW = Frame(733, 800)


def _rows(*texts: str) -> list[StringRow]:
    return [StringRow(parse(text), ("66", "56")) for text in texts]


STRING = _rows("40 + 26", "39 + 26", "39 + 27", "39 + 47", "38 + 48")


def _ringed(scene, text: str) -> list[Label]:
    rings = [shape for shape in scene.shapes if isinstance(shape, Box)]
    return [
        label
        for label in labels(scene)
        if label.text == text
        and any(
            ring.x < area(label)[0]
            and area(label)[2] < ring.x + ring.width
            and ring.y < area(label)[1]
            and area(label)[3] < ring.y + ring.height
            for ring in rings
        )
    ]


def test_rows_stand_one_under_another_with_all_the_answers_given():
    scene = draw_string(STRING, [], HALF)
    texts = [label.text for label in labels(scene)]
    assert texts[:5] == ["40", "+", "26", "=", "66, 56"]
    assert texts.count("66, 56") == 5
    assert len({label.y for label in labels(scene)}) == 5


def test_a_problem_without_an_answer_shows_none():
    texts = [label.text for label in labels(draw_string([StringRow(parse("39 + 27"))], [], HALF))]
    assert texts == ["39", "+", "27"]


def test_a_missing_number_is_an_empty_box_and_its_answer_stands_apart():
    scene = draw_string([StringRow(parse("7 + _ = 12"), ("5",))], [], HALF)
    assert "".join(label.text for label in labels(scene)) == "7+=125"
    assert sum(isinstance(shape, Box) for shape in scene.shapes) == 1


def test_joined_rows_are_tied_by_an_arc_at_the_side():
    scene = draw_string(STRING, [StringMark([(0, "row"), (2, "row")])], HALF)
    assert sum(isinstance(shape, Path) for shape in scene.shapes) == 1
    assert sum(isinstance(shape, Dot) for shape in scene.shapes) == 2
    first = min(area(label)[0] for label in labels(scene))
    assert all(shape.x + shape.r < first for shape in scene.shapes if isinstance(shape, Dot))


def test_unjoined_rows_have_their_dots_and_no_arc():
    scene = draw_string(STRING, [StringMark([(0, "row"), (2, "row")], join=False)], HALF)
    assert sum(isinstance(shape, Path) for shape in scene.shapes) == 0
    assert sum(isinstance(shape, Dot) for shape in scene.shapes) == 2


def test_chosen_numbers_and_answers_are_ringed_and_no_others():
    scene = draw_string(STRING, [StringMark([(0, 0), (2, "answer")], join=False)], HALF)
    assert len(_ringed(scene, "40")) == 1
    assert len(_ringed(scene, "66, 56")) == 1
    assert len(_ringed(scene, "26")) == 0


def test_spots_that_are_not_on_the_string_are_left_out():
    marks = [StringMark([(9, 0), (0, 7), (-1, "row"), (1, "nonsense")])]
    assert draw_string(STRING, marks, HALF).shapes == draw_string(STRING, [], HALF).shapes


@pytest.mark.parametrize("lang", list(Language))
def test_the_words_name_what_was_marked(lang):
    scene = draw_string(STRING, [StringMark([(0, 0), (2, 0)])], HALF, lang)
    assert {Language.EN: "40 in row 1", Language.ES: "40 en la fila 1"}[lang] in scene.desc


def test_any_marks_on_any_string_leave_every_number_legible():
    random = Random(40)
    for _ in range(count(test=500, sweep=10000)):
        rows = [
            StringRow(problem(random), tuple(str(random.randint(0, 999)) for _ in range(given)))
            for given in (random.randint(0, 2) for _ in range(random.randint(1, 6)))
        ]
        marks = [
            StringMark(
                tuple(
                    (random.randrange(len(rows)), random.choice((0, 1, "answer", "row")))
                    for _ in range(random.randint(1, 3))
                ),
                random.random() < 0.7,
            )
            for _ in range(random.randint(0, 4))
        ]
        frame = random.choice((HALF, NARROW, Frame(400, 600)))
        scene = draw_string(rows, marks, frame)
        assert [overlapping(scene), crossed(scene), outside(scene)] == [[], [], []], marks
        assert all(label.size >= 60 for label in labels(scene))
        assert svg(scene) == svg(draw_string(rows, marks, frame))


def test_the_check_for_overlaps_can_see_one():
    scene = draw_string(STRING, [], HALF)
    first, *rest = labels(scene)
    assert not any(meets(area(first), area(other)) for other in rest)
    assert meets(area(first), area(first))
    kinds = {shape["t"] for shape in scene_json(scene)["shapes"]}
    assert kinds == {"label"}


def test_answers_that_do_not_fit_beside_their_problem_stand_under_it():
    rows = [StringRow(parse(text), ("603", "593")) for text in ("347 + 256", "350 + 256")]
    marks = [StringMark([(0, "row"), (1, "row")])]
    scene = draw_string(rows, marks, NARROW)
    heights = {label.text: label.y for label in labels(scene) if label.text in ("347", "603, 593")}
    assert scene.width <= NARROW.width
    assert heights["347"] < heights["603, 593"]


LONG = ("123456 + 234567 + 87 - 12345", "29 + 14 = 30 + 13 ?", "398765 + 234567 = 633330 + _")


@pytest.mark.parametrize("text", LONG)
def test_a_problem_too_long_for_a_line_goes_on_under_itself_before_a_sign(text):
    rows = [StringRow(parse(text), ("345765",)), StringRow(parse("39 + 27"), ("66",))]
    scene = draw_string(rows, [StringMark([(0, 0), (0, "answer")])], Frame(600, 800))
    lines = {}
    for label in labels(scene):
        lines.setdefault(label.y, []).append(label)
    firsts = [min(line, key=lambda label: label.x).text for line in lines.values()]
    assert scene.width <= 600
    assert len(lines) > 2
    assert all(first[0] in "+−=:" for first in firsts[1:] if first not in ("39", "345765"))
    assert "39" in firsts
    assert "?" not in firsts
    assert [overlapping(scene), crossed(scene), outside(scene)] == [[], [], []]
