"""Drawings looked at by eye and kept: a change of any of them shows here, to be looked at again.

Write them anew with `WAYSAID_GOLDEN=write`, and look at every changed picture before keeping it.
"""

import os
from pathlib import Path

import pytest

from tests.drawing.told import suiting, telling
from waysaid.drawing import (
    Frame,
    Picture,
    Scene,
    StringMark,
    StringRow,
    Telling,
    draw,
    draw_string,
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
IN_GROUPS = {
    "parts": telling("14 x 6", "group 10 x 6 = 60", "group 4 x 6 = 24", "join 60 + 24 = 84"),
    "parts-wrong": telling("14 x 6", "group 10 x 6 = 60", "group 4 x 6 = 24", "join 60 + 24 = 94"),
    "parts-unsaid": telling(
        "14 x 6",
        "group 10 x 6 = 60",
        "group 4 x 6 = 24",
        hidden=(frozenset({"result"}), frozenset({"left"})),
    ),
    "four-parts": telling(
        "23 x 14",
        "group 20 x 10 = 200",
        "group 20 x 4 = 80",
        "group 3 x 10 = 30",
        "group 3 x 4 = 12",
        "join 200 + 80 + 30 + 12 = 322",
    ),
    "part-missing": telling(
        "23 x 14", "group 20 x 10 = 200", "group 20 x 4 = 80", "group 3 x 10 = 30"
    ),
    "one-too-many": telling("19 x 7", "group 20 x 7 = 140", "mend 140 - 7 = 133"),
    "from-five": telling("7 x 8", "group 5 x 8 = 40", "mend 40 + 16 = 56"),
    "known": telling("7 x 8", "recall 7 x 8 = 56"),
    "skip-count": telling("4 x 5", "count 5 + 5 = 10", "count 10 + 5 = 15", "count 15 + 5 = 20"),
    "halved": telling("16 x 5", "scale 16 x 5 = 8 x 10", "recall 8 x 10 = 80"),
    "shared": telling("84 / 4", "group 80 / 4 = 20", "group 4 / 4 = 1", "join 20 + 1 = 21"),
    "chunks": telling("96 / 6", "group 10 x 6 = 60", "group 6 x 6 = 36", "gather 10 + 6 = 16"),
    "chunks-left": telling(
        "63 / 5",
        "group 10 x 5 = 50",
        "take 63 - 50 = 13",
        "group 2 x 5 = 10",
        "take 13 - 10 = 3",
        "gather 10 + 2 = 12",
    ),
    "up-left": telling("63 / 5", "recall 5 x 12 = 60", "take 63 - 60 = 3"),
    "up-too-far": telling(
        "_ x 6 = 54", "group 6 x 10 = 60", "mend 60 - 6 = 54", "gather 10 - 1 = 9"
    ),
    "scaled": telling("180 / 12", "scale 180 / 12 = 90 / 6", "recall 90 / 6 = 15"),
}
IN_PARTS = {
    "to-one": telling("3/4 + 3/4", "jump 3/4 + 1/4 = 1", "jump 1 + 2/4 = 1 2/4"),
    "like-units": telling("3/4 + 3/4", "join 3/4 + 3/4 = 6/4", "split 6/4 = 1 2/4"),
    "across": telling("1/2 + 2/3", "join 1/2 + 2/3 = 3/5"),
    "mixed-less": telling("1 1/4 - 3/4", "jump 1 1/4 - 1/4 = 1", "jump 1 - 2/4 = 2/4"),
    "larger": telling("3/4 ? 5/8", "split 3/4 = 6/8"),
    "part-of": telling("2/3 of 57", "group 57 / 3 = 19", "scale 19 x 2 = 38"),
    "per-cent": telling(
        "15% of 80", "group 10% of 80 = 8", "group 5% of 80 = 4", "join 8 + 4 = 12"
    ),
    "over-hundred": telling("125% of 48", "group 25% of 48 = 12", "join 48 + 12 = 60"),
    "tenths": telling("3.8 + 1.45", "jump 3.8 + 0.2 = 4", "jump 4 + 1.25 = 5.25"),
    "hundredths": telling("0.25 + 0.4", "join 0.20 + 0.40 = 0.60", "join 0.60 + 0.05 = 0.65"),
    "both-sides": telling("8 + 4 = _ + 5", "move 4 + 1 = 5", "move 8 - 1 = 7"),
    "longer": telling("0.65 ? 0.7", "split 0.7 = 0.70"),
}
SHOWN = {
    Picture.NUMBER_LINE,
    Picture.NUMBER_BOND,
    Picture.BAR,
    Picture.AREA,
    Picture.ARRAY,
    Picture.HOPS,
    Picture.DOUBLE_BAR,
    Picture.FRACTION_BAR,
    Picture.FRACTION_CIRCLE,
    Picture.HUNDRED_GRID,
}
"""What is kept of products, quotients and numbers in parts: all but their equations."""
KEPT = [
    *((picture, name, told) for name, told in TOLD.items() for picture in suiting(told)),
    *(
        (picture, name, told)
        for name, told in (IN_GROUPS | IN_PARTS).items()
        for picture in suiting(told)
        if picture in SHOWN
    ),
]
SMALL = [
    (Picture.AREA, "four-parts"),
    (Picture.ARRAY, "from-five"),
    (Picture.HOPS, "chunks"),
    (Picture.DOUBLE_BAR, "scaled"),
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


@pytest.mark.parametrize(("picture", "name"), SMALL)
def test_a_thumbnail_of_groups_is_as_it_was_looked_at(picture: Picture, name: str):
    _check(f"{name}-{picture}-thumbnail", draw(picture, IN_GROUPS[name], THUMBNAIL))


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
