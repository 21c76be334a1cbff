"""The chart as a PDF: paper sizes, tags, alternative texts, and words kept as words."""

import io

import pikepdf
import pytest

from tests.paper.pdf_read import bare, check_tagged, elements, figures, text_of
from waysaid.paper import Chart, Connection, ProblemOnPaper, Size, ToldOnPaper, chart_pdf

LINE = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 600 200">'
    '<line x1="10" y1="120" x2="590" y2="120" stroke="black" stroke-width="4"/></svg>'
)
WAYS = (
    ToldOnPaper("Wren", "and Ravi", svg=LINE, alt="a line from 39 to 66"),
    ToldOnPaper("Tomas", lines=("30 + 20 = 50", "9 + 7 = 16", "50 + 6 = 56")),
    ToldOnPaper(words='#let "x" = $1$ \\ *so* there'),
)
POINTS_A_MM = 72 / 25.4


def chart(problems: int = 3) -> Chart:
    """A chart with this many problems."""
    each = tuple(ProblemOnPaper(f"{40 - n} + 26 = {66 - n}", WAYS) for n in range(problems))
    noticed = Connection("One went across.", "Ines", "40 + 26, 39 + 27")
    return Chart("Thursday", "25 November", "en", each, "What we noticed", (noticed,))


def opened(size: Size, problems: int = 3) -> pikepdf.Pdf:
    """The chart read back by another library."""
    return pikepdf.open(io.BytesIO(chart_pdf(chart(problems), size)))


@pytest.mark.parametrize(
    ("size", "millimetres"),
    [
        (Size.A4, (210, 297)),
        (Size.LETTER, (216, 279)),
        (Size.A3, (297, 420)),
        (Size.TABLOID, (279, 432)),
        (Size.POSTER, (594, 841)),
        (Size.POSTER_A4, (210, 297)),
        (Size.POSTER_LETTER, (216, 279)),
        (Size.POSTER_A3, (297, 420)),
        (Size.POSTER_TABLOID, (279, 432)),
    ],
)
def test_each_size_comes_on_its_paper(size: Size, millimetres: tuple[int, int]) -> None:
    for page in opened(size).pages:
        measured = [round(float(length) / POINTS_A_MM) for length in page.mediabox[2:]]
        assert tuple(measured) == millimetres


@pytest.mark.parametrize("size", list(Size))
def test_on_any_paper_it_is_tagged_and_read_out_once_with_words_for_each_drawing(size) -> None:
    pdf = opened(size)
    check_tagged(pdf, "en")
    words = [str(each.Alt) for each in figures(pdf)]
    assert words == ["a line from 39 to 66"] * 3
    roles = [str(each.S) for each in elements(pdf.Root.StructTreeRoot)]
    assert roles.count("/H1") == 1
    text = text_of(pdf)
    for said in ("39 + 26 = 65", "30 + 20 = 50", '#let "x" = $1$', "One went across.", "Wren"):
        assert bare(said) in text


def test_a_long_talk_takes_more_pages_and_a_poster_on_sheets_covers_the_poster() -> None:
    assert len(opened(Size.A4, 12).pages) > len(opened(Size.A4, 2).pages) == 1
    across = 3
    assert len(opened(Size.POSTER_A4).pages) % across == 0
    assert len(opened(Size.POSTER_A4).pages) >= 2 * across


@pytest.mark.parametrize("size", [Size.POSTER_A3, Size.POSTER_TABLOID])
def test_larger_sheets_to_glue_are_fewer_and_two_abreast_with_none_left_empty(size: Size) -> None:
    assert len(opened(size, 1).pages) == 2
    assert len(opened(size, 3).pages) == 4
    assert len(opened(size).pages) < len(opened(Size.POSTER_A4).pages)


@pytest.mark.parametrize("size", [Size.A3, Size.TABLOID])
def test_a_larger_sheet_holds_on_one_page_what_a_smaller_one_does_not(size: Size) -> None:
    assert len(opened(Size.A4, 8).pages) > 1
    assert len(opened(size, 8).pages) == 1
    assert len(opened(size, 30).pages) > 1


def test_the_same_talk_makes_the_same_bytes() -> None:
    assert chart_pdf(chart(), Size.A4) == chart_pdf(chart(), Size.A4)


def test_a_poster_for_a_copy_shop_is_one_sheet_for_a_talk_of_six_problems() -> None:
    assert len(opened(Size.POSTER, 6).pages) == 1
    assert len(opened(Size.POSTER, 30).pages) > 1
