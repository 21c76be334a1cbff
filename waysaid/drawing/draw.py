"""From a telling to a scene: which pictures suit it, and how many tiles a drawing needs."""

from collections.abc import Callable, Sequence
from functools import partial
from typing import TypeVar

from waysaid.drawing.amounts import fractions_of, hundredths_of
from waysaid.drawing.area import draw_area
from waysaid.drawing.array import array_of, draw_array
from waysaid.drawing.bar import bar_of, draw_bar
from waysaid.drawing.bond import bond_of, draw_bond
from waysaid.drawing.dots import circled_of, draw_circled
from waysaid.drawing.double_bar import draw_double
from waysaid.drawing.equations import draw_equations, equation_rows, rows_height
from waysaid.drawing.hops import draw_hops, hops_along
from waysaid.drawing.line import draw_line
from waysaid.drawing.pairs import pairs_of
from waysaid.drawing.place import draw_place, pieces_of
from waysaid.drawing.rectangle import rectangles_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.shaded import draw_bars, draw_circles, draw_grids
from waysaid.drawing.story import story_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.ten_frame import counters_of, draw_frames
from waysaid.drawing.words import sentence, title_of
from waysaid.number import Language

Found = TypeVar("Found")
Drawer = Callable[[Frame, Language], Scene]
"""Draws what was found in a telling."""


def _drawer(
    find: Callable[[Telling], Found | None],
    make: Callable[[Found, Telling, Frame, Language], Scene],
) -> Callable[[Telling], Drawer | None]:
    """Return a function that finds what a picture shows, and draws it; None where it finds none."""

    def prepared(telling: Telling) -> Drawer | None:
        found = find(telling)
        return None if found is None else partial(make, found, telling)

    return prepared


_DRAWERS: dict[Picture, Callable[[Telling], Drawer | None]] = {
    Picture.NUMBER_LINE: _drawer(story_of, draw_line),
    Picture.NUMBER_BOND: _drawer(bond_of, draw_bond),
    Picture.PLACE_VALUE: _drawer(pieces_of, draw_place),
    Picture.TEN_FRAME: _drawer(counters_of, draw_frames),
    Picture.BAR: _drawer(bar_of, draw_bar),
    Picture.AREA: _drawer(rectangles_of, draw_area),
    Picture.ARRAY: _drawer(array_of, draw_array),
    Picture.HOPS: _drawer(hops_along, draw_hops),
    Picture.DOUBLE_BAR: _drawer(pairs_of, draw_double),
    Picture.FRACTION_BAR: _drawer(fractions_of, draw_bars),
    Picture.FRACTION_CIRCLE: _drawer(fractions_of, draw_circles),
    Picture.HUNDRED_GRID: _drawer(hundredths_of, draw_grids),
    Picture.DOTS: _drawer(circled_of, draw_circled),
}
"""What draws each picture but words and equations; a picture that is not here suits nothing."""

_NEAREST = {
    Picture.NUMBER_LINE: (Picture.HOPS,),
    Picture.HOPS: (Picture.NUMBER_LINE,),
    Picture.AREA: (Picture.ARRAY,),
    Picture.ARRAY: (Picture.AREA,),
    Picture.BAR: (Picture.DOUBLE_BAR,),
    Picture.DOUBLE_BAR: (Picture.BAR,),
    Picture.FRACTION_BAR: (Picture.FRACTION_CIRCLE, Picture.HUNDRED_GRID, Picture.DOUBLE_BAR),
    Picture.FRACTION_CIRCLE: (Picture.FRACTION_BAR, Picture.HUNDRED_GRID, Picture.DOUBLE_BAR),
    Picture.HUNDRED_GRID: (Picture.FRACTION_BAR, Picture.DOUBLE_BAR),
}
"""What a child may have meant instead, nearest first; equations in the end (our choice)."""


def suits(picture: Picture, telling: Telling) -> bool:
    """Tell whether a picture can show this telling; words and equations always can."""
    if picture in (Picture.WORDS, Picture.EQUATIONS):
        return True
    return picture in _DRAWERS and _DRAWERS[picture](telling) is not None


def nearest(picture: Picture, telling: Telling) -> Picture:
    """Return the picture if it suits, else the nearest one that does: equations if no other."""
    near = (picture, *_NEAREST.get(picture, ()))
    return next((one for one in near if suits(one, telling)), Picture.EQUATIONS)


def draw(picture: Picture, telling: Telling, frame: Frame, lang: Language = Language.EN) -> Scene:
    """Return the drawing, or the nearest one that suits; equations where only they fit.

    Never raises. Only the words: an empty scene, for the board writes the child's words itself.
    """
    if picture is Picture.WORDS:
        title = title_of(picture, telling.problem, lang)
        return Scene(0, 0, title, sentence((), lang))
    chosen = nearest(picture, telling)
    drawer = _DRAWERS[chosen](telling) if chosen in _DRAWERS else None
    drawn = None if drawer is None else drawer(frame, lang)
    if drawn is not None and (frame.thumbnail or _fits(drawn, frame.rooms[-1])):
        return drawn
    written = draw_equations(telling, frame, lang)
    return written if drawn is None or _fits(written, frame.rooms[-1]) else drawn


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
