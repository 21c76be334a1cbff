"""The fonts carry the right names, the needed characters and little weight."""

import re

import pikepdf
import pytest
import typst
from fontTools.ttLib import TTFont

from tests.whole.house import ROOT

WEB = ROOT / "waysaid" / "site" / "static" / "fonts"
PAPER = ROOT / "waysaid" / "paper" / "fonts"
BOARD = sorted(WEB.glob("waysaid-board-*.woff2"))
SPANISH = "áéíóúüñÁÉÍÓÚÜÑ¿¡«»ºª"
SIGNS = "−×÷→…“”‘’·≠½=+<>()0123456789"
LARGEST = 110_000
"""Bytes of all web fonts together; our choice, so that a board opens fast on a slow network."""


def names(font):
    return {record.nameID: str(record) for record in font["name"].names}


@pytest.mark.parametrize("path", BOARD, ids=lambda path: path.name)
def test_a_changed_font_does_not_carry_the_reserved_names(path):
    own = names(TTFont(path))
    assert own[1] == "Waysaid Board"
    carried = " ".join(text for number, text in own.items() if number not in {0, 13, 14})
    assert not re.search(r"andika|\bsil\b", carried, re.IGNORECASE)
    assert "SIL Open Font License" in own[13]


@pytest.mark.parametrize(("style", "weight"), [("Regular", 400), ("Bold", 700)])
def test_the_board_and_the_paper_have_the_same_widths(style, weight):
    paper, board = (
        TTFont(PAPER / f"Andika-{style}.ttf"),
        TTFont(WEB / f"waysaid-board-{weight}.woff2"),
    )
    assert board["OS/2"].usWeightClass == weight
    of_paper, of_board = paper.getBestCmap(), board.getBestCmap()
    assert len(of_board) > 300
    different = [
        chr(point)
        for point, glyph in of_board.items()
        if board["hmtx"][glyph][0] != paper["hmtx"][of_paper[point]][0]
    ]
    assert different == []


@pytest.mark.parametrize("path", BOARD, ids=lambda path: path.name)
def test_the_board_has_the_signs_and_the_spanish_letters(path):
    assert [sign for sign in SIGNS + SPANISH if ord(sign) not in TTFont(path).getBestCmap()] == []


def test_all_digits_are_of_one_width():
    font = TTFont(PAPER / "Andika-Regular.ttf")
    assert len({font["hmtx"][font.getBestCmap()[ord(digit)]][0] for digit in "0123456789−+="}) == 1


def test_the_style_sheet_names_every_web_font_and_no_other():
    used = re.findall(r'url\("([^"]+)"\)', (WEB / "fonts.css").read_text(encoding="utf-8"))
    assert sorted(used) == sorted(path.name for path in WEB.glob("*.woff2"))


def test_the_web_fonts_are_light():
    assert 0 < sum(path.stat().st_size for path in WEB.glob("*.woff2")) <= LARGEST


@pytest.mark.parametrize("folder", [WEB, PAPER], ids=["web", "paper"])
def test_the_licences_lie_beside_the_fonts(folder):
    licences = list(folder.glob("OFL-*.txt"))
    assert licences
    for licence in licences:
        assert "SIL OPEN FONT LICENSE" in licence.read_text(encoding="utf-8")


def test_a_sheet_uses_andika_in_both_weights(tmp_path):
    drawing = (
        '<svg xmlns="http://www.w3.org/2000/svg" width="80" height="20"><text y="15" '
        'font-family="&quot;Waysaid Board&quot;, Andika, sans-serif">39 + 1</text></svg>'
    )
    (tmp_path / "a.svg").write_text(drawing, encoding="utf-8")
    sheet = tmp_path / "a.typ"
    sheet.write_text(
        '#set text(font: "Andika")\n*39* − 1 → ½ #image("a.svg", alt: "39 + 1")', encoding="utf-8"
    )
    made = tmp_path / "a.pdf"
    typst.compile(sheet, output=made, font_paths=[PAPER], ignore_system_fonts=True)
    with pikepdf.open(made) as opened:
        found = {str(one.get("/BaseFont")) for one in opened.objects if "/BaseFont" in dir_of(one)}
    assert {name.split("+")[-1].split("-Identity")[0] for name in found} == {
        "Andika",
        "Andika-Bold",
    }


def dir_of(value):
    return value.keys() if isinstance(value, pikepdf.Dictionary) else ()
