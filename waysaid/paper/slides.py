"""A string as slides that a teacher can change: one problem a slide, and no answer on any.

The file is Office Open XML (ECMA-376), written by python-pptx, all of it native shapes and text.
"""

import io
import re
import zipfile
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

import pptx
from PIL import Image
from pptx.enum.text import MSO_ANCHOR, PP_ALIGN
from pptx.presentation import Presentation
from pptx.slide import Slide
from pptx.text.text import TextFrame, _Paragraph
from pptx.util import Emu, Pt

from waysaid.drawing import Scene, text_width
from waysaid.number import Language
from waysaid.paper.native import INK, Placed, draw_native
from waysaid.paper.slide_ground import SHEET, UNIT, WIDE, lay_ground
from waysaid.paper.slide_icons import ICONS, SIDE

PICTURE_ROOM = (1500, 560)
"""Width and height of the room for a quick image, in tenths of a percent of the slide's height."""
MOST_SIGNALS = 6
_LEFT, _WIDE = SHEET[0] + 60, SHEET[2] - 120
"""Where text stands on the sheet, in units."""
_LARGEST, _LEAST = 260, 120
"""Letters of a problem: at least 12 % of the slide's height, as on the board."""
_SMALL = 60
"""Letters of everything else: at least 6 %, as on the board."""
_ROW = 100
_SPARE = 76
"""Of a hundred parts of the room, those that our letters take (our choice):
where they are missing, others come in their place that are wider."""
_FIXED_DATE = datetime(2026, 1, 1)
"""The date inside the file, fixed so that the same string makes the same bytes."""
_ZIP_DATE = (2026, 1, 1, 0, 0, 0)
_TITLE_ONLY = 5
_LOCALES = {Language.EN: "en-US", Language.ES: "es-ES"}
_FRACTION = re.compile(r"(\d+)/(\d+)")
_RAISED, _LOWERED = "30000", "-25000"
"""How far the two numbers of a fraction stand up and down, in thousandths of a percent."""


@dataclass(frozen=True, slots=True)
class SignalOnSlide:
    """A signal of the class: its word, and our icon by name or the file of its own picture."""

    word: str
    icon: str = ""
    picture: bytes | None = None


@dataclass(frozen=True, slots=True)
class ProblemOnSlide:
    """A problem as the class sees it, what the presenter's notes say, and a quick image's dots."""

    text: str
    notes: str
    image: Scene | None = None


@dataclass(frozen=True, slots=True)
class Slides:
    """A whole deck, in the language of the board; `notes` are those of the closing slide."""

    title: str
    closing: str
    language: Language
    problems: tuple[ProblemOnSlide, ...]
    notes: str = ""
    signals: tuple[SignalOnSlide, ...] = ()
    norms: tuple[str, ...] = ()
    background: bytes | None = None


def slides_pptx(slides: Slides) -> bytes:
    """Return the deck as a .pptx file: the opening, a slide for each problem, the closing.

    The same deck gives the same bytes.
    """
    deck = pptx.Presentation()
    lay_ground(deck, slides.background)
    _opening(deck, slides)
    for each in slides.problems:
        _problem(deck, each, slides)
    _closing(deck, slides)
    core = deck.core_properties
    core.title, core.author, core.last_modified_by = slides.title, "Waysaid", "Waysaid"
    core.language = _LOCALES[slides.language]
    core.created = core.modified = _FIXED_DATE
    written = io.BytesIO()
    deck.save(written)
    return _with_fixed_dates(written.getvalue())


def _with_fixed_dates(content: bytes) -> bytes:
    """Return a zip's parts in another, none with the time at which it was written."""
    fixed = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(content)) as parts,
        zipfile.ZipFile(fixed, "w", zipfile.ZIP_DEFLATED) as made,
    ):
        for name in parts.namelist():
            part = zipfile.ZipInfo(name, _ZIP_DATE)
            part.compress_type = zipfile.ZIP_DEFLATED
            part.create_system = 0
            made.writestr(part, parts.read(name))
    return fixed.getvalue()


def _opening(deck: Presentation, slides: Slides) -> None:
    slide = _new(deck)
    top = _signals(slide, slides)
    _title(slide, slides.title, (SHEET[1] + 70, 170), slides.language, 130)
    _lines(slide, slides.norms, (SHEET[1] + 270, top - SHEET[1] - 290), slides.language)


def _problem(deck: Presentation, problem: ProblemOnSlide, slides: Slides) -> None:
    slide = _new(deck)
    top = _signals(slide, slides)
    room = (SHEET[1] + 40, top - SHEET[1] - 60)
    if problem.image is None:
        _title(slide, problem.text, room, slides.language)
    else:
        _title(slide, problem.text, (room[0], _ROW), slides.language, _SMALL)
        _picture(slide, problem.image, (room[0] + _ROW, room[1] - _ROW))
    _write_notes(slide, problem.notes)


def _closing(deck: Presentation, slides: Slides) -> None:
    slide = _new(deck)
    _title(slide, slides.closing, (SHEET[1] + 40, 150), slides.language, 100)
    texts = [each.text for each in slides.problems]
    room = (SHEET[1] + 200, SHEET[3] - 240)
    half = len(texts) if len(texts) <= _ONE_COLUMN else -(-len(texts) // 2)
    wide = _WIDE if half == len(texts) else _WIDE // 2
    size = min(room[1] * 2 // (3 * max(half, 1)), _LEAST)
    longest = max((text_width(each, 100) for each in texts), default=1)
    size = max(min(size, wide * _SPARE // longest), _SMALL * 2 // 3)
    for at in range(0, len(texts), max(half, 1)):
        frame = _box(slide, (_LEFT + at // max(half, 1) * wide, room[0], wide, room[1]))
        frame.vertical_anchor = MSO_ANCHOR.TOP
        _write(frame, texts[at : at + half], size, slides.language)
    _write_notes(slide, slides.notes)


_ONE_COLUMN = 6
"""Problems that stand one under another; of more, half stand beside them."""


def _new(deck: Presentation) -> Slide:
    return deck.slides.add_slide(deck.slide_layouts[_TITLE_ONLY])


def _title(
    slide: Slide, text: str, room: tuple[int, int], language: Language, largest: int = _LARGEST
) -> None:
    """Write the slide's title in a room (top and height), as large as fits on one line."""
    title = slide.shapes.title
    title.left, title.top = Emu(_LEFT * UNIT), Emu(room[0] * UNIT)
    title.width, title.height = Emu(_WIDE * UNIT), Emu(room[1] * UNIT)
    frame = title.text_frame
    frame.word_wrap, frame.vertical_anchor = True, MSO_ANCHOR.MIDDLE
    fits = _WIDE * _SPARE // max(text_width(text, 100), 1)
    _write(frame, [text], min(largest, max(fits, min(largest, _LEAST))), language)


def _box(slide: Slide, place: tuple[int, int, int, int]) -> TextFrame:
    left, top, wide, high = (Emu(each * UNIT) for each in place)
    frame = slide.shapes.add_textbox(left, top, wide, high).text_frame
    frame.word_wrap, frame.vertical_anchor = True, MSO_ANCHOR.MIDDLE
    return frame


def _lines(slide: Slide, lines: Sequence[str], room: tuple[int, int], language: Language) -> None:
    if lines:
        frame = _box(slide, (_LEFT, room[0], _WIDE, room[1]))
        size = max(min(70, room[1] * 2 // (3 * len(lines))), _SMALL * 2 // 3)
        _write(frame, lines, size, language)


def _write(frame: TextFrame, lines: Sequence[str], size: int, language: Language) -> None:
    """Write lines in the middle, each a paragraph; `size` is in units."""
    for place, line in enumerate(lines):
        paragraph = frame.paragraphs[0] if place == 0 else frame.add_paragraph()
        paragraph.alignment = PP_ALIGN.CENTER
        _runs(paragraph, line, size, language)


def _runs(paragraph: _Paragraph, line: str, size: int, language: Language) -> None:
    """Write a line; the numbers of a fraction stand up and down beside its stroke."""
    for place, piece in enumerate(_FRACTION.split(line)):
        if not piece:
            continue
        run = paragraph.add_run()
        run.text, run.font.color.rgb = piece, INK
        run.font.size = Pt(size * UNIT // Pt(1))
        properties = run._r.get_or_add_rPr()
        properties.set("lang", _LOCALES[language])
        if place % 3 == 1:
            properties.set("baseline", _RAISED)
            run = paragraph.add_run()
            run.text, run.font.color.rgb, run.font.size = "⁄", INK, Pt(size * UNIT // Pt(1))
        elif place % 3 == 2:
            properties.set("baseline", _LOWERED)


def _picture(slide: Slide, scene: Scene, room: tuple[int, int]) -> None:
    """Draw a quick image in the middle of a room, its words with it for who cannot see it."""
    unit = UNIT * min(room[1], PICTURE_ROOM[1]) // PICTURE_ROOM[1]
    left = (WIDE - scene.width * unit) // 2
    top = room[0] * UNIT + (room[1] * UNIT - scene.height * unit) // 2
    group = slide.shapes.add_group_shape()
    draw_native(group, scene.shapes, Placed(left, top, unit))
    group.name = scene.title
    group._element.nvGrpSpPr.cNvPr.set("descr", f"{scene.title}. {scene.desc}".strip())


def _signals(slide: Slide, slides: Slides) -> int:
    """Put the signals along the lower edge of the sheet; return where they begin, in units."""
    rows = _rows(slides.signals[:MOST_SIGNALS])
    top = SHEET[1] + SHEET[3] - 20 - _ROW * len(rows)
    for at, row in enumerate(rows):
        whole = sum(_signal_width(each) for each in row)
        left = (WIDE // UNIT - whole) // 2
        for each in row:
            _signal(slide, each, (left, top + at * _ROW), slides.language)
            left += _signal_width(each)
    return top


def _rows(signals: Sequence[SignalOnSlide]) -> list[list[SignalOnSlide]]:
    """Return the signals in rows that are not too wide, as even as they can be."""
    for many in range(1, len(signals) + 1):
        each = -(-len(signals) // many)
        rows = [list(signals[at : at + each]) for at in range(0, len(signals), each)]
        if all(sum(_signal_width(one) for one in row) <= _WIDE for row in rows):
            return rows
    return [[each] for each in signals]


def _signal_width(signal: SignalOnSlide) -> int:
    return min(_ROW + text_width(signal.word, _SMALL) * 11 // 10 + 50, _WIDE)


def _signal(
    slide: Slide, signal: SignalOnSlide, corner: tuple[int, int], language: Language
) -> None:
    left, top = corner
    side = _ROW * 8 // 10
    if signal.picture is not None:
        with Image.open(io.BytesIO(signal.picture)) as opened:
            picture = io.BytesIO()
            opened.save(picture, "PNG")
        shown = slide.shapes.add_picture(
            picture, Emu(left * UNIT), Emu((top + 10) * UNIT), height=Emu(side * UNIT)
        )
        if shown.width > shown.height:
            shown.height = Emu(shown.height * side * UNIT // shown.width)
            shown.width = Emu(side * UNIT)
        shown._element.nvPicPr.cNvPr.set("descr", signal.word)
    elif signal.icon in ICONS:
        group = slide.shapes.add_group_shape()
        unit = side * UNIT // SIDE
        draw_native(group, ICONS[signal.icon], Placed(left * UNIT, (top + 10) * UNIT, unit))
        group.name = signal.word
        group._element.nvGrpSpPr.cNvPr.set("descr", signal.word)
    wide = _signal_width(signal) - _ROW
    frame = _box(slide, (left + _ROW, top, wide, _ROW))
    frame.margin_left = frame.margin_right = 0
    _write(frame, [signal.word], _SMALL, language)
    frame.paragraphs[0].alignment = PP_ALIGN.LEFT


def _write_notes(slide: Slide, notes: str) -> None:
    if notes:
        slide.notes_slide.notes_text_frame.text = notes
