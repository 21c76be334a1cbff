"""From a telling to a scene: which pictures suit it, and how many tiles a drawing needs."""

from collections.abc import Sequence

from waysaid.drawing.bar import draw_bar
from waysaid.drawing.bond import bond_of, draw_bond
from waysaid.drawing.equations import draw_equations, equation_rows, rows_height
from waysaid.drawing.line import draw_line
from waysaid.drawing.place import draw_place, pieces_of
from waysaid.drawing.problem import whole_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.story import story_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.ten_frame import counters_of, draw_frames
from waysaid.drawing.words import sentence, title_of
from waysaid.number import Language


def suits(picture: Picture, telling: Telling) -> bool:
    """Tell whether a picture can show this telling; words and equations always can."""
    match picture:
        case Picture.WORDS | Picture.EQUATIONS:
            return True
        case Picture.NUMBER_LINE:
            return story_of(telling) is not None
        case Picture.NUMBER_BOND:
            return bond_of(telling) is not None
        case Picture.PLACE_VALUE:
            return pieces_of(telling) is not None
        case Picture.TEN_FRAME:
            return counters_of(telling) is not None
        case Picture.BAR:
            return whole_of(telling) is not None


def nearest(picture: Picture, telling: Telling) -> Picture:
    """Return the picture if it suits, else equations."""
    return picture if suits(picture, telling) else Picture.EQUATIONS


def draw(picture: Picture, telling: Telling, frame: Frame, lang: Language = Language.EN) -> Scene:
    """Return the drawing, or equations where it does not suit or where only they fit.

    Never raises. Only the words: an empty scene, for the board writes the child's words itself.
    """
    if picture is Picture.WORDS:
        title = title_of(picture, telling.problem, lang)
        return Scene(0, 0, title, sentence((), lang))
    drawn = _picture(picture, telling, frame, lang)
    if drawn is not None and (frame.thumbnail or _fits(drawn, frame.rooms[-1])):
        return drawn
    written = draw_equations(telling, frame, lang)
    return written if drawn is None or _fits(written, frame.rooms[-1]) else drawn


def _picture(picture: Picture, telling: Telling, frame: Frame, lang: Language) -> Scene | None:
    """Return the drawing; None where the picture does not suit, and for equations."""
    match picture:
        case Picture.NUMBER_LINE if story := story_of(telling):
            return draw_line(story, telling, frame, lang)
        case Picture.NUMBER_BOND if bond := bond_of(telling):
            return draw_bond(bond, telling, frame, lang)
        case Picture.PLACE_VALUE if pieces := pieces_of(telling):
            return draw_place(pieces, telling, frame, lang)
        case Picture.TEN_FRAME if counters := counters_of(telling):
            return draw_frames(counters, telling, frame, lang)
        case Picture.BAR if whole := whole_of(telling):
            return draw_bar(whole, telling, frame, lang)
        case _:
            return None


def tiles_needed(drawing: Sequence[str] | Scene, frame: Frame) -> int:
    """Return how many tiles of this frame a drawing or its lines need: 1, a row of 2, or 4.

    Lines are counted as they flow into rows at the frame's own label size.
    """
    for tiles, room in zip((1, 2), frame.rooms, strict=False):
        if _fits(drawing, room):
            return tiles
    return 4


def _fits(drawing: Sequence[str] | Scene, frame: Frame) -> bool:
    if isinstance(drawing, Scene):
        return drawing.width <= frame.width and drawing.height <= frame.height
    rows = equation_rows(drawing, frame.width, frame.label)
    return rows_height(rows, frame.label) <= frame.height
