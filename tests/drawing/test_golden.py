"""Drawings looked at by eye and kept: a change of any of them shows here, to be looked at again.

Write them anew with `WAYSAID_GOLDEN=write`, and look at every changed picture before keeping it.
"""

import os
from pathlib import Path

import pytest

from tests.drawing.told import telling
from waysaid.drawing import (
    Frame,
    Picture,
    Scene,
    StringMark,
    StringRow,
    Telling,
    draw,
    draw_string,
    suits,
    svg,
)
from waysaid.number import parse

GOLDEN = Path(__file__).parent / "golden"
TILE = Frame(596, 290)
THUMBNAIL = Frame(150, 80, 17)

TOLD = {
    "bridge": telling("39 + 27", "jump 39 + 1 = 40", "jump 40 + 26 = 66"),
    "bridge-wrong": telling("39 + 27", "jump 39 + 1 = 40", "jump 40 + 26 = 56"),
    "bridge-unsaid": telling(
        "39 + 27",
        "jump 39 + 1 = 40",
        "jump 40 + 26 = 66",
        hidden=(frozenset({"left", "result"}), frozenset({"left", "op"})),
    ),
    "adjust": telling("37 + 25", "jump 37 + 30 = 67", "mend 67 - 5 = 62"),
    "adjust-back": telling("62 - 25", "jump 62 - 30 = 32", "mend 32 + 5 = 37"),
    "jump-back": telling("62 - 25", "jump 62 - 20 = 42", "jump 42 - 5 = 37"),
    "jump-back-wrong": telling("62 - 25", "jump 62 - 20 = 42", "jump 42 - 5 = 39"),
    "add-up": telling("62 - 25", "jump 25 + 5 = 30", "jump 30 + 32 = 62", "gather 5 + 32 = 37"),
    "past-and-back": telling(
        "62 - 25", "jump 25 + 40 = 65", "jump 65 - 3 = 62", "split 40 - 3 = 37"
    ),
    "shift-both": telling("62 - 25", "shift 62 + 5 = 67", "shift 25 + 5 = 30", "take 67 - 30 = 37"),
    "give-and-take": telling(
        "39 + 27", "move 39 + 1 = 40", "move 27 - 1 = 26", "join 40 + 26 = 66"
    ),
    "split": telling("37 + 25", "join 30 + 20 = 50", "join 7 + 5 = 12", "join 50 + 12 = 62"),
    "split-wrong": telling("37 + 25", "join 30 + 20 = 50", "join 7 + 5 = 12", "join 50 + 2 = 52"),
    "ten-opened": telling(
        "42 - 17", "split 42 = 30 + 12", "take 12 - 7 = 5", "take 30 - 10 = 20", "join 20 + 5 = 25"
    ),
    "crossing": telling("62 - 25", "take 60 - 20 = 40", "jump 40 + 2 = 42", "jump 42 - 5 = 37"),
    "small": telling("8 + 5", "jump 8 + 2 = 10", "jump 10 + 3 = 13"),
    "small-fact": telling("6 + 6", "recall 6 + 6 = 12"),
    "small-back": telling("13 - 4", "jump 13 - 3 = 10", "jump 10 - 1 = 9"),
    "missing": telling("7 + _ = 12", "jump 7 + 3 = 10", "jump 10 + 2 = 12", "gather 3 + 2 = 5"),
    "hundreds": telling("347 + 256", "jump 347 + 200 = 547", "jump 547 + 56 = 603"),
    "six-digits": telling(
        "123456 + 234567", "jump 123456 + 200000 = 323456", "jump 323456 + 34567 = 358023"
    ),
    "counting": telling("37 + 7", *(f"count {37 + at} + 1 = {38 + at}" for at in range(7))),
    "counting-far": telling(
        "347 + 12", *(f"count {347 + at} + 1 = {348 + at}" for at in range(12))
    ),
}
KEPT = [
    (picture, name, told)
    for name, told in TOLD.items()
    for picture in Picture
    if picture is not Picture.WORDS and suits(picture, told)
]


def _check(name: str, scene: Scene) -> None:
    path, drawn = GOLDEN / f"{name}.svg", svg(scene)
    if os.environ.get("WAYSAID_GOLDEN") == "write":
        path.write_text(drawn, encoding="utf-8")
    assert path.read_text(encoding="utf-8") == drawn


@pytest.mark.parametrize(
    ("picture", "name", "told"), KEPT, ids=[f"{name}-{picture}" for picture, name, _ in KEPT]
)
def test_a_picture_is_as_it_was_looked_at(picture: Picture, name: str, told: Telling):
    _check(f"{name}-{picture.value}", draw(picture, told, TILE))


def test_a_thumbnail_is_as_it_was_looked_at():
    _check("bridge-thumbnail", draw(Picture.NUMBER_LINE, TOLD["bridge"], THUMBNAIL))


def test_a_string_with_several_noticings_is_as_it_was_looked_at():
    texts = ("40 + 26", "39 + 26", "39 + 27", "39 + 47")
    given = (("66",), ("65",), ("66", "56"), ())
    rows = [StringRow(parse(text), said) for text, said in zip(texts, given, strict=True)]
    marks = [
        StringMark([(0, "row"), (2, "row")]),
        StringMark([(0, 0), (1, 0)]),
        StringMark([(1, 1), (2, 1), (2, "answer")]),
        StringMark([(0, 0), (3, 0)]),
    ]
    _check("string", draw_string(rows, marks, Frame(800, 800)))
