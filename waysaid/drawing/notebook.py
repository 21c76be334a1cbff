"""Problems, ways, links and strings drawn in a notebook: what `seen` gives back draws itself."""

from collections.abc import Sequence
from dataclasses import dataclass

from waysaid.drawing.dots import draw_image
from waysaid.drawing.draw import draw, suits
from waysaid.drawing.marks import StringMark
from waysaid.drawing.scene import Scene
from waysaid.drawing.string import StringRow, draw_string
from waysaid.drawing.svg import svg
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.number import Image, Language, Problem, picture_name
from waysaid.strings import Composed, Link, Starter
from waysaid.ways import Way

ROOM = Frame(900, 420, 55)
"""The room of a drawing, a small one (our choice)."""
PICTURES = (
    Picture.DOTS,
    Picture.AREA,
    Picture.HOPS,
    Picture.NUMBER_LINE,
    Picture.FRACTION_BAR,
    Picture.HUNDRED_GRID,
    Picture.NUMBER_BOND,
    Picture.PLACE_VALUE,
    Picture.TEN_FRAME,
    Picture.BAR,
)
"""What a way is drawn as where nothing is asked for: the first of these that suits."""

Things = Problem | Link | Starter | Composed | Sequence[Problem]


@dataclass(frozen=True, slots=True)
class Seen:
    """A drawing that a notebook shows by itself."""

    scene: Scene

    def _repr_svg_(self) -> str:
        return svg(self.scene)


def seen(thing: Things, of: Sequence[Problem] = (), language: Language = Language.EN) -> Seen:
    """Return a problem, a string or a starter as a drawing, with no answer in it.

    A link is drawn on the problems of its string, which `of` holds.
    """
    match thing:
        case Link():
            return Seen(_string(of, language, [StringMark(thing.marks)]))
        case Starter() | Composed():
            return Seen(_string(thing.problems, language))
        case Image():
            return Seen(draw_image(thing, ROOM.width, ROOM.height, language))
        case Sequence():
            return Seen(_string(thing, language))
    return Seen(_string([thing], language))


def seen_way(
    way: Way,
    problem: Problem,
    picture: Picture | None = None,
    language: Language = Language.EN,
) -> Seen:
    """Return a way of a problem as it is drawn on a board, as a picture of its own if one suits."""
    telling = Telling(problem, way.steps, (), way.number, way.seen)
    usual = next((each for each in PICTURES if suits(each, telling)), Picture.EQUATIONS)
    return Seen(draw(picture or usual, telling, ROOM, language))


def _string(
    problems: Sequence[Problem], language: Language, marks: Sequence[StringMark] = ()
) -> Scene:
    """Draw a string; a quick image in it goes by its kind, for its text tells how many dots."""
    rows = [
        StringRow(each, (), picture_name(each, language) if isinstance(each, Image) else "")
        for each in problems
    ]
    return draw_string(rows, marks, ROOM, language)
