"""A telling, a problem or a string of problems, as shapes and as SVG."""

from waysaid.drawing.dots import draw_image, seen_in
from waysaid.drawing.draw import draw, nearest, suits, tiles_needed
from waysaid.drawing.equations import equation_rows, lines
from waysaid.drawing.marks import StringMark
from waysaid.drawing.metrics import text_width
from waysaid.drawing.notebook import Seen, seen, seen_way
from waysaid.drawing.scene import Scene, scene_json
from waysaid.drawing.shape import Anchor, Box, Dot, Label, Line, Path, Shape
from waysaid.drawing.string import StringRow, answer_joint, draw_string
from waysaid.drawing.svg import svg
from waysaid.drawing.telling import Frame, Picture, Telling

__all__ = [
    "Anchor",
    "Box",
    "Dot",
    "Frame",
    "Label",
    "Line",
    "Path",
    "Picture",
    "Scene",
    "Seen",
    "Shape",
    "StringMark",
    "StringRow",
    "Telling",
    "answer_joint",
    "draw",
    "draw_image",
    "draw_string",
    "equation_rows",
    "lines",
    "nearest",
    "scene_json",
    "seen",
    "seen_in",
    "seen_way",
    "suits",
    "svg",
    "text_width",
    "tiles_needed",
]
