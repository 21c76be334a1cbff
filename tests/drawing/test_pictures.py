"""Bonds, pieces, frames and bars: what each shows, and that none tells right from wrong."""

from dataclasses import replace
from math import ceil, floor
from random import Random

import pytest

from tests.counts import count
from tests.drawing.look import blind, labels
from tests.drawing.told import suiting, telling, way, way_of_any_kind
from waysaid.drawing import Box, Dot, Frame, Path, Picture, Telling, draw, lines, suits
from waysaid.number import Blank, Equation, leaves, sides

TILE = Frame(596, 290)
BOND, PIECES, FRAMES, BAR = (
    Picture.NUMBER_BOND,
    Picture.PLACE_VALUE,
    Picture.TEN_FRAME,
    Picture.BAR,
)
SPLIT = telling("37 + 25", "join 30 + 20 = 50", "join 7 + 5 = 12", "join 50 + 12 = 62")


def _texts(picture: Picture, told: Telling) -> list[str]:
    return [label.text for label in labels(draw(picture, told, TILE))]


def _ends_elsewhere(told: Telling, random: Random) -> Telling | None:
    """The same telling with another last number: as long, new, and as large among the others."""
    last = told.steps[-1]
    right = last.equation.right
    if not isinstance(right, int) or right < 1 or right != told.answer:
        return None
    said = [side for one in told.steps for side in (one.equation.left, one.equation.right)]
    leaves_of = (leaf for side in (*sides(told.problem), *said) for leaf in leaves(side))
    numbers = [leaf for leaf in leaves_of if not isinstance(leaf, Blank)]
    if numbers.count(right) > 1:
        return None
    low = floor(max((n for n in numbers if n < right), default=0)) + 1
    high = ceil(min((n for n in numbers if n > right), default=10**6)) - 1
    size = 10 ** (len(str(right)) - 1)
    low, high = max(low, size), min(high, size * 10 - 1)
    if low >= high:
        return None
    wrong = random.choice([n for n in {low, high, (low + high) // 2} if n != right])
    step = replace(last, equation=Equation(last.equation.left, wrong))
    return replace(told, steps=(*told.steps[:-1], step), answer=wrong)


@pytest.mark.parametrize("some", [way, way_of_any_kind], ids=["sums", "beyond sums"])
def test_a_wrong_answer_of_the_same_length_changes_the_numerals_alone_in_every_picture(some):
    random = Random(50)
    tried = 0
    for _ in range(count(test=1000, sweep=25000)):
        told = some(random)
        wrong = _ends_elsewhere(told, random)
        if wrong is None:
            continue
        tried += 1
        assert suiting(told) == suiting(wrong), (lines(told), lines(wrong))
        for picture in suiting(told):
            one, other = draw(picture, told, TILE), draw(picture, wrong, TILE)
            assert blind(one) == blind(other), (picture, lines(told), lines(wrong))
    assert tried > count(test=150, sweep=3750)


@pytest.mark.parametrize(
    ("told", "texts"),
    [
        (SPLIT, ["37", "30", "7", "+", "25", "20", "5", "=", "62"]),
        (
            telling("37 + 25", "jump 37 + 3 = 40", "jump 40 + 22 = 62"),
            ["37", "+", "25", "3", "22", "=", "62"],
        ),
        (
            telling("37 + 25", "jump 25 + 5 = 30", "jump 30 + 32 = 62"),
            ["37", "5", "32", "+", "25", "=", "62"],
        ),
        (
            telling("39 + 27", "move 27 - 1 = 26", "move 39 + 1 = 40", "join 40 + 26 = 66"),
            ["39", "+", "27", "1", "26", "=", "66"],
        ),
        (
            telling("37 + 25", "join 30 + 20 = 50", "jump 50 + 5 = 55", "jump 55 + 7 = 62"),
            ["37", "30", "7", "+", "25", "20", "5", "=", "62"],
        ),
        (telling("12 - 8", "recall 12 - 8 = 4"), ["12", "8", "4"]),
        (telling("42 - 17", "split 42 = 30 + 12"), ["42", "30", "12", "−", "17"]),
    ],
)
def test_a_bond_opens_the_numbers_as_the_child_did(told: Telling, texts: list[str]):
    assert _texts(BOND, told) == texts


def test_a_bond_keeps_wrong_parts_and_leaves_unsaid_ones_empty():
    told = telling("37 + 25", "jump 37 + 20 = 57", "jump 57 + 4 = 61")
    assert _texts(BOND, told) == ["37", "+", "25", "20", "4", "=", "61"]
    hidden = replace(told, hidden=(frozenset({"right"}), frozenset({"result"})))
    assert _texts(BOND, hidden) == ["37", "+", "25", "4"]


def test_adjusting_opens_no_number():
    assert not suits(BOND, telling("37 + 25", "jump 37 + 30 = 67", "mend 67 - 5 = 62"))


def _rings(told: Telling) -> int:
    """Arrows in a drawing of pieces: one for each regrouping."""
    return sum(isinstance(shape, Path) for shape in draw(PIECES, told, TILE).shapes)


def test_pieces_are_those_of_the_numbers_of_the_problem():
    scene = draw(PIECES, telling("347 + 56"), TILE)
    boxes = [shape for shape in scene.shapes if isinstance(shape, Box)]
    assert sum(not box.filled for box in boxes) == 3
    assert sum(box.filled for box in boxes) == 9
    assert sum(isinstance(shape, Dot) for shape in scene.shapes) == 13


@pytest.mark.parametrize(
    ("told", "arrows"),
    [
        (SPLIT, 1),
        (telling("37 + 25", "jump 37 + 3 = 40", "jump 40 + 22 = 62"), 1),
        (telling("37 + 25", "jump 37 + 20 = 57", "jump 57 + 5 = 62"), 0),
        (telling("32 + 25", "join 30 + 20 = 50", "join 2 + 5 = 7", "join 50 + 7 = 57"), 0),
        (telling("42 - 17", "split 42 = 30 + 12", "take 12 - 7 = 5"), 1),
        (telling("42 - 17", "take 12 - 7 = 5", "take 30 - 10 = 20"), 1),
        (telling("42 - 17", "take 40 - 10 = 30", "take 7 - 2 = 5", "join 30 + 5 = 35"), 0),
    ],
)
def test_pieces_are_regrouped_only_where_the_child_did(told: Telling, arrows: int):
    assert _rings(told) == arrows


def test_filling_up_to_ten_goes_on_in_the_first_frame():
    fills = draw(FRAMES, telling("8 + 5", "jump 8 + 2 = 10", "jump 10 + 3 = 13"), TILE)
    knows = draw(FRAMES, telling("8 + 5", "recall 8 + 5 = 13"), TILE)
    assert sum(isinstance(shape, Dot) for shape in fills.shapes) == 8
    assert sum(isinstance(shape, Box) for shape in fills.shapes) == 5
    assert sum(isinstance(shape, Dot) for shape in knows.shapes) == 13


def test_counters_taken_away_are_crossed_out():
    scene = draw(FRAMES, telling("13 - 4", "recall 13 - 4 = 9"), TILE)
    assert sum(isinstance(shape, Path) for shape in scene.shapes) == 4
    assert sum(isinstance(shape, Dot) for shape in scene.shapes) == 9


@pytest.mark.parametrize("problem", ["37 + 25", "4 - 9", "21 - 3", "58 + 47 - 38", "3 x 4"])
def test_larger_problems_do_not_suit_ten_frames(problem: str):
    assert not suits(FRAMES, telling(problem))


@pytest.mark.parametrize(
    ("told", "texts"),
    [
        (SPLIT, ["62", "37", "25"]),
        (telling("62 - 25", "jump 62 - 20 = 42", "jump 42 - 5 = 39"), ["62", "25", "39"]),
        (telling("62 - 25", "jump 25 + 37 = 62"), ["62", "25", "37"]),
        (telling("62 - 25", "jump 25 + 5 = 30", "jump 30 + 32 = 62"), ["62", "25"]),
        (telling("12 - 6", "recall 12 - 6 = 6"), ["12", "6", "6"]),
        (telling("12 - 8", "recall 12 - 8 = 4", hidden=(frozenset({"result"}),)), ["12", "8"]),
        (telling("62 - 25", "jump 25 + 40 = 65", "jump 65 - 3 = 62", "split 40 - 3 = 37"),
         ["62", "25", "37"]),
        (telling("7 + _ = 12", "gather 3 + 2 = 5"), ["12", "7", "5"]),
        (telling("_ - 3 = 9"), ["3", "9"]),
        (telling("12 - _ = 9"), ["12", "9"]),
    ],
)  # fmt: skip
def test_a_bar_shows_the_whole_over_its_parts_and_no_answer_nobody_gave(told, texts):
    assert _texts(BAR, told) == texts
