"""From a telling to a scene: which pictures suit it, and how many tiles a drawing needs."""

from waysaid.drawing.equations import draw_equations, equation_rows, rows_height
from waysaid.drawing.line import draw_line
from waysaid.drawing.scene import Scene
from waysaid.drawing.story import story_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import sentence, title_of
from waysaid.number import Print, text


def suits(picture: Picture, telling: Telling) -> bool:
    """Tell whether a picture can show this telling; words and equations always can."""
    match picture:
        case Picture.WORDS | Picture.EQUATIONS:
            return True
        case Picture.NUMBER_LINE:
            return story_of(telling) is not None
        case _:
            return False


def nearest(picture: Picture, telling: Telling) -> Picture:
    """Return the picture if it suits, else equations."""
    return picture if suits(picture, telling) else Picture.EQUATIONS


def draw(picture: Picture, telling: Telling, frame: Frame, lang: str = "en") -> Scene:
    """Return the drawing, as equations where the picture does not suit; never raises.

    Only the words: an empty scene, for the board writes the child's words itself.
    """
    match nearest(picture, telling):
        case Picture.WORDS:
            title = title_of(Picture.WORDS, text(telling.problem, Print.TRUE), lang)
            return Scene(0, 0, title, sentence((), lang))
        case Picture.NUMBER_LINE:
            story = story_of(telling)
            if story is not None:
                return draw_line(story, telling, frame, lang)
        case _:
            pass
    return draw_equations(telling, frame, lang)


def tiles_needed(drawing: tuple[str, ...] | Scene, frame: Frame) -> int:
    """Return how many tiles of this frame a drawing or its lines need: 1, a row of 2, or 4.

    Lines are counted as they flow into rows at the frame's own label size.
    """
    for tiles, room in zip((1, 2), frame.rooms, strict=False):
        if _fits(drawing, room):
            return tiles
    return 4


def _fits(drawing: tuple[str, ...] | Scene, frame: Frame) -> bool:
    if isinstance(drawing, Scene):
        return drawing.width <= frame.width and drawing.height <= frame.height
    rows = equation_rows(drawing, frame.width, frame.label)
    return rows_height(rows, frame.label) <= frame.height
