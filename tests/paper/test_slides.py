"""Slides: native shapes that can be changed, the class's signals, notes, and no answer on any."""

import io
import re
import zipfile

import pptx
import pytest
from lxml import etree
from PIL import Image
from pptx.enum.shapes import MSO_AUTO_SHAPE_TYPE as AUTO
from pptx.enum.shapes import MSO_SHAPE_TYPE as TYPE

from tests.counts import count
from tests.hearing.problems import seeded
from waysaid.number import Language, answer_of, answer_text, layout_of, parse, text
from waysaid.paper import Around, SignalOnSlide, Wordings, slides_pptx, string_slides
from waysaid.strings import starters
from waysaid.ways import Family

KINDS = (
    "40 + 25",
    "3/4 + 1 1/2",
    "image dice: 3 2",
    "image frame 10: 7",
    "image array: 3 x 4",
    "29 + 14 = 30 + 13 ?",
    "0.65 ? 0.7",
    "16 / 3",
    "15% of 80",
    "about 398 x 21",
    "7 + _ = 12",
)
SIGNALS = (SignalOnSlide("still thinking", "thinking"), SignalOnSlide("I have a way", "way"))
AROUND = Around(SIGNALS, ("We listen to each other.",))
BOTH = Wordings(Language.EN, Language.EN)
EMU_A_UNIT = 6858


def made(*problems, wordings=BOTH, around=AROUND, why=()):
    return slides_pptx(string_slides([parse(each) for each in problems], wordings, why, around))


def opened(content):
    return pptx.Presentation(io.BytesIO(content))


def every_shape(shapes):
    for each in shapes:
        yield each
        if each.shape_type is TYPE.GROUP:
            yield from every_shape(each.shapes)


def texts(slide):
    return [each.text_frame.text for each in slide.shapes if each.has_text_frame]


def picture(colour=(120, 30, 30)):
    drawn = io.BytesIO()
    Image.new("RGB", (300, 500), colour).save(drawn, "WEBP")
    return drawn.getvalue()


@pytest.fixture(scope="module")
def deck():
    return opened(made(*KINDS))


def test_a_deck_has_an_opening_a_slide_for_each_problem_and_a_closing(deck):
    assert len(deck.slides) == len(KINDS) + 2
    titles = [slide.shapes.title.text_frame.text for slide in deck.slides]
    assert titles[0] == "Number talk"
    assert titles[1] == "40 + 25"
    assert titles[-1] == "What do you notice?"
    assert all(titles)


def test_a_slide_says_its_problem_and_the_signals_and_nothing_else(deck):
    words = [each.word for each in SIGNALS]
    for slide in list(deck.slides)[1:-1]:
        title = slide.shapes.title.text_frame.text
        assert sorted(texts(slide)) == sorted([title, *words])


def test_no_slide_of_any_starter_has_an_answer_that_is_not_a_number_of_the_problem_itself():
    some = starters()[:: max(1, len(starters()) // count(test=12, sweep=200))]
    for starter in some:
        shown = list(opened(slides_pptx(string_slides(starter.problems, BOTH))).slides)[1:-1]
        for problem, slide in zip(starter.problems, shown, strict=True):
            numbers = re.findall(r"\d+", " ".join(texts(slide)).replace("⁄", " "))
            if numbers:
                assert numbers == re.findall(r"\d+", text(problem).replace("/", " "))


def test_the_closing_shows_every_problem_without_an_answer(deck):
    closing = "\n".join(texts(list(deck.slides)[-1])).replace("⁄", "/")
    assert "3/4 + 1 1/2" in closing
    assert answer_text(answer_of(parse("3/4 + 1 1/2"))) not in closing
    assert "65" not in closing.replace("0.65", "")


def test_a_quick_image_is_drawn_with_as_many_native_dots_and_said_without_their_number(deck):
    for place, each in enumerate(KINDS):
        if not each.startswith("image"):
            continue
        slide = deck.slides[place + 1]
        groups = [one for one in slide.shapes if one.shape_type is TYPE.GROUP]
        drawn = next(one for one in groups if one.name not in {word.word for word in SIGNALS})
        dots = [
            one
            for one in every_shape(drawn.shapes)
            if one.shape_type is TYPE.AUTO_SHAPE and one.auto_shape_type is AUTO.OVAL
        ]
        assert len(dots) == len(layout_of(parse(each)).dots)
        alternative = drawn._element.nvGrpSpPr.cNvPr.get("descr")
        assert alternative
        assert str(len(dots)) not in alternative


def test_nothing_reaches_past_the_slide_and_no_letters_are_under_six_percent(deck):
    for slide in deck.slides:
        for each in every_shape(slide.shapes):
            assert 0 <= each.left <= each.left + each.width <= deck.slide_width
            assert 0 <= each.top <= each.top + each.height <= deck.slide_height
    for slide in list(deck.slides)[1:-1]:
        for each in slide.shapes:
            for paragraph in each.text_frame.paragraphs if each.has_text_frame else ():
                sizes = [run.font.size for run in paragraph.runs]
                assert min(sizes) >= 59 * EMU_A_UNIT


def test_a_problem_without_dots_is_at_least_twelve_percent_high(deck):
    for place, each in enumerate(KINDS):
        if not each.startswith("image"):
            runs = deck.slides[place + 1].shapes.title.text_frame.paragraphs[0].runs
            assert min(run.font.size for run in runs) >= 119 * EMU_A_UNIT


def test_the_numbers_of_a_fraction_stand_up_and_down(deck):
    runs = deck.slides[2].shapes.title.text_frame.paragraphs[0].runs
    stands = [(run.text, run._r.rPr.get("baseline")) for run in runs]
    assert stands[:3] == [("3", "30000"), ("⁄", None), ("4", "-25000")]
    assert "".join(run.text for run in runs) == "3⁄4 + 1 1⁄2"


def test_the_notes_say_why_the_ways_and_the_slips_in_the_words_of_the_class():
    wordings = Wordings(Language.ES, Language.ES, lambda family: f"<{family.value}>")
    deck = opened(made("37 + 25", "38 + 25", wordings=wordings, why=("para empezar",)))
    notes = deck.slides[1].notes_slide.notes_text_frame.text
    assert "para empezar" in notes
    assert f"<{Family.BRIDGE.value}>: 37 + 3 = 40; 40 + 22 = 62" in notes
    assert "Descuidos" in notes
    assert "– si 52" in notes
    assert "Lo que los une" in deck.slides[3].notes_slide.notes_text_frame.text
    assert deck.slides[0].shapes.title.text_frame.text == "Charla numérica"


def test_no_way_in_the_notes_adds_nothing():
    notes = opened(made("30 + 15")).slides[1].notes_slide.notes_text_frame.text
    assert "– jump:" in notes
    assert "0 + 5 = 5" not in notes.replace("30 + 5", "").replace("40 + 5", "")


def test_own_pictures_are_kept_as_pictures_every_office_program_reads():
    around = Around((SignalOnSlide("mine", "", picture()),), (), picture((250, 250, 250)))
    content = made("40 + 25", around=around)
    slide = opened(content).slides[1]
    own = next(each for each in slide.shapes if each.shape_type is TYPE.PICTURE)
    assert own.image.content_type == "image/png"
    assert own._element.nvPicPr.cNvPr.get("descr") == "mine"
    assert own.height <= 100 * EMU_A_UNIT
    parts = zipfile.ZipFile(io.BytesIO(content)).namelist()
    assert [each for each in parts if each.endswith(".jpg")]


def test_the_same_string_makes_the_same_bytes():
    assert made(*KINDS) == made(*KINDS)


@pytest.mark.parametrize("around", [AROUND, Around(), Around(SIGNALS * 3, ("a",), picture())])
def test_every_part_is_sound(around):
    with zipfile.ZipFile(io.BytesIO(made(*KINDS, around=around))) as parts:
        names = set(parts.namelist())
        assert len(names) == len(parts.namelist())
        kinds = etree.fromstring(parts.read("[Content_Types].xml"))
        overrides = {each.get("PartName").lstrip("/") for each in kinds.iter("{*}Override")}
        endings = {each.get("Extension") for each in kinds.iter("{*}Default")}
        assert overrides <= names
        for name in names - {"[Content_Types].xml"}:
            assert name in overrides or name.rpartition(".")[2] in endings
            if name.endswith((".xml", ".rels")):
                faults = list(unsound(name, etree.fromstring(parts.read(name)), names))
                assert faults == []


def unsound(name, tree, names):
    """What an office program would mend: a link to nothing, a number twice, a part out of place."""
    if name.endswith(".rels"):
        folder = name.replace("_rels/", "").rpartition("/")[0]
        for each in tree:
            if each.get("TargetMode") != "External":
                target = each.get("Target")
                whole = target.lstrip("/") if target.startswith("/") else f"{folder}/{target}"
                while re.search(r"[^/]+/\.\./", whole):
                    whole = re.sub(r"[^/]+/\.\./", "", whole, count=1)
                if whole.lstrip("/") not in names:
                    yield f"{name}: {target}"
        return
    ids = [each.get("id") for each in tree.iter("{*}cNvPr")]
    if len(ids) != len(set(ids)):
        yield f"{name}: an id is there twice"
    for each in tree.iter("{*}spPr"):
        order = [etree.QName(part).localname for part in each]
        known = ["xfrm", "custGeom", "prstGeom", *FILLS, "ln", "effectLst"]
        if [known.index(part) for part in order] != sorted(known.index(part) for part in order):
            yield f"{name}: {order}"


FILLS = ("noFill", "solidFill", "blipFill")
"""The order of a shape's properties: ECMA-376, part 1, CT_ShapeProperties (from memory)."""


def test_what_is_unsound_is_seen():
    twice = etree.fromstring('<a xmlns:p="p"><p:cNvPr id="2"/><p:cNvPr id="2"/></a>')
    assert list(unsound("slide.xml", twice, set()))
    lost = etree.fromstring('<a><b Target="../media/x.png"/></a>')
    assert list(unsound("ppt/slides/_rels/s.xml.rels", lost, {"ppt/media/y.png"}))
    assert not list(unsound("ppt/slides/_rels/s.xml.rels", lost, {"ppt/media/x.png"}))
    turned = etree.fromstring('<a xmlns:p="p"><p:spPr><p:ln/><p:prstGeom/></p:spPr></a>')
    assert list(unsound("slide.xml", turned, set()))


def test_any_problem_makes_a_slide():
    for problem in seeded(count(test=20, sweep=2000)):
        deck = opened(slides_pptx(string_slides([problem], BOTH, (), AROUND)))
        assert len(deck.slides) == 3
