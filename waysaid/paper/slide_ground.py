"""What every slide stands on: the wall, the sheet, the letters; new slides get them too."""

import io
from typing import Any

from PIL import Image, ImageOps
from pptx.opc.constants import RELATIONSHIP_TYPE
from pptx.opc.oxml import serialize_part_xml
from pptx.opc.package import Part
from pptx.oxml import parse_xml
from pptx.presentation import Presentation
from pptx.slide import SlideMaster
from pptx.util import Emu

UNIT = 6858
"""EMU: a tenth of a percent of the slide's height of seven and a half inches."""
WIDE, HIGH = 12_192_000, 6_858_000
"""EMU: a slide of 16:9."""
SHEET = (40, 40, 1698, 920)
"""Left, top, width and height of the sheet of paper on the wall, in units (our choice)."""
WALL, PAPER = "EBE3D6", "FFFDF8"
"""The colours of our board."""
LETTERS = "Andika"
"""The face of our board; a machine without it shows the office program's own."""
_PIXELS = (1920, 1080)
_QUALITY = 85
_SPACES = (
    'xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" '
    'xmlns:p="http://schemas.openxmlformats.org/presentationml/2006/main" '
    'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"'
)


def lay_ground(deck: Presentation, background: bytes | None) -> None:
    """Make a new deck wide, with our letters, a wall or the class's own picture, and a sheet.

    `background` is a picture's file as it was kept; the sheet keeps what is written legible on it.
    """
    _widen(deck)
    master = deck.slide_master
    _letters(master)
    kept = master.element.cSld.find("{*}bg")
    kept.getparent().replace(kept, _wall(master, background))
    tree = master.element.cSld.spTree
    tree.insert(2, _sheet())


def _widen(deck: Presentation) -> None:
    """Make the slides 16:9, and every place that its layouts keep for text as much wider."""
    before = int(deck.slide_width or WIDE)
    deck.slide_width, deck.slide_height = Emu(WIDE), Emu(HIGH)
    for page in (deck.slide_master, *deck.slide_layouts):
        for each in page.placeholders:
            if each.element.spPr.find("{*}xfrm") is not None:
                each.left = Emu(each.left * WIDE // before)
                each.width = Emu(each.width * WIDE // before)


def _letters(master: SlideMaster) -> None:
    theme: Part = master.part.part_related_by(RELATIONSHIP_TYPE.THEME)
    tree = parse_xml(theme.blob)
    for each in tree.iter("{*}latin"):
        each.set("typeface", LETTERS)
    theme._blob = serialize_part_xml(tree)


def _wall(master: SlideMaster, background: bytes | None) -> Any:
    fill = f'<a:solidFill><a:srgbClr val="{WALL}"/></a:solidFill>'
    if background is not None:
        _, picture = master.part.get_or_add_image_part(io.BytesIO(_whole_slide(background)))
        fill = (
            f'<a:blipFill dpi="0" rotWithShape="1"><a:blip r:embed="{picture}"/>'
            "<a:srcRect/><a:stretch><a:fillRect/></a:stretch></a:blipFill>"
        )
    return parse_xml(f"<p:bg {_SPACES}><p:bgPr>{fill}<a:effectLst/></p:bgPr></p:bg>")


def _whole_slide(background: bytes) -> bytes:
    """Return a picture cut to the slide's shape, in a format that every office program reads."""
    with Image.open(io.BytesIO(background)) as picture:
        cut = ImageOps.fit(picture.convert("RGB"), _PIXELS)
    written = io.BytesIO()
    cut.save(written, "JPEG", quality=_QUALITY)
    return written.getvalue()


def _sheet() -> Any:
    left, top, width, height = (each * UNIT for each in SHEET)
    return parse_xml(
        f'<p:sp {_SPACES}><p:nvSpPr><p:cNvPr id="90" name="Sheet"/><p:cNvSpPr/>'
        '<p:nvPr userDrawn="1"/></p:nvSpPr><p:spPr><a:xfrm>'
        f'<a:off x="{left}" y="{top}"/><a:ext cx="{width}" cy="{height}"/></a:xfrm>'
        '<a:prstGeom prst="roundRect"><a:avLst><a:gd name="adj" fmla="val 2500"/></a:avLst>'
        f'</a:prstGeom><a:solidFill><a:srgbClr val="{PAPER}"/></a:solidFill>'
        "<a:ln><a:noFill/></a:ln></p:spPr><p:txBody><a:bodyPr/><a:lstStyle/>"
        '<a:p><a:endParaRPr lang="en-US"/></a:p></p:txBody></p:sp>'
    )
