"""Every picture of every telling, right or wrong, whole or not: legible and within its edges."""

import json
import re
from fractions import Fraction
from random import Random
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.drawing.look import crossed, labels, outside, overlapping
from tests.drawing.told import PARTS, mutated, suiting, way, way_of_any_kind
from waysaid.drawing import (
    Frame,
    Picture,
    Scene,
    Telling,
    draw,
    lines,
    nearest,
    scene_json,
    suits,
    svg,
    tiles_needed,
)
from waysaid.number import (
    BLANK,
    About,
    Claim,
    Compare,
    Equation,
    Language,
    Operation,
    Sign,
    decimal,
    exact,
    number_text,
    percent,
    text,
)
from waysaid.ways import Kind, Step

TILE = Frame(596, 290)
NARROW = Frame(431, 290)
THUMBNAIL = Frame(150, 80, 17)
SVG = "{http://www.w3.org/2000/svg}"


def _faults(scene: Scene) -> list[object]:
    return [*overlapping(scene), *crossed(scene), *outside(scene)]


ANY = pytest.mark.parametrize("some", [way, way_of_any_kind], ids=["sums", "beyond sums"])
CHANGED = pytest.mark.parametrize("changed", [False, True], ids=["as foreseen", "changed"])


@ANY
@CHANGED
def test_every_picture_of_a_random_way_is_legible_and_stays_within_its_edges(some, changed):
    random = Random(20)
    for _ in range(count(test=1000, sweep=25000)):
        told = mutated(some(random), random) if changed else some(random)
        frame = random.choice((TILE, NARROW, THUMBNAIL))
        for picture in suiting(told):
            scene = draw(picture, told, frame)
            assert _faults(scene) == [], (picture, frame, told)


@ANY
def test_no_label_on_the_board_is_smaller_than_six_percent_and_no_equation_than_eight(some):
    random = Random(21)
    for _ in range(count(test=500, sweep=10000)):
        told = mutated(some(random), random)
        for picture in suiting(told):
            scene = draw(picture, told, NARROW)
            least = 80 if picture is Picture.EQUATIONS else 60
            assert all(label.size >= least for label in labels(scene)), (picture, lines(told))


@ANY
def test_the_svg_parses_and_says_in_both_languages_what_it_shows(some):
    random = Random(22)
    for _ in range(count(test=100, sweep=2500)):
        told = mutated(some(random), random)
        for picture in suiting(told):
            said = {}
            for lang in Language:
                drawn = svg(draw(picture, told, TILE, lang))
                root = ET.fromstring(drawn)
                said[lang] = root.findtext(f"{SVG}title")
                assert said[lang]
                assert root.findtext(f"{SVG}desc")
                assert root.get("role") == "img"
                assert "script" not in drawn
                assert drawn == svg(draw(picture, told, TILE, lang))
            assert said[Language.EN] != said[Language.ES]


@ANY
def test_a_picture_that_does_not_suit_becomes_the_nearest_that_does(some):
    random = Random(23)
    for _ in range(count(test=100, sweep=2500)):
        told = mutated(some(random), random)
        for picture in Picture:
            near = nearest(picture, told)
            assert suits(near, told)
            assert (near is picture) == suits(picture, told)
            if near is not picture:
                assert draw(picture, told, TILE) == draw(near, told, TILE)


def _numbers(*texts: str) -> set[str]:
    return {number for text in texts for number in re.findall(r"\d+(?:[./]\d+)?%?", text)}


def _said(told: Telling) -> set[str]:
    """Every number of the problem, of the steps as they were said, and of the answer."""
    said = _numbers(text(told.problem), *lines(told))
    if told.answer is not None:
        said |= _numbers(number_text(told.answer), number_text(decimal(told.answer)))
    return said


@ANY
def test_no_number_is_drawn_or_described_that_nobody_said(some):
    random = Random(26)
    for _ in range(count(test=1000, sweep=25000)):
        told = mutated(some(random), random)
        for picture in suiting(told):
            scene = draw(picture, told, TILE)
            shown = _numbers(*(label.text for label in labels(scene)))
            assert shown <= _said(told), (picture, lines(told), told)
            if picture in DESCRIBED:
                assert _numbers(scene.desc) <= _said(told), (picture, scene.desc, told)


DESCRIBED = set(Picture) - {Picture.PLACE_VALUE, Picture.TEN_FRAME}
"""Pictures whose descriptions count no pieces."""


LONG = 13
"""Steps past which a count with three digits may need more than the whole sheet."""


def test_a_drawing_fits_the_tiles_it_says_it_needs(sweep_note):
    random = Random(24)
    wide = {1: 1, 2: 2, 4: 2}
    too_long = 0
    for _ in range(count(test=1000, sweep=20000)):
        told = way(random)
        frame = random.choice((TILE, NARROW))
        scene = draw(Picture.NUMBER_LINE, told, frame)
        tiles = tiles_needed(scene, frame)
        fits = scene.width <= frame.width * wide[tiles]
        fits = fits and scene.height <= frame.height * (2 if tiles == 4 else 1)
        assert fits or (tiles == 4 and len(told.steps) > LONG), lines(told)
        too_long += not fits
    tried = count(test=1000, sweep=20000)
    assert too_long * 1000 <= tried
    sweep_note("a line fits the tiles it says it needs, but for very long counts", tried, too_long)


def test_most_number_lines_of_two_digit_problems_need_one_tile():
    random = Random(25)
    needed = []
    while len(needed) < 200:
        told = way(random)
        numbers = [label.text for label in labels(draw(Picture.EQUATIONS, told, TILE))]
        if suits(Picture.NUMBER_LINE, told) and all(len(line) < 14 for line in numbers):
            needed.append(tiles_needed(draw(Picture.NUMBER_LINE, told, TILE), TILE))
    assert needed.count(1) > 150


PARTS_OF_ONE = st.fractions(max_denominator=12).map(exact)
HUNDREDTHS = st.integers(-9, 400).map(lambda number: Fraction(number, 100))
NUMBERS = (
    st.integers(-60, 1_100_000)
    | PARTS_OF_ONE
    | HUNDREDTHS.map(decimal)
    | HUNDREDTHS.map(percent)
    | st.just(BLANK)
)
EXPRESSIONS = st.recursive(
    NUMBERS,
    lambda inner: st.builds(Operation, st.sampled_from(Sign), inner, inner),
    max_leaves=4,
)
EQUATIONS = st.builds(Equation, EXPRESSIONS, EXPRESSIONS)
STEPS = st.lists(st.builds(Step, st.sampled_from(Kind), EQUATIONS), max_size=5).map(tuple)
HIDDEN = st.lists(st.frozensets(st.sampled_from(PARTS)), max_size=6).map(tuple)
ANSWERS = st.none() | st.integers(-60, 9999) | PARTS_OF_ONE
ASKED = EXPRESSIONS | EQUATIONS | st.builds(Compare, EXPRESSIONS, EXPRESSIONS)
ASKED |= st.builds(Claim, EQUATIONS) | st.builds(About, EXPRESSIONS)
TELLINGS = st.builds(Telling, ASKED, STEPS, HIDDEN, ANSWERS)


@given(TELLINGS, st.sampled_from(Picture), st.sampled_from((TILE, NARROW, THUMBNAIL)))
@settings(max_examples=count(test=600, sweep=20000))
def test_nothing_told_makes_a_drawing_fail_or_leave_its_edges(told, picture, frame):
    scene = draw(picture, told, frame)
    assert ET.fromstring(svg(scene)).findtext(f"{SVG}desc")
    assert _faults(scene) == []
    json.dumps(scene_json(scene))
    assert tiles_needed(scene, frame) in (1, 2, 4)
    assert tiles_needed(lines(told), frame) in (1, 2, 4)
