"""A way asked for in a drawing that cannot show it: the nearest is drawn, and the desk says so."""

import pytest

from tests.site.made import problem_id, sent, way
from waysaid.drawing import Picture
from waysaid.site.words import MORE_PICTURES, PICTURES

BRIDGE = [
    {"kind": "jump", "equation": "39 + 1 = 40", "unsaid": []},
    {"kind": "jump", "equation": "40 + 26 = 66", "unsaid": []},
]


def shown(cast, picture):
    path = f"/talks/{cast.talk.pk}"
    told = way(problem_id(cast.talk), None, 0, steps=BRIDGE, picture=picture)
    cast.owner.post(f"{path}/events", sent(told), content_type="application/json")
    return cast.owner.get(f"{path}/desk.json").json()["ways"][0]


@pytest.mark.parametrize("picture", ["array", "fraction-circle", "ten-frame"])
def test_a_drawing_that_cannot_show_a_way_gives_the_nearest_and_says_so(cast, picture):
    told = shown(cast, picture)
    assert (told["picture"], told["drawn"]) == (picture, "equations")
    asked = MORE_PICTURES[picture]
    assert told["flags"] == [
        f"Asked to draw it {asked}; that cannot show it, so it is drawn as equations."
    ]


def test_a_drawing_that_shows_a_way_is_drawn_without_a_note(cast):
    told = shown(cast, "number-line")
    assert (told["drawn"], told["flags"]) == ("number-line", [])
    assert "number-line" in told["pictures"]
    assert "array" not in told["pictures"]


def test_every_drawing_has_words_on_the_desk():
    assert {picture.value for picture in Picture} == {*PICTURES, *MORE_PICTURES}
