"""What a notebook shows: well-formed SVG with a title, of every kind of thing, and no answer."""

import re
from xml.etree import ElementTree as ET

import pytest

from tests.counts import count
from waysaid.drawing import Picture, Seen, draw, seen, seen_way, svg
from waysaid.drawing.notebook import ROOM
from waysaid.drawing.telling import Telling
from waysaid.number import Language, parse
from waysaid.strings import Composed, Topic, links, starters
from waysaid.ways import ways

STRING = [parse(each) for each in ("40 + 25", "37 + 25", "37 + 28")]
SVG = "{http://www.w3.org/2000/svg}"
KINDS = ("7 + _ = 12", "3/4 ? 5/8", "29 + 14 = 30 + 13 ?", "15% of 80", "about 398 x 21", "16 / 3")


def drawn(shown):
    tree = ET.fromstring(shown._repr_svg_())
    assert tree.find(f"{SVG}title").text
    assert tree.get("viewBox")
    return " ".join(each.text or "" for each in tree.iter(f"{SVG}text"))


def test_a_string_is_drawn_with_its_problems_and_without_an_answer():
    said = drawn(seen(STRING))
    assert [each in said for each in ("40 + 25", "37 + 25", "37 + 28")] == [True] * 3
    assert "65" not in said


@pytest.mark.parametrize("kind", KINDS)
def test_a_problem_of_every_kind_is_drawn(kind):
    assert drawn(seen(parse(kind)))


def test_a_quick_image_is_drawn_and_in_a_string_it_goes_by_its_kind():
    image = parse("image dice: 3 2")
    assert seen(image)._repr_svg_().count("<circle") == 5
    assert not re.search(r"\d", drawn(seen([image])))


def test_a_starter_and_a_composed_string_are_drawn_as_strings():
    starter = starters()[0]
    assert seen(starter) == seen(list(starter.problems))
    made = Composed(tuple(STRING), next(iter(Topic)), (), (), 0, (), True, 1, 1, frozenset())
    assert seen(made) == seen(STRING)


def test_every_link_is_drawn_with_its_marks_on_its_string():
    for link in links(STRING):
        shown = seen(link, STRING)
        assert drawn(shown)
        assert len(shown.scene.shapes) > len(seen(STRING).scene.shapes) or not link.marks


def test_a_way_is_drawn_as_asked_or_else_as_what_suits_it():
    problem = parse("37 + 25")
    for way in ways(problem)[: count(test=30, sweep=1000)]:
        assert drawn(seen_way(way, problem))
        telling = Telling(problem, way.steps, (), way.number, way.seen)
        asked = seen_way(way, problem, Picture.EQUATIONS, Language.ES)
        assert asked == Seen(draw(Picture.EQUATIONS, telling, ROOM, Language.ES))
        assert asked._repr_svg_() == svg(asked.scene)
