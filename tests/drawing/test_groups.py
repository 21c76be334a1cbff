"""Ways to multiply and divide are drawn, as equations where no other picture suits."""

import pytest

from tests.ways.asked import asked_in_groups
from waysaid.drawing import Frame, Picture, Telling, draw, suits
from waysaid.number import parse
from waysaid.ways import Family, ways

ROOM = Frame(800, 300)


@pytest.mark.parametrize("problem", asked_in_groups(seed=11, many=40))
def test_every_way_has_a_drawing_in_every_picture(problem):
    for way in ways(parse(problem)):
        telling = Telling(parse(problem), way.steps, (), way.number)
        for picture in Picture:
            scene = draw(picture, telling, ROOM)
            assert scene.title
            assert scene.shapes or picture is Picture.WORDS


@pytest.mark.parametrize("problem", ["14 x 6", "96 / 6", "_ x 6 = 54"])
def test_steps_of_groups_are_no_hops_along_a_line(problem):
    for way in ways(parse(problem)):
        telling = Telling(parse(problem), way.steps, (), way.number)
        if way.family is not Family.COUNTING and "+" not in way.steps[0].text:
            assert not suits(Picture.NUMBER_LINE, telling), way
        assert suits(Picture.EQUATIONS, telling)


def test_counts_to_a_product_are_hops_and_a_count_of_groups_is_no_distance():
    def lines(problem):
        told = [way for way in ways(parse(problem)) if way.family is Family.COUNTING]
        tellings = [Telling(parse(problem), way.steps, (), way.number) for way in told]
        return [suits(Picture.NUMBER_LINE, telling) for telling in tellings]

    assert lines("4 x 5") == [True, True]
    assert lines("20 / 5") == [False, False]
