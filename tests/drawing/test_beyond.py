"""Products, quotients and numbers in parts: what each picture shows, and that none tells on it."""

from dataclasses import replace
from random import Random

import pytest

from tests.counts import count
from tests.drawing.look import blind, labels
from tests.drawing.told import suiting, telling, way_of_any_kind
from waysaid.drawing import Dot, Frame, Label, Picture, Telling, draw, lines, nearest, suits
from waysaid.number import Equation, Expression, Language, Operation, Sign, leaves
from waysaid.ways import Step

TILE = Frame(596, 290)
PARTS = telling("14 x 6", "group 10 x 6 = 60", "group 4 x 6 = 24", "join 60 + 24 = 84")
CHUNKS = telling("96 / 6", "group 10 x 6 = 60", "group 6 x 6 = 36", "gather 10 + 6 = 16")


def _texts(picture: Picture, told: Telling) -> list[str]:
    assert suits(picture, told)
    return [label.text for label in labels(draw(picture, told, TILE))]


def _dots(told: Telling) -> int:
    return sum(isinstance(shape, Dot) for shape in draw(Picture.ARRAY, told, TILE).shapes)


def _swapped(part: Expression, old: int, new: int) -> Expression:
    if isinstance(part, Operation):
        return Operation(part.sign, _swapped(part.left, old, new), _swapped(part.right, old, new))
    return new if part == old and isinstance(part, int) else part


def _misremembered(told: Telling, random: Random) -> Telling | None:
    """The same telling with one product wrong wherever it is said: as long, new, and between the
    same neighbours."""
    sides = [side for step in told.steps for side in (step.equation.left, step.equation.right)]
    numbers = {leaf for side in (*sides, *_asked(told)) for leaf in leaves(side)}
    pieces = [side for side in sides if isinstance(side, Operation) and side.sign is Sign.TIMES]
    fixed = {leaf for side in (*pieces, *_asked(told)) for leaf in leaves(side)}
    results = [step.equation.right for step in told.steps if step.equation.left in pieces]
    made = [one for one in results if isinstance(one, int) and one > 9 and one not in fixed]
    if not made or not all(isinstance(number, int) for number in numbers):
        return None
    old = random.choice(made)
    near = {old - 1, old + 1, old + 2} - numbers
    near = {new for new in near if len(str(new)) == len(str(old))}
    if not near:
        return None
    new = random.choice(sorted(near))
    steps = tuple(
        Step(
            step.kind,
            Equation(
                _swapped(step.equation.left, old, new), _swapped(step.equation.right, old, new)
            ),
        )
        for step in told.steps
    )
    return replace(told, steps=steps, answer=new if told.answer == old else told.answer)


def _asked(told: Telling) -> tuple[Expression, ...]:
    if isinstance(told.problem, Equation):
        return told.problem.left, told.problem.right
    return (told.problem,) if isinstance(told.problem, Operation) else ()


OF_GROUPS = {Picture.AREA, Picture.ARRAY, Picture.HOPS, Picture.BAR, Picture.DOUBLE_BAR}


def test_a_fact_misremembered_in_the_middle_changes_the_numerals_alone():
    random = Random(60)
    tried = 0
    for _ in range(count(test=300, sweep=15000)):
        told = way_of_any_kind(random)
        wrong = _misremembered(told, random)
        if wrong is None:
            continue
        for picture in OF_GROUPS & set(suiting(told)):
            tried += 1
            assert suits(picture, wrong), (picture, lines(told), lines(wrong))
            one, other = draw(picture, told, TILE), draw(picture, wrong, TILE)
            assert blind(one) == blind(other), (picture, lines(told), lines(wrong))
    assert tried > count(test=150, sweep=7500)


@pytest.mark.parametrize(
    ("told", "texts"),
    [
        (PARTS, ["10", "4", "6", "60", "24", "60 + 24 = 84"]),
        (replace(PARTS, steps=PARTS.steps[:1]), ["10", "6", "60"]),
        (replace(PARTS, hidden=(frozenset({"left"}),) * 2), ["6", "60", "24", "60 + 24 = 84"]),
        (CHUNKS, ["10", "6", "6", "60", "36", "10 + 6 = 16"]),
        (
            telling("19 x 7", "group 20 x 7 = 140", "mend 140 - 7 = 133"),
            ["20", "7", "140", "−7", "140 − 7 = 133"],
        ),
        (
            telling("63 / 5", "group 60 / 5 = 12", "take 63 - 60 = 3"),
            ["12", "5", "60", "3", "63 − 60 = 3"],
        ),
        (
            telling("16 x 5", "scale 16 x 5 = 8 x 10", "recall 8 x 10 = 80"),
            ["16", "5", "8", "10", "80"],
        ),
        (telling("84 / 4", "recall 4 x 21 = 84"), ["21", "4", "84"]),
        (telling("84 / 4", "recall 84 / 4 = _"), ["4", "84"]),
    ],
)
def test_an_area_has_the_sides_and_pieces_that_were_said(told: Telling, texts: list[str]):
    assert _texts(Picture.AREA, told) == texts


def test_a_piece_left_out_of_an_area_has_an_empty_cell():
    steps = ("group 20 x 10 = 200", "group 20 x 4 = 80", "group 3 x 10 = 30")
    whole = telling("23 x 14", *steps, "group 3 x 4 = 12")
    one, other = (draw(Picture.AREA, told, TILE) for told in (whole, telling("23 x 14", *steps)))
    kept = [shape for shape in one.shapes if not isinstance(shape, Label) or shape.text != "12"]
    assert kept == list(other.shapes)


@pytest.mark.parametrize(
    "told",
    [
        telling("14 x 6", "scale 2 x 6 = 12", "scale 12 x 7 = 84"),
        telling("14 x 6", "join 60 + 24 = 84"),
        telling("14 x 6"),
        telling("14 + 6", "join 14 + 6 = 20"),
        telling("3 x 4 x 5", "group 3 x 4 = 12", "group 12 x 5 = 60"),
    ],
)
def test_what_is_no_rectangle_does_not_suit_an_area(told: Telling):
    assert not suits(Picture.AREA, told)
    assert not suits(Picture.ARRAY, told)


@pytest.mark.parametrize(
    ("told", "dots"),
    [
        (PARTS, 84),
        (telling("7 x 8", "group 5 x 8 = 40", "mend 40 + 16 = 56"), 56),
        (telling("19 x 7", "group 20 x 7 = 140", "mend 140 - 7 = 133"), 133),
        (CHUNKS, 96),
        (telling("7 x 8", "recall 7 x 8 = 54"), 56),
    ],
)
def test_an_array_has_the_dots_of_the_sides(told: Telling, dots: int):
    assert _dots(told) == dots


@pytest.mark.parametrize(
    "told",
    [
        telling("23 x 14", "group 23 x 10 = 230", "group 23 x 4 = 92"),
        telling("84 / 4", "group 80 / 4 = 20", "group 4 / 4 = 1"),
        telling("0.5 x 8", "recall 0.5 x 8 = 4"),
    ],
)
def test_an_array_too_large_or_made_of_results_becomes_an_area(told: Telling):
    assert nearest(Picture.ARRAY, told) is Picture.AREA


@pytest.mark.parametrize(
    ("told", "texts"),
    [
        (PARTS, ["10 × 6", "4 × 6", "60", "84"]),
        (CHUNKS, ["10 × 6", "16 hops", "6 × 6", "60"]),
        (
            telling("19 x 7", "group 20 x 7 = 140", "mend 140 - 7 = 133"),
            ["133", "140", "20 × 7", "−7"],
        ),
        (
            telling("20 / 5", "count 5 + 5 = 10", "count 10 + 5 = 15", "count 15 + 5 = 20"),
            ["+5", "+5", "+5", "10", "15", "20", "5"],
        ),
        (telling("63 / 5", "recall 5 x 12 = 60", "take 63 - 60 = 3"), ["3", "5 × 12", "60", "63"]),
        (
            telling("63 / 5", "group 10 x 5 = 50", "take 63 - 50 = 13", "group 2 x 5 = 10"),
            ["10 × 5", "13", "2 × 5", "63"],
        ),
    ],
)
def test_hops_are_named_and_end_where_it_was_said(told: Telling, texts: list[str]):
    assert sorted(_texts(Picture.HOPS, told)) == sorted(texts)


def test_a_count_of_hops_is_said_in_the_language_of_the_board():
    drawn = draw(Picture.HOPS, CHUNKS, TILE, Language.ES)
    assert "16 saltos" in [label.text for label in labels(drawn)]


@pytest.mark.parametrize(
    ("told", "texts"),
    [
        (PARTS, ["84", "60", "24"]),
        (telling("4 x 27", "count 27 + 27 = 54"), ["54", *["27"] * 4]),
        (replace(telling("84 / 4", "recall 4 x 21 = 84"), answer=21), ["84", *["21"] * 4]),
        (telling("84 / 4", "scale 84 / 2 = 42"), ["84"]),
        (telling("63 / 5", "recall 5 x 12 = 60", "take 63 - 60 = 3"), ["63", "60", "3"]),
        (telling("8 + 4 = _ + 5", "join 8 + 4 = 12", "take 12 - 5 = 7"), ["8", "4", "7", "5"]),
        (telling("0.25 + 0.4", "join 0.25 + 0.4 = 0.65"), ["0.65", "0.25", "0.4"]),
    ],
)
def test_a_bar_shows_groups_under_what_they_make(told: Telling, texts: list[str]):
    assert _texts(Picture.BAR, told) == texts


@pytest.mark.parametrize(
    ("told", "texts"),
    [
        (telling("180 / 12", "scale 180 / 12 = 90 / 6"), ["90", "6", "180", "12"]),
        (
            telling("15% of 80", "group 10% of 80 = 8", "group 5% of 80 = 4", "join 8 + 4 = 12"),
            ["5%", "4", "10%", "8", "15%", "12", "80"],
        ),
        (telling("2/3 of 57", "group 57 / 3 = 19"), ["19", "2/3", "57"]),
        (PARTS, ["4", "24", "10", "60", "14", "84"]),
    ],
)
def test_a_double_bar_has_a_pair_at_each_mark(told: Telling, texts: list[str]):
    assert _texts(Picture.DOUBLE_BAR, told) == texts


@pytest.mark.parametrize(
    ("problem", "suited"),
    [
        ("3/4 + 1/4", True),
        ("1 1/4 - 3/4", True),
        ("3/4 ? 5/8", True),
        ("1 + 1/3", True),
        ("1/13 + 2/13", False),
        ("6 + 1/2", False),
        ("0.5 + 1/2", False),
        ("37 + 25", False),
        ("3/4 + _ = 1", False),
    ],
)
def test_fractions_of_a_class_suit_fraction_bars_and_circles(problem: str, suited: bool):
    told = telling(problem)
    assert suits(Picture.FRACTION_BAR, told) is suited
    assert suits(Picture.FRACTION_CIRCLE, told) is suited


@pytest.mark.parametrize(
    ("problem", "suited"),
    [
        ("0.25 + 0.4", True),
        ("1.2 - 0.35", True),
        ("15% of 80", True),
        ("125% of 48", True),
        ("0.65 ? 0.7", True),
        ("0.125 + 0.4", False),
        ("3.8 + 1.45", False),
        ("12.5% of 80", False),
        ("37 + 25", False),
    ],
)
def test_hundredths_up_to_a_few_wholes_suit_a_hundred_grid(problem: str, suited: bool):
    assert suits(Picture.HUNDRED_GRID, telling(problem)) is suited


def test_numbers_are_written_in_the_form_they_were_said_in():
    told = telling("0.50 + 0.25", "jump 0.50 + 0.20 = 0.70", "jump 0.70 + 0.05 = 0.75")
    assert set(_texts(Picture.NUMBER_LINE, told)) == {"0.50", "+0.20", "0.70", "+0.05", "0.75"}
    told = telling("3/4 + 3/4", "join 3/4 + 3/4 = 6/4")
    assert _texts(Picture.BAR, told) == ["6/4", "3/4", "3/4"]
    assert "3/4 + 3/4 = 6/4" in _texts(Picture.FRACTION_BAR, told)
