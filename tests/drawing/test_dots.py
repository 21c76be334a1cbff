"""Groups of dots: outlined so that no other dot is cut, the same for right and wrong."""

import math
from dataclasses import replace

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.drawing.look import blind, crossed, outside, overlapping, points
from tests.number.problems import images
from waysaid.drawing import (
    Dot,
    Frame,
    Label,
    Path,
    Picture,
    Telling,
    draw,
    draw_image,
    nearest,
    suits,
    svg,
    tiles_needed,
)
from waysaid.drawing.outline import RING, outline_path, outlines
from waysaid.number import Equation, ImageKind, Language, arrange, parse, parse_equation
from waysaid.ways import Kind, Step, ways

TILE = Frame(597, 290)
MANY = settings(max_examples=count(test=60, sweep=4_000), phases=(Phase.generate,), deadline=None)


def scenes(image):
    for way in ways(image):
        telling = Telling(image, way.steps, (), way.number)
        yield way, draw(Picture.DOTS, telling, TILE)


@given(images)
@MANY
def test_every_way_to_see_a_picture_can_be_drawn_and_no_outline_cuts_a_dot(image):
    for way, scene in scenes(image):
        drawn = [shape for shape in scene.shapes if isinstance(shape, Dot)]
        if not drawn and image.kind is ImageKind.DOTS:
            continue  # Dots placed far apart and told at length fit as equations alone.
        assert len(drawn) == image.count, (way.family, way.variant)
        ink = [
            (point, half)
            for shape in scene.shapes
            if isinstance(shape, Path)
            for point, half in points(shape)
        ]
        for dot in drawn:
            near = min(math.dist((dot.x, dot.y), point) - half for point, half in ink)
            assert near >= dot.r - 1, (way.family, way.variant)


@given(images)
@MANY
def test_what_was_said_touches_nothing_and_all_is_inside(image):
    for way, scene in scenes(image):
        assert overlapping(scene) == [], way.variant
        assert crossed(scene) == [], way.variant
        assert outside(scene) == [], way.variant


@given(images, st.sampled_from(Language))
@MANY
def test_the_picture_alone_never_says_how_many_dots_it_has(image, language):
    scene = draw_image(image, 900, 500, language)
    assert (scene.width, scene.height) == (900, 500)
    assert sum(isinstance(shape, Dot) for shape in scene.shapes) == image.count
    assert not any(isinstance(shape, Label) for shape in scene.shapes)
    assert not any(letter.isdigit() for letter in scene.title + scene.desc)
    assert outside(scene) == []
    assert scene == draw_image(image, 900, 500, language)


WRONG = (
    ("image dice: 4 3", ("4 + 3 = 7",), ("4 + 3 = 8",)),
    ("image frame 20: 8 6", ("8 + 2 = 10", "10 + 4 = 14"), ("8 + 2 = 10", "10 + 4 = 15")),
    ("image dice: 5 3 5", ("5 + 5 = 10", "10 + 3 = 13"), ("5 + 5 = 20", "20 + 3 = 23")),
    ("image frame 10: 7", ("10 - 3 = 7",), ("10 - 3 = 6",)),
)


@pytest.mark.parametrize(("picture", "right", "wrong"), WRONG)
def test_wrong_numbers_are_drawn_round_the_same_dots(picture, right, wrong):
    image = parse(picture)
    way = next(way for way in ways(image) if tuple(one.text for one in way.steps) == right)
    other = tuple(
        replace(step, equation=parse_equation(line))
        for step, line in zip(way.steps, wrong, strict=True)
    )
    one, two = (draw(Picture.DOTS, Telling(image, steps), TILE) for steps in (way.steps, other))
    assert blind(one) == blind(two)
    assert [s.text for s in two.shapes if isinstance(s, Label)] != [
        s.text for s in one.shapes if isinstance(s, Label)
    ]


def test_a_way_that_nobody_would_see_in_the_dots_is_written_as_equations():
    image = parse("image dice: 4 3")
    telling = Telling(image, (Step(Kind.JOIN, parse_equation("6 + 1 = 7")),))
    assert not suits(Picture.DOTS, telling)
    assert nearest(Picture.DOTS, telling) is Picture.EQUATIONS


def test_groups_of_dots_suit_pictures_alone():
    problem = parse("4 + 3")
    assert not any(suits(Picture.DOTS, Telling(problem, way.steps)) for way in ways(problem))


def test_counts_stand_in_one_row_and_a_number_seen_at_once_by_itself():
    def said(picture, steps):
        image = parse(picture)
        way = next(w for w in ways(image) if "; ".join(s.text for s in w.steps) == steps)
        scene = draw(Picture.DOTS, Telling(image, way.steps), TILE)
        return [shape.text for shape in scene.shapes if isinstance(shape, Label)]

    assert said("image dice: 5 2", "5 + 1 = 6; 6 + 1 = 7") == ["5, 6, 7"]
    assert said("image dice: 5", "5 = 5") == ["5"]


def test_the_words_name_the_groups_as_they_were_said():
    image = parse("image dice: 4 3")
    way = next(way for way in ways(image) if way.variant == "groups")
    scene = draw(Picture.DOTS, Telling(image, way.steps), TILE, Language.ES)
    assert scene.desc == "Grupos de 4 y 3 con contorno, 4 + 3 = 7."
    assert tiles_needed(scene, TILE) == 1
    assert "<script" not in svg(scene)


def test_an_outline_goes_round_a_dot_that_is_in_the_way():
    ring_of_four = [(0, 0), (96, 0), (0, 96), (96, 96)]
    assert len(outlines(ring_of_four, [])[0]) == 4
    round_about = outlines(ring_of_four, [(48, 48)])
    assert len(round_about) == 1
    assert len(round_about[0]) == 6
    between = outlines([(0, 0), (96, 0)], [(48, 0)])
    assert between == [((0, 0),), ((96, 0),)]


@pytest.mark.parametrize(
    "dots", [[(0, 0)], [(0, 0), (48, 0)], [(0, 0), (48, 0), (0, 48)], [(0, 0), (48, 30), (96, 0)]]
)
def test_an_outline_keeps_its_distance_from_its_own_dots(dots):
    path = outline_path(outlines(dots, [])[0], RING, 1.0, (100.0, 100.0))
    for point, _ in points(Path(path, 1)):
        near = min(math.dist((x + 100, y + 100), point) for x, y in dots)
        assert near >= RING - 1


def test_what_names_itself_is_no_sum():
    image = parse("image dice: 5")
    telling = Telling(image, (Step(Kind.RECALL, Equation(5, 5)),))
    assert suits(Picture.DOTS, telling)


@given(st.integers(0, 10**6), st.lists(st.integers(1, 6), min_size=1, max_size=4))
@MANY
def test_every_way_to_see_an_arrangement_is_drawn(seed, sizes):
    for way, scene in scenes(arrange(seed, *sizes)):
        assert any(isinstance(shape, Dot) for shape in scene.shapes), way.variant
