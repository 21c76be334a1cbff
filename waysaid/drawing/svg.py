"""Write a scene as one SVG: the same scene always gives the same text."""

from xml.sax.saxutils import escape, quoteattr

from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Box, Dot, Label, Line, Path, Shape

_FONTS = "'Waysaid Board', Andika, sans-serif"


def svg(scene: Scene) -> str:
    """Return the scene as SVG text: ink in the page's own colour, no script, no outside file."""
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {scene.width} {scene.height}" '
        f'width="{scene.width}" height="{scene.height}" role="img" font-family="{_FONTS}" '
        'fill="none" stroke="none" stroke-linecap="round" stroke-linejoin="round">'
    )
    words = (f"<title>{_words(scene.title)}</title>", f"<desc>{_words(scene.desc)}</desc>")
    return "\n".join((head, *words, *(_shape(shape) for shape in scene.shapes), "</svg>")) + "\n"


def _words(said: str) -> str:
    """Escape text, and leave out the characters XML does not allow."""
    return escape("".join(one for one in said if one >= " " or one in "\t\n"))


def _shape(shape: Shape) -> str:
    match shape:
        case Line(x1, y1, x2, y2, stroke):
            return f'<line x1="{x1}" y1="{y1}" x2="{x2}" y2="{y2}" {_ink(stroke)}/>'
        case Path(d, stroke):
            return f"<path d={quoteattr(d)} {_ink(stroke)}/>"
        case Dot(x, y, r):
            return f'<circle cx="{x}" cy="{y}" r="{r}" fill="currentColor"/>'
        case Label(x, y, size, anchor, text):
            at = f'x="{x}" y="{y}" font-size="{size}" text-anchor="{anchor.value}"'
            return f'<text {at} fill="currentColor">{_words(text)}</text>'
        case Box(x, y, width, height, radius, filled, stroke):
            ink = 'fill="currentColor"' if filled else _ink(stroke)
            at = f'x="{x}" y="{y}" width="{width}" height="{height}" rx="{radius}"'
            return f"<rect {at} {ink}/>"


def _ink(stroke: int) -> str:
    return f'stroke="currentColor" stroke-width="{stroke}"'
