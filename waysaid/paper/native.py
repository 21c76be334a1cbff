"""Drawings as native shapes of a slide: each line, dot and letter can be moved and changed there.

The lengths of a drawing are units; a slide counts in EMU (English Metric Units, 914,400 an inch).
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from pptx.dml.color import RGBColor
from pptx.enum.shapes import MSO_AUTO_SHAPE_TYPE as AUTO
from pptx.enum.shapes import MSO_CONNECTOR
from pptx.enum.text import MSO_ANCHOR, PP_ALIGN
from pptx.oxml import parse_xml
from pptx.shapes.autoshape import Shape as AutoShape
from pptx.shapes.connector import Connector
from pptx.shapes.group import GroupShape
from pptx.util import Emu

from waysaid.drawing import Anchor, Box, Dot, Label, Line, Path, Shape, text_width

INK = RGBColor(0x1D, 0x22, 0x30)
_A = "http://schemas.openxmlformats.org/drawingml/2006/main"
_TOKEN = re.compile(r"[MLHVQCZ]|-?\d+")
_POINTS = {"M": 1, "L": 1, "H": 1, "V": 1, "Q": 2, "C": 3, "Z": 0}
_NAMES = {"M": "moveTo", "L": "lnTo", "Q": "quadBezTo", "C": "cubicBezTo"}
_ALIGN = {Anchor.START: PP_ALIGN.LEFT, Anchor.MIDDLE: PP_ALIGN.CENTER, Anchor.END: PP_ALIGN.RIGHT}
_EMU_A_POINT = 12_700


@dataclass(frozen=True, slots=True)
class Placed:
    """Where a drawing stands on the slide: its corner in EMU, and the EMU of one of its units."""

    left: int
    top: int
    unit: int

    def x(self, units: int) -> Emu:
        """Return where that many units from the drawing's left side are."""
        return Emu(self.left + units * self.unit)

    def y(self, units: int) -> Emu:
        """Return where that many units under the drawing's top are."""
        return Emu(self.top + units * self.unit)

    def long(self, units: int) -> Emu:
        """Return a length."""
        return Emu(units * self.unit)


def draw_native(group: GroupShape, shapes: Sequence[Shape], at: Placed) -> None:
    """Put a drawing's shapes into a group.

    Of a path it takes lines and curves (M, L, H, V, Q, C, Z, with whole numbers) and no arcs:
    what quick images and icons are drawn with.
    """
    for shape in shapes:
        _draw(group, shape, at)


def _draw(group: GroupShape, shape: Shape, at: Placed) -> None:
    match shape:
        case Line(x1, y1, x2, y2, stroke):
            drawn = group.shapes.add_connector(
                MSO_CONNECTOR.STRAIGHT, at.x(x1), at.y(y1), at.x(x2), at.y(y2)
            )
            _ink_line(drawn, at.long(stroke))
        case Path(d, stroke):
            _draw_path(group, d, stroke, at)
        case Dot(x, y, r):
            oval = group.shapes.add_shape(
                AUTO.OVAL, at.x(x - r), at.y(y - r), at.long(2 * r), at.long(2 * r)
            )
            _ink_whole(oval)
        case Box():
            _draw_box(group, shape, at)
        case Label():
            _draw_label(group, shape, at)


def _ink_line(drawn: AutoShape | Connector, wide: Emu) -> None:
    _plain(drawn)
    drawn.line.color.rgb, drawn.line.width = INK, wide


def _ink_whole(drawn: AutoShape) -> None:
    _plain(drawn)
    drawn.fill.solid()
    drawn.fill.fore_color.rgb = INK
    drawn.line.fill.background()


def _plain(drawn: AutoShape | Connector) -> None:
    """Take away the theme's own look, its shadow too."""
    style = drawn._element.find("{*}style")
    drawn._element.remove(style)


def _draw_box(group: GroupShape, box: Box, at: Placed) -> None:
    side = min(box.width, box.height)
    kind = AUTO.ROUNDED_RECTANGLE if box.radius else AUTO.RECTANGLE
    if box.radius and 2 * box.radius >= max(box.width, box.height):
        kind = AUTO.OVAL
    drawn = group.shapes.add_shape(
        kind, at.x(box.x), at.y(box.y), at.long(box.width), at.long(box.height)
    )
    if kind is AUTO.ROUNDED_RECTANGLE:
        drawn.adjustments[0] = box.radius / side
    if box.filled:
        _ink_whole(drawn)
    else:
        drawn.fill.background()
        _ink_line(drawn, at.long(box.stroke))


def _draw_label(group: GroupShape, label: Label, at: Placed) -> None:
    wide = text_width(label.text, label.size) + label.size
    before = {Anchor.START: 0, Anchor.MIDDLE: wide // 2, Anchor.END: wide}[label.anchor]
    drawn = group.shapes.add_textbox(
        at.x(label.x - before), at.y(label.y - label.size), at.long(wide), at.long(label.size)
    )
    frame = drawn.text_frame
    frame.margin_left = frame.margin_right = frame.margin_top = frame.margin_bottom = 0
    frame.word_wrap, frame.vertical_anchor = False, MSO_ANCHOR.MIDDLE
    frame.paragraphs[0].alignment = _ALIGN[label.anchor]
    run = frame.paragraphs[0].add_run()
    run.text, run.font.color.rgb = label.text, INK
    run.font.size = Emu(at.long(label.size) // _EMU_A_POINT * _EMU_A_POINT)


def _draw_path(group: GroupShape, d: str, stroke: int, at: Placed) -> None:
    """Draw a path as a free form: a rectangle's own outline is put in its place."""
    pieces = list(_pieces(d))
    across = [x for _, points in pieces for x, _ in points]
    down = [y for _, points in pieces for _, y in points]
    left, top = min(across), min(down)
    wide, high = max(max(across) - left, 1), max(max(down) - top, 1)
    drawn = group.shapes.add_shape(
        AUTO.RECTANGLE, at.x(left), at.y(top), at.long(wide), at.long(high)
    )
    drawn.name = f"Freeform {drawn.shape_id}"
    drawn.fill.background()
    _ink_line(drawn, at.long(stroke))
    own = drawn._element.spPr.find(f"{{{_A}}}prstGeom")
    own.getparent().replace(own, _geometry(pieces, (left, top), (wide, high)))


_Point = tuple[int, int]


def _geometry(
    pieces: Sequence[tuple[str, tuple[_Point, ...]]], corner: _Point, size: _Point
) -> Any:
    lines = []
    for kind, points in pieces:
        if kind == "Z":
            lines.append("<a:close/>")
            continue
        inside = "".join(f'<a:pt x="{x - corner[0]}" y="{y - corner[1]}"/>' for x, y in points)
        lines.append(f"<a:{_NAMES[kind]}>{inside}</a:{_NAMES[kind]}>")
    return parse_xml(
        f'<a:custGeom xmlns:a="{_A}"><a:avLst/><a:gdLst/><a:ahLst/><a:cxnLst/>'
        '<a:rect l="0" t="0" r="r" b="b"/><a:pathLst>'
        f'<a:path w="{size[0]}" h="{size[1]}" fill="none">{"".join(lines)}</a:path>'
        "</a:pathLst></a:custGeom>"
    )


def _pieces(d: str) -> Iterator[tuple[str, tuple[_Point, ...]]]:
    """Yield the pieces of a path; a line straight across or down is a line like others."""
    tokens = _TOKEN.findall(d)
    here, at = (0, 0), 0
    while at < len(tokens):
        kind, at = tokens[at], at + 1
        if kind in "HV":
            value, at = int(tokens[at]), at + 1
            here = (value, here[1]) if kind == "H" else (here[0], value)
            yield "L", (here,)
            continue
        many = _POINTS[kind]
        numbers = [int(each) for each in tokens[at : at + 2 * many]]
        at += 2 * many
        points = tuple(zip(numbers[0::2], numbers[1::2], strict=True))
        here = points[-1] if points else here
        yield kind, points
